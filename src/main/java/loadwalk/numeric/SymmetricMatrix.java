package loadwalk.numeric;

/** Inverts the matrices of normal equations. */
final class SymmetricMatrix {
  private static final double SINGULAR = 1e-12;

  private SymmetricMatrix() {}

  /**
   * Inverts a positive definite matrix given by its lower half, by Cholesky decomposition.
   *
   * @throws IllegalArgumentException if rows depend on one another
   */
  static double[][] invert(double[][] lower) {
    int n = lower.length;
    double[][] l = decompose(lower);
    double[][] inverse = new double[n][n];
    double[] x = new double[n];
    for (int column = 0; column < n; column++) {
      for (int i = 0; i < n; i++) {
        double sum = i == column ? 1 : 0;
        for (int k = 0; k < i; k++) {
          sum -= l[i][k] * x[k];
        }
        x[i] = sum / l[i][i];
      }
      for (int i = n - 1; i >= 0; i--) {
        for (int k = i + 1; k < n; k++) {
          x[i] -= l[k][i] * x[k];
        }
        x[i] /= l[i][i];
        inverse[i][column] = x[i];
      }
    }
    return inverse;
  }

  private static double[][] decompose(double[][] lower) {
    int n = lower.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = lower[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        if (i == j && !(sum > SINGULAR * lower[i][i])) {
          throw new IllegalArgumentException("the samples do not tell the parameters apart");
        }
        l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
      }
    }
    return l;
  }
}
