package loadwalk.numeric;

import java.util.Arrays;

/**
 * Fits y = a + b·x by weighted least squares, computed about the weighted centre so that a slope
 * far from the origin costs no digits.
 *
 * <p>The residual variance is s² = Σw(y − ŷ)²/(m − n) with m points and n parameters. Formulas as
 * in JCGM 100:2008, H.3.
 *
 * @param intercept the fitted a
 * @param slope the fitted b
 * @param centre the weighted mean of x
 * @param weightSum the summed weights
 * @param spread the summed weighted squares of x about the centre
 * @param weightedSquares the summed weighted squares of the residuals
 * @param degreesOfFreedom points minus parameters, 0 or more
 */
public record LinearFit(
    double intercept,
    double slope,
    double centre,
    double weightSum,
    double spread,
    double weightedSquares,
    int degreesOfFreedom) {

  /** Checks that the sums can come from a fit. */
  public LinearFit {
    Samples.finite(intercept, "intercept");
    Samples.finite(slope, "slope");
    Samples.finite(centre, "centre");
    Samples.positive(weightSum, "weight sum");
    Samples.positive(spread, "spread of x");
    Samples.zeroOrMore(weightedSquares, "squares");
    if (degreesOfFreedom < 0) {
      throw new IllegalArgumentException("degrees of freedom below 0: " + degreesOfFreedom);
    }
  }

  /** Fits y = a + b·x with equal weights. */
  public static LinearFit line(double[] x, double[] y) {
    return line(x, y, ones(x.length));
  }

  /**
   * Fits y = a + b·x.
   *
   * @param weights the weight of each point, above 0, proportional to 1/u(y)²
   * @throws IllegalArgumentException if there are fewer than two points, a number is not finite, or
   *     all x are equal
   */
  public static LinearFit line(double[] x, double[] y, double[] weights) {
    requirePoints(x, y, weights);
    double sum = 0;
    double xMean = 0;
    double yMean = 0;
    for (int i = 0; i < x.length; i++) {
      sum += weights[i];
      xMean += weights[i] * (x[i] - xMean) / sum;
      yMean += weights[i] * (y[i] - yMean) / sum;
    }
    double spread = 0;
    double products = 0;
    for (int i = 0; i < x.length; i++) {
      double dx = x[i] - xMean;
      spread += weights[i] * dx * dx;
      products += weights[i] * dx * (y[i] - yMean);
    }
    // Rounding in the mean of equal x leaves a tiny spread that is not real.
    requireSpread(spread, sum * Math.pow(1e-14 * xMean, 2));
    double slope = products / spread;
    double squares = 0;
    for (int i = 0; i < x.length; i++) {
      double residual = (y[i] - yMean) - slope * (x[i] - xMean);
      squares += weights[i] * residual * residual;
    }
    return new LinearFit(yMean - slope * xMean, slope, xMean, sum, spread, squares, x.length - 2);
  }

  /** Returns the fitted y at x. */
  public double at(double x) {
    return intercept + slope * x;
  }

  /** Tells whether the residuals show the scatter: there are more points than parameters. */
  public boolean hasScatter() {
    return degreesOfFreedom > 0;
  }

  /**
   * Returns s, the residual standard deviation of a point of weight 1, in the unit of y.
   *
   * @throws IllegalStateException if there are no more points than parameters, so the scatter is
   *     unknown
   */
  public double residualSd() {
    if (!hasScatter()) {
      throw new IllegalStateException("no spare point: the scatter about the line is unknown");
    }
    return Math.sqrt(weightedSquares / degreesOfFreedom);
  }

  /** Returns the standard uncertainty of the intercept. */
  public double interceptU() {
    return standardErrorAt(0);
  }

  /** Returns the standard uncertainty of the slope. */
  public double slopeU() {
    return residualSd() / Math.sqrt(spread);
  }

  /** Returns the covariance of intercept and slope. */
  public double covariance() {
    double s = residualSd();
    return -s * s * centre / spread;
  }

  /** Returns the standard uncertainty of the line at x, from the scatter of the points. */
  double standardErrorAt(double x) {
    return standardErrorAt(x, residualSd());
  }

  /**
   * Returns the standard uncertainty of the line at x for a scatter already known.
   *
   * @param sd the standard deviation of a point of weight 1, in the unit of y
   */
  double standardErrorAt(double x, double sd) {
    return Samples.zeroOrMore(sd, "standard deviation") * Math.sqrt(leverage(x));
  }

  private double leverage(double x) {
    double dx = Samples.finite(x, "x") - centre;
    return 1 / weightSum + dx * dx / spread;
  }

  private static void requirePoints(double[] x, double[] y, double[] weights) {
    Samples.sameLength(x, y, "x and y");
    Samples.sameLength(x, weights, "x and weights");
    Samples.finite(x, 2, "x");
    Samples.finite(y, 2, "y");
    for (int i = 0; i < weights.length; i++) {
      Samples.positive(weights[i], "weights[" + i + "]");
    }
  }

  private static void requireSpread(double spread, double rounding) {
    if (!(spread > rounding)) {
      throw new IllegalArgumentException("all x are equal: they carry no slope");
    }
  }

  private static double[] ones(int length) {
    double[] ones = new double[length];
    Arrays.fill(ones, 1);
    return ones;
  }
}
