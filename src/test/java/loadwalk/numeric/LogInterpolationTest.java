package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.numeric.LogInterpolation.Found;
import loadwalk.numeric.LogInterpolation.Point;
import loadwalk.numeric.LogInterpolation.Refused;
import org.junit.jupiter.api.Test;

class LogInterpolationTest {
  private static Point point(double volts, double thd) {
    return new Point(volts, 0.02, thd, 0.01 * thd);
  }

  private static Found found(double limit, Point... points) {
    return assertInstanceOf(Found.class, LogInterpolation.at(limit, List.of(points)));
  }

  private static String refused(double limit, Point... points) {
    return assertInstanceOf(Refused.class, LogInterpolation.at(limit, List.of(points))).sentence();
  }

  @Test
  void exponentialRise_isMetExactly_inAnyOrder() {
    double limit = 1;
    Found at = found(limit, point(22, 0.1), point(24, 10), point(20, 0.01));
    assertEquals(23, at.volts(), 1e-12);
    assertTrue(at.u() > 0.02);
  }

  /** Every pair of rows of the clipped-sine table that holds 1 %, up to a factor of ten in THD. */
  @Test
  void hardClipper_liesWithinTheBand() {
    double[][] table = Reference.columns("thd-clipped-sine.csv");
    double[] thd = table[0];
    double[] rms = table[6];
    double truth = 0.723707767;
    int checked = 0;
    for (int i = 0; i < thd.length; i++) {
      for (int j = 0; j < thd.length; j++) {
        if (thd[i] < 1 && thd[j] > 1 && thd[j] <= 10 * thd[i]) {
          Point low = new Point(rms[i], 0, thd[i], 0);
          Point high = new Point(rms[j], 0, thd[j], 0);
          Found at = found(1, low, high);
          assertEquals(truth, at.volts(), Math.sqrt(3) * at.u(), thd[i] + " to " + thd[j]);
          checked++;
        }
      }
    }
    assertEquals(5, checked);
  }

  @Test
  void readingAtTheLimit_isTakenAsItIs() {
    assertEquals(
        new Found(24, 0.02), LogInterpolation.at(1, List.of(point(23, 0.2), point(24, 1))));
    Found at = found(1, new Point(24, 0.02, 1, 0), point(25, 3));
    assertEquals(24, at.volts());
    assertEquals(0.02, at.u(), 1e-15);
  }

  @Test
  void extrapolation_isRefusedWithASentence() {
    assertEquals(
        "The highest reading, 24.00 V, has 0.8000 % THD, below 1.000 %: take one reading above"
            + " it.",
        refused(1, point(23, 0.5), point(24, 0.8)));
    assertTrue(refused(1, point(23, 2), point(24, 3)).contains("one reading below it"));
    assertTrue(refused(1, point(23, 2)).startsWith("Two readings"));
    assertTrue(
        refused(1, point(20, 0.5), point(21, 2), point(22, 0.4), point(23, 3))
            .contains("more than once"));
    assertTrue(refused(1, point(20, 0.5), point(20, 2)).contains("take them again"));
  }

  @Test
  void notANumber_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Point(1, 0, Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> new Point(1, 0, 0, 0));
    List<Point> points = List.of(point(20, 0.5), point(21, 2));
    assertThrows(IllegalArgumentException.class, () -> LogInterpolation.at(Double.NaN, points));
  }
}
