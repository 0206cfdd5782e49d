package loadwalk.forecast.model;

/** The standard normal distribution, by rational approximation. */
final class Normal {
  /** Standard deviations beyond which the table gives 0 or 1: 1e-9. */
  private static final double REACH = 6;

  /** Cells of the table, for an error below 5e-7. */
  private static final int CELLS = 4096;

  /** Cells per standard deviation. */
  private static final double PER_UNIT = CELLS / (2 * REACH);

  /** The cumulative probability at each edge of a cell. */
  private static final double[] TABLE = new double[CELLS + 2];

  /** The density at 0: 1/√(2π). */
  private static final double HEIGHT = 0.3989422804014327;

  /** Standard deviations beyond which the value is below the formula's own error. */
  private static final double BEYOND = 8;

  static {
    for (int i = 0; i < TABLE.length; i++) {
      TABLE[i] = cumulative(i / PER_UNIT - REACH);
    }
  }

  private Normal() {}

  /** Returns the cumulative probability from a table, absolute error below 5e-7. */
  static double quickCumulative(double z) {
    if (!(z > -REACH)) {
      return 0;
    }
    if (z >= REACH) {
      return 1;
    }
    double at = (z + REACH) * PER_UNIT;
    int cell = (int) at;
    return TABLE[cell] + (at - cell) * (TABLE[cell + 1] - TABLE[cell]);
  }

  /**
   * Returns the cumulative probability, absolute error below 7.5e-8.
   *
   * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17 (from memory).
   */
  static double cumulative(double z) {
    return cumulative(z, density(z));
  }

  /** Returns the density. */
  static double density(double z) {
    return HEIGHT * Math.exp(-0.5 * z * z);
  }

  /** Returns the cumulative probability, given the density. */
  static double cumulative(double z, double density) {
    double size = Math.abs(z);
    if (size > BEYOND) {
      return z < 0 ? 0 : 1;
    }
    double t = 1 / (1 + 0.2316419 * size);
    double series =
        t
            * (0.319381530
                + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    double tail = density * series;
    return z < 0 ? tail : 1 - tail;
  }
}
