package loadwalk.numeric;

import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Formulas of JCGM 100:2008 that tests hold results against, by another way than the program's. */
public final class Gum {
  private Gum() {}

  /** Returns the probability that a standard normal variable is at most z. */
  public static double normalCdf(double z) {
    return new NormalDistribution(0, 1).cumulativeProbability(z);
  }

  /** Returns the probability that Student's t is at most the value. */
  static double studentCdf(double t, double degreesOfFreedom) {
    return degreesOfFreedom > 1e9
        ? normalCdf(t)
        : new TDistribution(degreesOfFreedom).cumulativeProbability(t);
  }

  /** Returns the two-sided coverage factor t_p(ν) of table G.2 for a level such as 0.95. */
  public static double coverageFactor(double level, double degreesOfFreedom) {
    return Quantiles.studentQuantile((1 + level) / 2, degreesOfFreedom);
  }

  /** Returns the effective degrees of freedom of contributions, not truncated (equation G.2b). */
  static double effectiveDegreesOfFreedom(double[] parts, double[] degreesOfFreedom) {
    double variance = 0;
    double sum = 0;
    for (int i = 0; i < parts.length; i++) {
      double square = parts[i] * parts[i];
      variance += square;
      sum += square * square / degreesOfFreedom[i];
    }
    return sum == 0 ? Double.POSITIVE_INFINITY : variance * variance / sum;
  }

  /** Returns the covariances of the means of quantities observed together (equation 17). */
  static double[][] covarianceOfMeans(double[][] observations) {
    int n = observations[0].length;
    double[][] covariance = new double[observations.length][observations.length];
    for (int i = 0; i < observations.length; i++) {
      for (int j = 0; j < observations.length; j++) {
        double iMean = Statistics.mean(observations[i]);
        double jMean = Statistics.mean(observations[j]);
        double sum = 0;
        for (int k = 0; k < n; k++) {
          sum += (observations[i][k] - iMean) * (observations[j][k] - jMean);
        }
        covariance[i][j] = sum / ((double) n * (n - 1));
      }
    }
    return covariance;
  }

  /** Returns the sensitivities of f at x by central differences of u, above 0 (5.1.4). */
  static double[] gradient(ToDoubleFunction<double[]> f, double[] x, double[] u) {
    double[] gradient = new double[x.length];
    double[] moved = x.clone();
    for (int i = 0; i < x.length; i++) {
      moved[i] = x[i] + u[i];
      double above = f.applyAsDouble(moved);
      moved[i] = x[i] - u[i];
      gradient[i] = (above - f.applyAsDouble(moved)) / (2 * u[i]);
      moved[i] = x[i];
    }
    return gradient;
  }
}
