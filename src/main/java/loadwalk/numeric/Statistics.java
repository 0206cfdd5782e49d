package loadwalk.numeric;

import java.util.Arrays;

/**
 * Computes descriptive statistics of a row of finite numbers, each in two passes so that a large
 * common offset costs no digits.
 */
public final class Statistics {
  private Statistics() {}

  /**
   * Returns the arithmetic mean, corrected by the mean of the residuals.
   *
   * @throws IllegalArgumentException if there is no number, or one is not finite
   */
  public static double mean(double... values) {
    Samples.finite(values, 1, "values");
    double share = 1.0 / values.length;
    double first = 0;
    for (double value : values) {
      first += value * share;
    }
    double correction = 0;
    for (double value : values) {
      correction += value - first;
    }
    return first + correction / values.length;
  }

  /**
   * Returns the sample standard deviation, denominator n - 1 (JCGM 100:2008, 4.2.2).
   *
   * @throws IllegalArgumentException if there are fewer than two numbers, or one is not finite
   */
  public static double standardDeviation(double... values) {
    Samples.finite(values, 2, "values");
    double mean = mean(values);
    double squares = 0;
    double rest = 0;
    for (double value : values) {
      double deviation = value - mean;
      squares += deviation * deviation;
      rest += deviation;
    }
    return Math.sqrt((squares - rest * rest / values.length) / (values.length - 1));
  }

  /** Returns the standard deviation of the mean, s/√n (JCGM 100:2008, 4.2.3). */
  public static double standardDeviationOfMean(double... values) {
    return standardDeviation(values) / Math.sqrt(values.length);
  }

  /**
   * Returns the quantile at a fraction from 0 to 1, interpolated linearly between order statistics
   * at rank 1 + (n - 1)·fraction (type 7 of Hyndman and Fan, 1996).
   *
   * @throws IllegalArgumentException if the fraction is outside 0 to 1, there is no number, or one
   *     is not finite
   */
  public static double quantile(double fraction, double... values) {
    Samples.finite(values, 1, "values");
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sortedQuantile(sorted, fraction);
  }

  static double sortedQuantile(double[] sorted, double fraction) {
    if (!(fraction >= 0 && fraction <= 1)) {
      throw new IllegalArgumentException("fraction must be from 0 to 1, got " + fraction);
    }
    double rank = fraction * (sorted.length - 1);
    int below = (int) Math.floor(rank);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (rank - below) * (sorted[above] - sorted[below]);
  }
}
