package loadwalk.forecast;

/** The standard normal distribution, by rational approximation. */
final class Normal {
  private Normal() {}

  /**
   * Returns the cumulative probability, absolute error below 7.5e-8.
   *
   * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17 (from memory).
   */
  static double cumulative(double z) {
    double size = Math.abs(z);
    if (size > 8) {
      return z < 0 ? 0 : 1;
    }
    double t = 1 / (1 + 0.2316419 * size);
    double series =
        t
            * (0.319381530
                + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    double tail = 0.3989422804014327 * Math.exp(-0.5 * size * size) * series;
    return z < 0 ? tail : 1 - tail;
  }

  /** Returns the quantile of a probability strictly between 0 and 1, by bisection. */
  static double quantile(double p) {
    double low = -9;
    double high = 9;
    while (high - low > 1e-9) {
      double middle = 0.5 * (low + high);
      if (cumulative(middle) < p) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
