package loadwalk.numeric;

import java.util.function.ToDoubleFunction;

/** Propagates the uncertainties of correlated inputs to first order (JCGM 100:2008, 5.2). */
public final class Propagation {
  private Propagation() {}

  /**
   * Returns the combined standard uncertainty √(gᵀ·C·g) (JCGM 100:2008, equation 13).
   *
   * @param gradient the sensitivity of the result to each input
   * @param covariance the covariance matrix of the inputs
   */
  public static double u(double[] gradient, double[][] covariance) {
    return Math.sqrt(Math.max(0, covariance(gradient, gradient, covariance)));
  }

  /**
   * Returns the covariance of two results of the same inputs (JCGM 100:2008, H.2.3).
   *
   * @param first the sensitivity of the first result to each input
   * @param second the sensitivity of the second result to each input
   */
  public static double covariance(double[] first, double[] second, double[][] covariance) {
    Samples.sameLength(first, second, "gradients");
    Samples.finite(first, 1, "first gradient");
    Samples.finite(second, 1, "second gradient");
    if (covariance.length != first.length) {
      throw new IllegalArgumentException(
          "covariance must have " + first.length + " rows, got " + covariance.length);
    }
    double sum = 0;
    for (int i = 0; i < first.length; i++) {
      Samples.finite(covariance[i], first.length, "covariance row " + i);
      for (int j = 0; j < second.length; j++) {
        sum += first[i] * covariance[i][j] * second[j];
      }
    }
    return sum;
  }

  /**
   * Returns the covariance matrix of the means of quantities observed together (JCGM 100:2008,
   * equation 17).
   *
   * @param observations one row a quantity, one column a joint observation
   */
  public static double[][] covarianceOfMeans(double[][] observations) {
    int n = observations[0].length;
    double[][] covariance = new double[observations.length][observations.length];
    for (int i = 0; i < observations.length; i++) {
      Samples.finite(observations[i], 2, "observations row " + i);
      Samples.sameLength(observations[0], observations[i], "observations");
      for (int j = 0; j <= i; j++) {
        double iMean = Statistics.mean(observations[i]);
        double jMean = Statistics.mean(observations[j]);
        double sum = 0;
        for (int k = 0; k < n; k++) {
          sum += (observations[i][k] - iMean) * (observations[j][k] - jMean);
        }
        covariance[i][j] = sum / ((double) n * (n - 1));
        covariance[j][i] = covariance[i][j];
      }
    }
    return covariance;
  }

  /**
   * Returns the sensitivities of f at x by central differences of one standard uncertainty (JCGM
   * 100:2008, 5.1.4).
   *
   * @param u the standard uncertainty of each input, above 0
   */
  public static double[] gradient(ToDoubleFunction<double[]> f, double[] x, double[] u) {
    Samples.sameLength(x, u, "x and u");
    double[] gradient = new double[x.length];
    double[] moved = x.clone();
    for (int i = 0; i < x.length; i++) {
      Samples.positive(u[i], "u[" + i + "]");
      moved[i] = x[i] + u[i];
      double above = f.applyAsDouble(moved);
      moved[i] = x[i] - u[i];
      gradient[i] = (above - f.applyAsDouble(moved)) / (2 * u[i]);
      moved[i] = x[i];
    }
    return Samples.finite(gradient, 1, "gradient");
  }
}
