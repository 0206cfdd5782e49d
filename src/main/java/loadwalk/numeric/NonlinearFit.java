package loadwalk.numeric;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Fits a curve by Levenberg–Marquardt; the covariance is scaled by the residual variance s² = χ²/(m
 * − n).
 */
final class NonlinearFit {
  private static final int MOST_EVALUATIONS = 20_000;
  private static final double TOLERANCE = 1e-14;

  /**
   * The first steps to try: a long one is quick but may land where the curve is flat and stay
   * there.
   */
  private static final double[] FIRST_STEPS = {100, 1, 0.1};

  /** The least independent part of a column, above the noise of numerical derivatives. */
  private static final double SINGULAR = 1e-9;

  /** Replaces a y that overflows, so that the search steps back. */
  private static final double OFF_THE_MAP = 1e100;

  private static final double STEP = Math.cbrt(Math.ulp(1.0));

  private final double[] parameters;
  private final double[][] covariance;
  private final double residualSd;

  private NonlinearFit(double[] parameters, double[][] covariance, double residualSd) {
    this.parameters = parameters;
    this.covariance = covariance;
    this.residualSd = residualSd;
  }

  /** A curve y(x) with parameters. */
  @FunctionalInterface
  public interface Curve {
    /** Returns y at x. */
    double at(double x, double[] parameters);

    /** Returns ∂y/∂p at x; here by central differences. */
    default double[] gradientAt(double x, double[] parameters) {
      double[] gradient = new double[parameters.length];
      double[] moved = parameters.clone();
      for (int j = 0; j < gradient.length; j++) {
        double step = STEP * Math.max(Math.abs(parameters[j]), 1e-6);
        moved[j] = parameters[j] + step;
        double above = at(x, moved);
        double up = moved[j];
        moved[j] = parameters[j] - step;
        gradient[j] = (above - at(x, moved)) / (up - moved[j]);
        moved[j] = parameters[j];
      }
      return gradient;
    }
  }

  /** Says that a fit found no answer, in one sentence. */
  public static final class NoFitException extends Exception {
    private static final long serialVersionUID = 1;

    NoFitException(String sentence, Throwable cause) {
      super(sentence, cause);
    }
  }

  /**
   * Fits the parameters of a curve to points.
   *
   * @param start the parameters to begin from
   * @throws IllegalArgumentException if there are no more points than parameters or a number is not
   *     finite
   * @throws NoFitException if the search does not converge or the points cannot separate the
   *     parameters
   */
  static NonlinearFit of(Curve curve, double[] x, double[] y, double[] start)
      throws NoFitException {
    Samples.sameLength(x, y, "x and y");
    Samples.finite(start, 1, "start");
    Samples.finite(x, start.length + 1, "x");
    Samples.finite(y, start.length + 1, "y");
    NonlinearFit best = null;
    RuntimeException last = null;
    for (double stepBound : FIRST_STEPS) {
      try {
        NonlinearFit fit = from(search(curve, x, y, start, stepBound), curve, x);
        best = best == null || fit.residualSd < best.residualSd ? fit : best;
      } catch (MathRuntimeException | IllegalArgumentException e) {
        last = e;
      }
    }
    if (best == null) {
      throw new NoFitException("no curve of this kind settles on the points", last);
    }
    return best;
  }

  private static NonlinearFit from(Optimum optimum, Curve curve, double[] x) {
    double[] parameters = optimum.getPoint().toArray();
    int spare = x.length - parameters.length;
    double variance = optimum.getResiduals().dotProduct(optimum.getResiduals()) / spare;
    double[][] covariance = DesignFit.inverseNormal(jacobian(curve, x, parameters), SINGULAR);
    for (double[] row : covariance) {
      for (int j = 0; j < row.length; j++) {
        row[j] *= variance;
      }
    }
    return new NonlinearFit(parameters, covariance, Math.sqrt(variance));
  }

  /** Returns fitted parameter j. */
  double parameter(int j) {
    return parameters[j];
  }

  /** Returns the standard uncertainty of parameter j. */
  double u(int j) {
    return Math.sqrt(covariance[j][j]);
  }

  /** Returns a copy of the covariance matrix of the parameters. */
  public double[][] covariance() {
    double[][] copy = covariance.clone();
    for (int i = 0; i < copy.length; i++) {
      copy[i] = covariance[i].clone();
    }
    return copy;
  }

  /** Returns s = √(χ²/(m − n)), in the unit of y. */
  public double residualSd() {
    return residualSd;
  }

  private static Optimum search(
      Curve curve, double[] x, double[] y, double[] start, double stepBound) {
    MultivariateJacobianFunction model =
        point -> {
          double[] parameters = point.toArray();
          double[] heights = new double[x.length];
          double[][] slopes = new double[x.length][];
          for (int i = 0; i < x.length; i++) {
            heights[i] = orElse(curve.at(x[i], parameters), OFF_THE_MAP);
            slopes[i] = curve.gradientAt(x[i], parameters);
            for (int j = 0; j < slopes[i].length; j++) {
              slopes[i][j] = orElse(slopes[i][j], 0);
            }
          }
          RealVector value = new ArrayRealVector(heights, false);
          RealMatrix matrix = new Array2DRowRealMatrix(slopes, false);
          return new Pair<>(value, matrix);
        };
    return new LevenbergMarquardtOptimizer()
        .withInitialStepBoundFactor(stepBound)
        .withCostRelativeTolerance(TOLERANCE)
        .withParameterRelativeTolerance(TOLERANCE)
        .withOrthoTolerance(TOLERANCE)
        .optimize(
            new LeastSquaresBuilder()
                .model(model)
                .target(y)
                .start(start)
                .maxEvaluations(MOST_EVALUATIONS)
                .maxIterations(MOST_EVALUATIONS)
                .build());
  }

  private static double orElse(double number, double other) {
    return Double.isFinite(number) ? number : other;
  }

  private static double[][] jacobian(Curve curve, double[] x, double[] parameters) {
    double[][] jacobian = new double[x.length][];
    for (int i = 0; i < x.length; i++) {
      jacobian[i] =
          Samples.finite(curve.gradientAt(x[i], parameters), parameters.length, "gradient");
    }
    return jacobian;
  }
}
