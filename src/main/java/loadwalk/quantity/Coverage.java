package loadwalk.quantity;

/**
 * Computes the factor that expands a standard uncertainty to cover 95.45 %, as k = 2 does for a
 * normal distribution (JCGM 100:2008, G.3.2, table G.2 and G.1.4).
 */
final class Coverage {
  /**
   * From here on k = 2 is right within 1.3 %, which is less than the second digit of an
   * uncertainty.
   */
  static final double MANY_DEGREES = 100;

  private static final double[] DEGREES = {
    1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 25, 30, 35, 40, 45, 50,
    100
  };

  /** Student's t for 95.45 %, the fourth column of table G.2, computed to four decimals. */
  private static final double[] FACTORS = {
    13.9678, 4.5266, 3.3068, 2.8693, 2.6487, 2.5165, 2.4288, 2.3664, 2.3198, 2.2837, 2.2549, 2.2314,
    2.2118, 2.1953, 2.1812, 2.1689, 2.1583, 2.1489, 2.1405, 2.133, 2.1051, 2.0868, 2.074, 2.0645,
    2.0571, 2.0513, 2.0253
  };

  /** Excess kurtosis at the rows of {@link #SHAPE_FACTORS}. */
  private static final double[] EXCESS = {-2, -1.4, -1.2, -1, -0.8, -0.6, -0.3, 0};

  /**
   * Factor for 95.45 % of distributions with this excess kurtosis, over that of the normal one:
   * computed from their characteristic functions. A rectangular part with a normal one needs up to
   * 1.2 % less, two rectangular ones up to 1.2 % more.
   */
  private static final double[] SHAPE_FACTORS = {
    0.787, 0.7975, 0.8275, 0.8825, 0.9215, 0.9525, 0.98, 1
  };

  private Coverage() {}

  /**
   * Returns what a distribution's shape makes of the factor: 1 for a normal one, less for one with
   * limits.
   *
   * @param excess its excess kurtosis, −2 or more
   */
  static double shapeFactor(double excess) {
    if (excess >= 0) {
      return 1;
    }
    int above = 1;
    while (EXCESS[above] < excess) {
      above++;
    }
    double part = Math.max(0, excess - EXCESS[above - 1]) / (EXCESS[above] - EXCESS[above - 1]);
    return SHAPE_FACTORS[above - 1] + part * (SHAPE_FACTORS[above] - SHAPE_FACTORS[above - 1]);
  }

  /**
   * Returns the factor; between the rows of the table it is interpolated in 1/ν (allowed by G.6.4),
   * which never gives less than Student's t, because t is convex in 1/ν.
   *
   * @param degreesOfFreedom ν_eff, 1 or more; infinite where no part was estimated
   */
  static double factor(double degreesOfFreedom) {
    if (!(degreesOfFreedom >= 1)) {
      throw new IllegalArgumentException(
          "degrees of freedom must be 1 or more, got " + degreesOfFreedom);
    }
    if (degreesOfFreedom >= MANY_DEGREES) {
      return Quantity.COVERAGE_FACTOR;
    }
    int above = 1;
    while (DEGREES[above] < degreesOfFreedom) {
      above++;
    }
    double from = 1 / DEGREES[above - 1];
    double to = 1 / DEGREES[above];
    double part = (from - 1 / degreesOfFreedom) / (from - to);
    return FACTORS[above - 1] + part * (FACTORS[above] - FACTORS[above - 1]);
  }
}
