package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.junit.jupiter.api.Test;

class PositiveMatrixTest {
  private static final long SEED = 20260715;
  private static final int SIZE = 9;

  @Test
  void of_agreesWithALinearAlgebraLibrary() {
    double[][] covariance = covariance(new SplittableRandom(SEED));
    CholeskyDecomposition library = new CholeskyDecomposition(new Array2DRowRealMatrix(covariance));
    PositiveMatrix matrix = PositiveMatrix.of(covariance, 0);
    double[][] expected = library.getSolver().getInverse().getData();
    for (int i = 0; i < SIZE; i++) {
      assertArrayEquals(expected[i], matrix.inverse()[i], 1e-9, "seed " + SEED);
    }
    assertEquals(Math.log(library.getDeterminant()), matrix.logDeterminant(), 1e-9);
  }

  @Test
  void of_theLowerHalf_isTheWholeMatrix() {
    double[][] lower = {{2, Double.NaN}, {0.5, 1}};
    double[][] inverse = PositiveMatrix.of(lower, 0).inverse();
    assertArrayEquals(new double[] {1 / 1.75, -0.5 / 1.75}, inverse[0], 1e-15);
    assertArrayEquals(new double[] {-0.5 / 1.75, 2 / 1.75}, inverse[1], 1e-15);
  }

  @Test
  void of_aMatrixThatIsNoCovariance_isRefused() {
    double[][] wrong = {{1, 2}, {2, 1}};
    assertThrows(IllegalArgumentException.class, () -> PositiveMatrix.of(wrong, 0));
    double[][] unknown = {{Double.NaN}};
    assertThrows(IllegalArgumentException.class, () -> PositiveMatrix.of(unknown, 0));
  }

  private static double[][] covariance(SplittableRandom random) {
    double[][] matrix = new double[SIZE][SIZE];
    for (int i = 0; i < SIZE; i++) {
      matrix[i][i] = 1;
    }
    for (int part = 0; part < 3; part++) {
      double[] v = random.doubles(SIZE).toArray();
      for (int i = 0; i < SIZE; i++) {
        for (int j = 0; j < SIZE; j++) {
          matrix[i][j] += v[i] * v[j];
        }
      }
    }
    return matrix;
  }
}
