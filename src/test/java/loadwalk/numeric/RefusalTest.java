package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What is refused, and in which words: a wrong number must be told, not computed with. */
class RefusalTest {
  private static final String SAME_X = "all x are equal: they carry no slope";
  private static final String DEGREES = "degrees of freedom must be above 0, got 0.0";
  private static final double NAN = Double.NaN;

  private static void refused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }

  private static double[] of(double... numbers) {
    return numbers;
  }

  @Test
  void line_namesWhatIsWrong() {
    refused(
        "x and weights must have equal lengths, got 2 and 3",
        () -> LinearFit.line(of(1, 2), of(1, 2), of(1, 1, 1)));
    refused(
        "weights[1] must be a number above 0, got 0.0",
        () -> LinearFit.line(of(1, 2, 3), of(1, 2, 4), of(1, 0, 1)));
    refused("y[1] must be finite, got NaN", () -> LinearFit.line(of(1, 2), of(1, NAN)));
    refused(SAME_X, () -> LinearFit.line(of(0, 0), of(1, 2)));
    refused(SAME_X, () -> LinearFit.line(of(5, 5, 5), of(1, 2, 3)));
  }

  @Test
  void line_throughEqualX_isRefusedWhateverTheirSize() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      double x = random.nextDouble() * 1e6;
      double[] weights = {random.nextDouble(), random.nextDouble(), random.nextDouble()};
      refused(SAME_X, () -> LinearFit.line(of(x, x, x), of(1, 2, 3), weights));
    }
  }

  @Test
  void design_namesWhatIsWrong() {
    refused(
        "design row 1[0] must be finite, got NaN",
        () -> DesignFit.of(new double[][] {{1}, {NAN}, {2}}, of(1, 2, 3)));
    refused(
        "y needs at least 3 numbers, got 2",
        () -> DesignFit.of(new double[][] {{1, 2}, {1, 3}}, of(1, 2)));
    refused(
        "the points do not tell the parameters apart",
        () -> DesignFit.of(new double[][] {{1, 0}, {2, 0}, {3, 0}}, of(1, 2, 4)));
  }

  @Test
  void propagation_namesWhatIsWrong() {
    double[][] one = {{1}};
    refused(
        "gradients must have equal lengths, got 1 and 2",
        () -> Propagation.covariance(of(1), of(1, 0), one));
  }

  @Test
  void quantiles_nameWhatIsWrong() {
    String zero = "probability must be between 0 and 1, got 0.0";
    refused(zero, () -> Quantiles.normalQuantile(0));
    refused(zero, () -> Quantiles.studentQuantile(0, 5));
    refused("probability must be between 0 and 1, got 1.0", () -> Quantiles.normalQuantile(1));
    refused(DEGREES, () -> Quantiles.studentQuantile(0.5, 0));
  }

  @Test
  void positiveMatrix_isHeldAgainstItsOwnSize() {
    double[][] dependent = {{1e6, 0}, {1e6, 1e6 + 1e-7}};
    refused(
        "the samples do not tell the parameters apart", () -> PositiveMatrix.of(dependent, 1e-12));
    double[][] inverse =
        PositiveMatrix.of(new double[][] {{1e-6, 0}, {1e-6, 1.01e-6}}, 1e-12).inverse();
    assertEquals(101e6, inverse[0][0], 1);
    assertEquals(-1e8, inverse[0][1], 1);
    assertEquals(1e8, inverse[1][1], 1);
  }

  @Test
  void thermalFit_namesTheReading() {
    refused("minutes must rise, at reading 3", () -> ThermalFit.of(of(1, 2, 2), of(20, 21, 22)));
    refused(
        "minutes and celsius must have equal lengths, got 2 and 3",
        () -> ThermalFit.of(of(1, 2), of(20, 21, 22)));
  }

  @Test
  void limitPassedTwice_isToldWithBothReadings() {
    List<LogInterpolation.Point> points =
        List.of(point(20, 0.5), point(21, 2), point(22, 0.4), point(23, 3));
    LogInterpolation refused = LogInterpolation.at(1, points);
    assertTrue(
        refused.toString().contains("1.000 % more than once between 20.00 V and 23.00 V"),
        refused.toString());
  }

  private static LogInterpolation.Point point(double volts, double thd) {
    return new LogInterpolation.Point(volts, 0.02, thd, 0.01 * thd);
  }
}
