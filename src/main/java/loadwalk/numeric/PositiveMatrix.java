package loadwalk.numeric;

/**
 * Inverts a symmetric positive definite matrix by Cholesky's method: the normal equations of a fit,
 * or a covariance.
 *
 * @param inverse the full inverse
 * @param logDeterminant the natural logarithm of the determinant of the matrix itself
 */
public record PositiveMatrix(double[][] inverse, double logDeterminant) {

  /**
   * Inverts a matrix given by its lower half.
   *
   * @param singular the least part of a diagonal element that may remain after the rows above are
   *     eliminated; 0 only requires it to be positive
   * @throws IllegalArgumentException if less remains, because the rows depend on one another
   */
  public static PositiveMatrix of(double[][] matrix, double singular) {
    double[][] lower = cholesky(matrix, singular);
    double log = 0;
    for (int i = 0; i < lower.length; i++) {
      log += 2 * Math.log(lower[i][i]);
    }
    return new PositiveMatrix(inverse(lower), log);
  }

  private static double[][] cholesky(double[][] a, double singular) {
    int n = a.length;
    double[][] lower = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double rest = a[i][j];
        for (int k = 0; k < j; k++) {
          rest -= lower[i][k] * lower[j][k];
        }
        if (i == j) {
          if (!(rest > singular * a[i][i])) {
            throw new IllegalArgumentException("the samples do not tell the parameters apart");
          }
          lower[i][i] = Math.sqrt(rest);
        } else {
          lower[i][j] = rest / lower[j][j];
        }
      }
    }
    return lower;
  }

  private static double[][] inverse(double[][] lower) {
    int n = lower.length;
    double[][] half = new double[n][n];
    for (int column = 0; column < n; column++) {
      half[column][column] = 1 / lower[column][column];
      for (int i = column + 1; i < n; i++) {
        double rest = 0;
        for (int k = column; k < i; k++) {
          rest -= lower[i][k] * half[k][column];
        }
        half[i][column] = rest / lower[i][i];
      }
    }
    double[][] full = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double total = 0;
        for (int k = i; k < n; k++) {
          total += half[k][i] * half[k][j];
        }
        full[i][j] = total;
        full[j][i] = total;
      }
    }
    return full;
  }
}
