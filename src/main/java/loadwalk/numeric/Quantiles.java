package loadwalk.numeric;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Returns quantiles of the normal and Student t distributions. */
public final class Quantiles {
  private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

  private Quantiles() {}

  /**
   * Returns the z below which a standard normal variable falls with the probability.
   *
   * @throws IllegalArgumentException if the probability is not between 0 and 1, ends excluded
   */
  public static double normalQuantile(double probability) {
    requireProbability(probability);
    return NORMAL.inverseCumulativeProbability(probability);
  }

  /**
   * Returns the t below which Student's t falls with the probability.
   *
   * @param degreesOfFreedom above 0; infinite gives the normal distribution
   */
  public static double studentQuantile(double probability, double degreesOfFreedom) {
    requireProbability(probability);
    requireDegrees(degreesOfFreedom);
    return isNormal(degreesOfFreedom)
        ? normalQuantile(probability)
        : new TDistribution(degreesOfFreedom).inverseCumulativeProbability(probability);
  }

  private static boolean isNormal(double degreesOfFreedom) {
    // From here on the two distributions differ by less than the quantile solver's accuracy.
    return degreesOfFreedom > 1e9;
  }

  private static void requireProbability(double probability) {
    if (!(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException("probability must be between 0 and 1, got " + probability);
    }
  }

  private static void requireDegrees(double degreesOfFreedom) {
    if (!(degreesOfFreedom > 0)) {
      throw new IllegalArgumentException(
          "degrees of freedom must be above 0, got " + degreesOfFreedom);
    }
  }
}
