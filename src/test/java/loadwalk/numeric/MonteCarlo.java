package loadwalk.numeric;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Propagates whole distributions through a model by seeded trials (JCGM 101:2008, 7).
 *
 * @param mean the mean of the trials
 * @param u their standard deviation
 * @param symmetric the interval that leaves equal probability on both sides
 * @param shortest the shortest interval that holds the level
 */
public record MonteCarlo(double mean, double u, Interval symmetric, Interval shortest) {
  private static final int BATCH = 1024;

  /** The distribution of one input, independent of the others. */
  public sealed interface Input {
    /** Fills an array with values drawn. */
    void draw(SplittableRandom random, double[] into);
  }

  /**
   * An input equally likely everywhere within limits.
   *
   * @param centre the middle
   * @param halfWidth the distance of the limits from it, 0 or more
   */
  public record Rectangular(double centre, double halfWidth) implements Input {
    /** Checks the limits. */
    public Rectangular {
      Samples.finite(centre, "centre");
      Samples.zeroOrMore(halfWidth, "half-width");
    }

    @Override
    public void draw(SplittableRandom random, double[] into) {
      for (int i = 0; i < into.length; i++) {
        into[i] = centre + halfWidth * (2 * random.nextDouble() - 1);
      }
    }
  }

  /**
   * An input known by its value and standard uncertainty.
   *
   * @param mean the value
   * @param u the standard uncertainty, 0 or more
   */
  public record Normal(double mean, double u) implements Input {
    /** Checks the numbers. */
    public Normal {
      Samples.finite(mean, "mean");
      Samples.zeroOrMore(u, "standard uncertainty");
    }

    @Override
    public void draw(SplittableRandom random, double[] into) {
      for (int i = 0; i < into.length; i++) {
        into[i] = mean + u * random.nextGaussian();
      }
    }
  }

  /**
   * An input known from few observations: a scaled and shifted Student t (JCGM 101:2008, 6.4.9).
   *
   * @param mean the mean of the observations
   * @param u the standard deviation of the mean, 0 or more
   * @param degreesOfFreedom above 0
   */
  public record StudentT(double mean, double u, double degreesOfFreedom) implements Input {
    /** Checks the numbers. */
    public StudentT {
      Samples.finite(mean, "mean");
      Samples.zeroOrMore(u, "standard uncertainty");
      Samples.positive(degreesOfFreedom, "degrees of freedom");
    }

    @Override
    public void draw(SplittableRandom random, double[] into) {
      for (int i = 0; i < into.length; i++) {
        double chiSquare = 2 * gamma(degreesOfFreedom / 2, random);
        into[i] = mean + u * random.nextGaussian() * Math.sqrt(degreesOfFreedom / chiSquare);
      }
    }

    /** Draws from the gamma distribution (Marsaglia and Tsang, 2000). */
    private static double gamma(double shape, SplittableRandom random) {
      if (shape < 1) {
        return gamma(shape + 1, random) * Math.pow(random.nextDouble(), 1 / shape);
      }
      double d = shape - 1 / 3.0;
      double c = 1 / Math.sqrt(9 * d);
      while (true) {
        double x = random.nextGaussian();
        double root = 1 + c * x;
        double v = root * root * root;
        double log = v > 0 ? d - d * v + d * Math.log(v) : Double.NEGATIVE_INFINITY;
        if (v > 0 && Math.log(random.nextDouble()) < 0.5 * x * x + log) {
          return d * v;
        }
      }
    }
  }

  /** Gives the result for one value of each input. */
  @FunctionalInterface
  public interface Model {
    /** Returns the result; the array is filled anew for every trial and must not be kept. */
    double at(double[] inputs);
  }

  /**
   * Runs the trials.
   *
   * @param trials how many, such as 1 000 000; at least 100
   * @param seed the seed; the same seed gives the same result
   * @param level the probability the intervals hold, such as 0.95
   * @throws IllegalArgumentException if the model gives a value that is not finite
   */
  public static MonteCarlo of(
      Model model, List<Input> inputs, int trials, long seed, double level) {
    if (trials < 100 || !(level > 0 && level < 1)) {
      throw new IllegalArgumentException(
          "needs 100 trials or more and a level between 0 and 1, got " + trials + " and " + level);
    }
    double[] results = results(model, inputs, trials, new SplittableRandom(seed));
    double mean = Statistics.mean(results);
    double u = Statistics.standardDeviation(results);
    Selection.sortEnds(results, trials - held(trials, level) + 2);
    return new MonteCarlo(mean, u, symmetric(results, level), shortest(results, level));
  }

  /** Draws one input at a time for many trials, so that each loop does one thing over and over. */
  private static double[] results(
      Model model, List<Input> inputs, int trials, SplittableRandom random) {
    double[][] drawn = new double[inputs.size()][BATCH];
    double[] x = new double[drawn.length];
    double[] results = new double[trials];
    for (int from = 0; from < trials; from += BATCH) {
      for (int i = 0; i < drawn.length; i++) {
        inputs.get(i).draw(random, drawn[i]);
      }
      int count = Math.min(BATCH, trials - from);
      for (int trial = 0; trial < count; trial++) {
        for (int i = 0; i < x.length; i++) {
          x[i] = drawn[i][trial];
        }
        results[from + trial] = model.at(x);
      }
    }
    return results;
  }

  private static int held(int trials, double level) {
    return Math.min(trials - 1, (int) Math.round(level * trials));
  }

  private static Interval symmetric(double[] sorted, double level) {
    return new Interval(
        Statistics.sortedQuantile(sorted, (1 - level) / 2),
        Statistics.sortedQuantile(sorted, (1 + level) / 2));
  }

  /** Slides an interval that holds the level over the sorted trials (JCGM 101:2008, 7.7). */
  private static Interval shortest(double[] sorted, double level) {
    int held = held(sorted.length, level);
    int best = 0;
    for (int i = 1; i + held < sorted.length; i++) {
      if (sorted[i + held] - sorted[i] < sorted[best + held] - sorted[best]) {
        best = i;
      }
    }
    return new Interval(sorted[best], sorted[best + held]);
  }
}
