package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Volts fall at least as fast below the least load measured as between the two above it. */
class BendTest {
  private static WalkReadings.Point point(double ohms, double logVolts) {
    return new WalkReadings.Point(ohms, false, logVolts, Double.NaN, Double.NaN);
  }

  @Test
  void bound_goesOnAsFastAsBetweenTheTwoLeastLoads() {
    List<WalkReadings.Point> points = List.of(point(4, 3), point(2, 2.9), point(1, 2.7));
    assertEquals(2.5, VoltsFallBound.of(points, 0.5).bound(), 1e-9);
    assertEquals(2.3, VoltsFallBound.of(points, 0.25).bound(), 1e-9);
    assertTrue(
        VoltsFallBound.of(points, 0.25).softness() > VoltsFallBound.of(points, 0.5).softness());
  }

  @Test
  void softness_isThatOfALineGoneOnBeyondItsReadings() {
    // One octave on, v = 2 v(least) - v(next): 4 + 1 variances of a reading, and 1 of the reading
    // to come; two octaves on 9 + 4 + 1; a load read twice has half the variance: 2 + 1 + 1.
    List<WalkReadings.Point> once = List.of(point(2, 2.9), point(1, 2.7));
    List<WalkReadings.Point> twice = List.of(point(2, 2.9), point(1, 2.7), point(1, 2.7));
    double reading = (variance(once, 0.25) - variance(once, 0.5)) / (14 - 6);
    assertTrue(reading > 0);
    assertEquals(2 * reading, variance(once, 0.5) - variance(twice, 0.5), 1e-12);
    assertTrue(variance(once, 0.5) > 6 * reading, "drift and bridging come on top");
  }

  private static double variance(List<WalkReadings.Point> points, double ohms) {
    return Math.pow(VoltsFallBound.of(points, ohms).softness(), 2);
  }

  @Test
  void bound_takesTheMeanOfALoadReadTwice() {
    List<WalkReadings.Point> points = List.of(point(2, 2.9), point(1, 2.69), point(1, 2.71));
    assertEquals(2.5, VoltsFallBound.of(points, 0.5).bound(), 1e-9);
  }

  @Test
  void bound_neverRises_whereVoltsWereReadToRise() {
    assertEquals(3.01, VoltsFallBound.of(List.of(point(4, 3), point(2, 3.01)), 1).bound(), 1e-9);
  }

  @Test
  void oneLoadMeasured_orALoadAboveTheLeast_isNotHeld() {
    Mixture any = Mixture.normal(3, 0.1);
    assertSame(any, VoltsFallBound.of(List.of(), 1).hold(any));
    assertSame(any, VoltsFallBound.of(List.of(point(4, 3)), 2).hold(any));
    assertSame(any, VoltsFallBound.of(List.of(point(4, 3), point(2, 2.9)), 2).hold(any));
    assertSame(any, VoltsFallBound.of(List.of(point(4, 3), point(2, 2.9)), 3).hold(any));
  }

  @Test
  void hold_isTheTruncatedNormal_whereTheBoundIsSharp() {
    // Half a normal: mean lower by sqrt(2/pi), variance 1 - 2/pi of the whole (textbook).
    Mixture half = Mixture.normal(0, 1).heldBelow(0, 1e-9, 1);
    assertEquals(-Math.sqrt(2 / Math.PI), half.mean(), 1e-4);
    assertEquals(Math.sqrt(1 - 2 / Math.PI), half.deviation(), 1e-4);
  }

  @Test
  void hold_farBelowTheBound_changesNothing_andFarAboveKeepsTheRestOfTheWeight() {
    Mixture below = Mixture.normal(-9, 1).heldBelow(0, 0.01, 0.99);
    assertEquals(-9, below.mean(), 1e-6);
    Mixture both =
        new Mixture.Builder().add(0.5, -9, 0.1).add(0.5, 9, 0.1).build().heldBelow(0, 0.01, 0.9);
    assertEquals(0.05 / 0.55, 1 - both.cumulative(0), 1e-3);
  }
}
