package loadwalk.numeric;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Returns quantiles and probabilities of the normal and Student t distributions. */
public final class Quantiles {
  private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

  private Quantiles() {}

  /** Returns the probability that a standard normal variable is at most z. */
  public static double normalCdf(double z) {
    Samples.finite(z, "z");
    return NORMAL.cumulativeProbability(z);
  }

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
   * Returns the probability that Student's t is at most the value.
   *
   * @param degreesOfFreedom above 0; infinite gives the normal distribution
   */
  public static double studentCdf(double t, double degreesOfFreedom) {
    Samples.finite(t, "t");
    requireDegrees(degreesOfFreedom);
    return isNormal(degreesOfFreedom)
        ? normalCdf(t)
        : new TDistribution(degreesOfFreedom).cumulativeProbability(t);
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

  /**
   * Returns the two-sided coverage factor t_p(ν) of JCGM 100:2008, table G.2.
   *
   * @param level the level of confidence, such as 0.95
   */
  public static double coverageFactor(double level, double degreesOfFreedom) {
    requireProbability(level);
    return studentQuantile((1 + level) / 2, degreesOfFreedom);
  }

  /**
   * Returns the effective degrees of freedom of a combined uncertainty, not truncated (JCGM
   * 100:2008, equation G.2b).
   *
   * @param parts the standard uncertainty each input contributes to the result
   * @param degreesOfFreedom the degrees of freedom of each, infinite where the part is known
   * @return infinite where no part has finite degrees of freedom
   */
  public static double effectiveDegreesOfFreedom(double[] parts, double[] degreesOfFreedom) {
    Samples.finite(parts, 1, "parts");
    Samples.sameLength(parts, degreesOfFreedom, "parts and degrees of freedom");
    double variance = 0;
    double sum = 0;
    for (int i = 0; i < parts.length; i++) {
      requireDegrees(degreesOfFreedom[i]);
      double square = parts[i] * parts[i];
      variance += square;
      sum += square * square / degreesOfFreedom[i];
    }
    return sum == 0 ? Double.POSITIVE_INFINITY : variance * variance / sum;
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
