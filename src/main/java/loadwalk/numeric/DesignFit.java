package loadwalk.numeric;

import loadwalk.text.Sentence;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Fits y = Σ cⱼ·fⱼ by least squares through a QR decomposition with scaled columns, which keeps the
 * digits that the normal equations would lose.
 */
public final class DesignFit {
  private static final double SINGULAR = 1e-13;

  private final double[] coefficients;
  private final double[][] covariance;
  private final double residualSd;

  private DesignFit(double[] coefficients, double[][] covariance, double residualSd) {
    this.coefficients = coefficients;
    this.covariance = covariance;
    this.residualSd = residualSd;
  }

  /**
   * Fits the coefficients of the columns.
   *
   * @param design one row a point, one column a function fⱼ
   * @param y one value a point
   * @throws IllegalArgumentException if there are no more points than columns, a number is not
   *     finite, or columns depend on one another
   */
  public static DesignFit of(double[][] design, double[] y) {
    int columns = design.length == 0 ? 0 : design[0].length;
    Samples.finite(y, columns + 1, "y");
    RealMatrix matrix = checked(design, y.length, columns);
    double[] scale = scaleColumns(matrix);
    double[][] covariance = inverseNormal(design, SINGULAR);
    double[] c =
        new QRDecomposition(matrix, SINGULAR).getSolver().solve(new ArrayRealVector(y)).toArray();
    double squares = 0;
    double[] fitted = matrix.operate(c);
    for (int i = 0; i < y.length; i++) {
      squares += (y[i] - fitted[i]) * (y[i] - fitted[i]);
    }
    for (int j = 0; j < columns; j++) {
      c[j] /= scale[j];
    }
    int spare = y.length - columns;
    double variance = squares / spare;
    for (double[] row : covariance) {
      for (int j = 0; j < columns; j++) {
        row[j] *= variance;
      }
    }
    return new DesignFit(c, covariance, Math.sqrt(variance));
  }

  /** Fits a polynomial of the degree; coefficient j belongs to x to the power j. */
  public static DesignFit polynomial(double[] x, double[] y, int degree) {
    double[][] design = new double[x.length][degree + 1];
    for (int i = 0; i < x.length; i++) {
      double power = 1;
      for (int j = 0; j <= degree; j++) {
        design[i][j] = power;
        power *= x[i];
      }
    }
    return of(design, y);
  }

  /** Returns the coefficient of column j. */
  public double coefficient(int j) {
    return coefficients[j];
  }

  /** Returns the standard uncertainty of the coefficient of column j, from the scatter. */
  public double u(int j) {
    return Math.sqrt(covariance[j][j]);
  }

  /** Returns the covariance of the coefficients of columns i and j, scaled by s². */
  double covariance(int i, int j) {
    return covariance[i][j];
  }

  /** Returns s = √(χ²/(m − n)). */
  public double residualSd() {
    return residualSd;
  }

  /**
   * Returns (JᵀJ)⁻¹ by way of J = QR, as R⁻¹R⁻ᵀ.
   *
   * @param singular the least independent part of a column; below it the parameters cannot be
   *     separated
   */
  static double[][] inverseNormal(double[][] jacobian, double singular) {
    int columns = jacobian[0].length;
    RealMatrix matrix = checked(jacobian, jacobian.length, columns);
    double[] scale = scaleColumns(matrix);
    RealMatrix r =
        new QRDecomposition(matrix, singular).getR().getSubMatrix(0, columns - 1, 0, columns - 1);
    double[][] inverse = new double[columns][columns];
    double[][] upper = r.getData();
    for (int j = 0; j < columns; j++) {
      if (!(Math.abs(upper[j][j]) > singular)) {
        throw new IllegalArgumentException("the points do not tell the parameters apart");
      }
    }
    RealMatrix rInverse = invertUpper(upper);
    double[][] product = rInverse.multiplyTransposed(rInverse).getData();
    for (int i = 0; i < columns; i++) {
      for (int j = 0; j < columns; j++) {
        inverse[i][j] = product[i][j] / (scale[i] * scale[j]);
      }
    }
    return inverse;
  }

  private static RealMatrix invertUpper(double[][] upper) {
    int n = upper.length;
    RealMatrix inverse = new Array2DRowRealMatrix(n, n);
    for (int column = 0; column < n; column++) {
      for (int row = column; row >= 0; row--) {
        double sum = row == column ? 1 : 0;
        for (int k = row + 1; k <= column; k++) {
          sum -= upper[row][k] * inverse.getEntry(k, column);
        }
        inverse.setEntry(row, column, sum / upper[row][row]);
      }
    }
    return inverse;
  }

  private static RealMatrix checked(double[][] design, int rows, int columns) {
    if (design.length != rows || columns == 0) {
      throw new IllegalArgumentException(
          "the design needs one row a point, got " + design.length + " for " + rows);
    }
    for (int i = 0; i < rows; i++) {
      Samples.finite(design[i], columns, Sentence.of("design row {}", i));
    }
    return new Array2DRowRealMatrix(design, true);
  }

  /** Divides every column by its length and returns the lengths. */
  private static double[] scaleColumns(RealMatrix matrix) {
    double[] scale = new double[matrix.getColumnDimension()];
    for (int j = 0; j < scale.length; j++) {
      double[] column = matrix.getColumn(j);
      double length = matrix.getColumnVector(j).getNorm();
      if (!(length > 0)) {
        throw new IllegalArgumentException("the points do not tell the parameters apart");
      }
      for (int i = 0; i < column.length; i++) {
        column[i] /= length;
      }
      matrix.setColumn(j, column);
      scale[j] = length;
    }
    return scale;
  }
}
