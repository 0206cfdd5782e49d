package loadwalk.numeric;

import loadwalk.text.Sentence;

/** Propagates the uncertainties of correlated inputs to first order (JCGM 100:2008, 5.2). */
final class Propagation {
  private Propagation() {}

  /**
   * Returns the combined standard uncertainty √(gᵀ·C·g) (JCGM 100:2008, equation 13).
   *
   * @param gradient the sensitivity of the result to each input
   * @param covariance the covariance matrix of the inputs
   */
  static double u(double[] gradient, double[][] covariance) {
    return Math.sqrt(Math.max(0, covariance(gradient, gradient, covariance)));
  }

  /**
   * Returns the covariance of two results computed from the same inputs (JCGM 100:2008, H.2.3).
   *
   * @param first the sensitivity of the first result to each input
   * @param second the sensitivity of the second result to each input
   */
  static double covariance(double[] first, double[] second, double[][] covariance) {
    Samples.sameLength(first, second, "gradients");
    Samples.finite(first, 1, "first gradient");
    Samples.finite(second, 1, "second gradient");
    if (covariance.length != first.length) {
      throw new IllegalArgumentException(
          "covariance must have " + first.length + " rows, got " + covariance.length);
    }
    double sum = 0;
    for (int i = 0; i < first.length; i++) {
      Samples.finite(covariance[i], first.length, Sentence.of("covariance row {}", i));
      for (int j = 0; j < second.length; j++) {
        sum += first[i] * covariance[i][j] * second[j];
      }
    }
    return sum;
  }
}
