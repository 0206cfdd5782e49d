package loadwalk.forecast.model;

import loadwalk.numeric.PositiveMatrix;

/**
 * A generalised least-squares fit of one unknown level under correlated errors, with prediction.
 *
 * <p>Model: e_i = level + error_i, errors normal with covariance C. With a flat prior the level's
 * posterior is normal, and so is the prediction of a new value whose errors have covariances k with
 * the old ones; both are linear in e. Source: best linear unbiased prediction, textbook form of
 * universal kriging with a constant mean (from memory); checked against a general least squares
 * library in the tests.
 */
final class LevelFit {
  private final double[][] inverse;
  private final double[] rowSums;
  private final double sum;
  private final double logDeterminant;

  /** Inverts the covariance, which must be symmetric and positive definite. */
  LevelFit(double[][] covariance) {
    int n = covariance.length;
    PositiveMatrix matrix = PositiveMatrix.of(covariance, 0);
    logDeterminant = matrix.logDeterminant();
    inverse = matrix.inverse();
    rowSums = new double[n];
    double total = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        rowSums[i] += inverse[i][j];
      }
      total += rowSums[i];
    }
    sum = total;
  }

  /** Returns the generalised sum of squares of e about its fitted level. */
  double squares(double[] e) {
    int n = e.length;
    double quadratic = 0;
    double weighted = 0;
    for (int i = 0; i < n; i++) {
      double[] row = inverse[i];
      double product = 0.5 * row[i] * e[i];
      for (int j = i + 1; j < n; j++) {
        product += row[j] * e[j];
      }
      quadratic += 2 * e[i] * product;
      weighted += rowSums[i] * e[i];
    }
    return Math.max(0, quadratic - weighted * weighted / sum);
  }

  /** Returns the fitted level. */
  double level(double[] e) {
    double weighted = 0;
    for (int i = 0; i < e.length; i++) {
      weighted += rowSums[i] * e[i];
    }
    return weighted / sum;
  }

  /** Returns log |C| + log(1ᵀC⁻¹1), which the evidence of the errors' covariance needs. */
  double logVolume() {
    return logDeterminant + Math.log(sum);
  }

  /** Returns the prediction of a new value from its covariances with the old ones. */
  Prediction toward(double[] covariances, double variance) {
    int n = covariances.length;
    double[] weights = new double[n];
    double explained = 0;
    double share = 0;
    for (int i = 0; i < n; i++) {
      double product = 0;
      for (int j = 0; j < n; j++) {
        product += inverse[i][j] * covariances[j];
      }
      weights[i] = product;
      explained += covariances[i] * product;
      share += product;
    }
    double missing = (1 - share) / sum;
    for (int i = 0; i < n; i++) {
      weights[i] += rowSums[i] * missing;
    }
    return new Prediction(weights, Math.max(0, variance - explained + (1 - share) * missing));
  }

  /**
   * The prediction of a new value from the old ones.
   *
   * @param weights the weights of the old values, summing to 1
   * @param variance the variance of the prediction
   */
  record Prediction(double[] weights, double variance) {
    double mean(double[] e) {
      double total = 0;
      for (int i = 0; i < e.length; i++) {
        total += weights[i] * e[i];
      }
      return total;
    }
  }
}
