package loadwalk.numeric;

import org.hipparchus.distribution.continuous.TDistribution;

/** Computes quantiles of the normal and Student t distributions. */
public final class Quantiles {
  /** The first formula holds for p within this distance of one half. */
  private static final double MIDDLE = 0.425;

  /** The second formula holds for √(−ln p) up to this. */
  private static final double TAIL = 5;

  private static final double[] MIDDLE_OVER = {
    3.3871328727963666080e0, 1.3314166789178437745e2, 1.9715909503065514427e3,
    1.3731693765509461125e4, 4.5921953931549871457e4, 6.7265770927008700853e4,
    3.3430575583588128105e4, 2.5090809287301226727e3
  };
  private static final double[] MIDDLE_UNDER = {
    1,
    4.2313330701600911252e1,
    6.8718700749205790830e2,
    5.3941960214247511077e3,
    2.1213794301586595867e4,
    3.9307895800092710610e4,
    2.8729085735721942674e4,
    5.2264952788528545610e3
  };
  private static final double[] TAIL_OVER = {
    1.42343711074968357734e0, 4.63033784615654529590e0, 5.76949722146069140550e0,
    3.64784832476320460504e0, 1.27045825245236838258e0, 2.41780725177450611770e-1,
    2.27238449892691845833e-2, 7.74545014278341407640e-4
  };
  private static final double[] TAIL_UNDER = {
    1,
    2.05319162663775882187e0,
    1.67638483018380384940e0,
    6.89767334985100004550e-1,
    1.48103976427480074590e-1,
    1.51986665636164571966e-2,
    5.47593808499534494600e-4,
    1.05075007164441684324e-9
  };
  private static final double[] FAR_OVER = {
    6.65790464350110377720e0, 5.46378491116411436990e0, 1.78482653991729133580e0,
    2.96560571828504891230e-1, 2.65321895265761230930e-2, 1.24266094738807843860e-3,
    2.71155556874348757815e-5, 2.01033439929228813265e-7
  };
  private static final double[] FAR_UNDER = {
    1,
    5.99832206555887937690e-1,
    1.36929880922735805310e-1,
    1.48753612908506148525e-2,
    7.86869131145613259100e-4,
    1.84631831751005468180e-5,
    1.42151175831644588870e-7,
    2.04426310338993978564e-15
  };

  private Quantiles() {}

  /**
   * Returns the z that a standard normal variable stays below with the given probability, to 15
   * digits.
   *
   * <p>Source: Wichura, algorithm AS 241, Applied Statistics 37 (1988) 477 (coefficients from
   * memory; the tests compare them with a statistics library). Written here because every brief
   * needs it and a library's distributions take 20 ms to load.
   *
   * @throws IllegalArgumentException if the probability is not between 0 and 1, ends excluded
   */
  public static double normalQuantile(double probability) {
    requireProbability(probability);
    double off = probability - 0.5;
    if (Math.abs(off) <= MIDDLE) {
      double r = MIDDLE * MIDDLE - off * off;
      return off * polynomial(MIDDLE_OVER, r) / polynomial(MIDDLE_UNDER, r);
    }
    double root = Math.sqrt(-Math.log(Math.min(probability, 1 - probability)));
    double size =
        root <= TAIL
            ? polynomial(TAIL_OVER, root - 1.6) / polynomial(TAIL_UNDER, root - 1.6)
            : polynomial(FAR_OVER, root - TAIL) / polynomial(FAR_UNDER, root - TAIL);
    return Math.copySign(size, off);
  }

  private static double polynomial(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }

  /**
   * Returns the t that a Student t variable stays below with the given probability.
   *
   * @param degreesOfFreedom above 0; infinite gives the normal distribution
   */
  static double studentQuantile(double probability, double degreesOfFreedom) {
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
