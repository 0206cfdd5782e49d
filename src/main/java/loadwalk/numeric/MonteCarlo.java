package loadwalk.numeric;

import java.util.Arrays;
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

  /** The distribution of one input, independent of the others. */
  public sealed interface Input {
    /** Returns one value drawn. */
    double draw(SplittableRandom random);
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
    public double draw(SplittableRandom random) {
      return centre + halfWidth * (2 * random.nextDouble() - 1);
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
    public double draw(SplittableRandom random) {
      return mean + u * random.nextGaussian();
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
    public double draw(SplittableRandom random) {
      double chiSquare = 2 * gamma(degreesOfFreedom / 2, random);
      return mean + u * random.nextGaussian() * Math.sqrt(degreesOfFreedom / chiSquare);
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
    SplittableRandom random = new SplittableRandom(seed);
    Input[] drawn = inputs.toArray(Input[]::new);
    double[] x = new double[drawn.length];
    double[] results = new double[trials];
    for (int trial = 0; trial < trials; trial++) {
      for (int i = 0; i < x.length; i++) {
        x[i] = drawn[i].draw(random);
      }
      results[trial] = model.at(x);
    }
    double mean = Statistics.mean(results);
    double u = Statistics.standardDeviation(results);
    Arrays.sort(results);
    return new MonteCarlo(mean, u, symmetric(results, level), shortest(results, level));
  }

  private static Interval symmetric(double[] sorted, double level) {
    return new Interval(
        Statistics.sortedQuantile(sorted, (1 - level) / 2),
        Statistics.sortedQuantile(sorted, (1 + level) / 2));
  }

  /** Slides an interval that holds the level over the sorted trials (JCGM 101:2008, 7.7). */
  private static Interval shortest(double[] sorted, double level) {
    int held = Math.min(sorted.length - 1, (int) Math.round(level * sorted.length));
    int best = 0;
    for (int i = 1; i + held < sorted.length; i++) {
      if (sorted[i + held] - sorted[i] < sorted[best + held] - sorted[best]) {
        best = i;
      }
    }
    return new Interval(sorted[best], sorted[best + held]);
  }
}
