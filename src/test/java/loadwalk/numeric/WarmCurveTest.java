package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Where the temperatures of a warm-up leave their curve; curves by Newton's law of cooling. */
class WarmCurveTest {
  private static final double[] MINUTES =
      IntStream.rangeClosed(1, 20).mapToDouble(i -> i).toArray();

  private static WarmCurve of(DoubleUnaryOperator celsius, double u) {
    return of(MINUTES, celsius, u);
  }

  private static WarmCurve of(double[] minutes, DoubleUnaryOperator celsius, double u) {
    double[] same = new double[minutes.length];
    Arrays.fill(same, u);
    return WarmCurve.of(minutes, Arrays.stream(minutes).map(celsius).toArray(), same);
  }

  private static double warming(double minutes) {
    return 60 - 38 * Math.exp(-minutes / 6);
  }

  @Test
  void curveOfOneTimeConstant_isNotParted() {
    WarmCurve curve = of(WarmCurveTest::warming, 0.1);
    assertFalse(curve.hasBreak() || curve.turnsAgain());
    assertEquals(60, curve.fit().settling().orElseThrow().endCelsius(), 1e-6);
    WarmCurve whole = of(t -> Math.rint(warming(t)), 0.33);
    assertFalse(whole.hasBreak(), "whole degrees");
    assertEquals(1, whole.scatter(), 0.3);
  }

  /** From the tenth minute on the fan halves the rise and the time constant. */
  private static double withFan(double minutes) {
    return minutes <= 10
        ? warming(minutes)
        : 41 + (warming(10) - 41) * Math.exp(-(minutes - 10) / 3);
  }

  @Test
  void fanThatSwitchesOn_partsTheCurveThere_andSaysHowFarItIsOff() {
    WarmCurve curve = of(WarmCurveTest::withFan, 0.1);
    assertTrue(curve.hasBreak());
    assertEquals(10, MINUTES[curve.since()], 1.5);
    assertTrue(curve.misfitKelvin() > 3, curve.toString());
    assertEquals(41, curve.fit().settling().orElseThrow().endCelsius(), 0.5);
  }

  @Test
  void heatsinkThatTurned_mayTurnAgain_forAWhile() {
    assertTrue(of(WarmCurveTest::withFan, 0.1).turnsAgain());
    double[] longer = IntStream.rangeClosed(1, 36).mapToDouble(i -> i).toArray();
    assertFalse(of(longer, WarmCurveTest::withFan, 0.1).turnsAgain());
    assertTrue(of(longer, t -> 45 + 4 * Math.sin(t / 1.5), 0.1).turnsAgain(), "a fan that cycles");
  }

  @Test
  void newestSlope_takesAsFewReadingsAsTellIt() {
    double[] u = new double[20];
    Arrays.fill(u, 0.1);
    double[] celsius = Arrays.stream(MINUTES).map(t -> 20 + 0.7 * t).toArray();
    NewestSlope slope = NewestSlope.of(MINUTES, celsius, u, 0.1).orElseThrow();
    assertEquals(0.7, slope.perMinute(), 1e-9);
    assertEquals(3, slope.readings());
    assertEquals(0.1 / Math.sqrt(2), slope.u(), 1e-9);
    assertEquals(0.7 + 2 * slope.u(), slope.most(), 1e-9);
    NewestSlope finer = NewestSlope.of(MINUTES, celsius, u, 0.02).orElseThrow();
    assertTrue(finer.u() <= 0.02 && finer.readings() > 5, finer.toString());
  }

  @Test
  void twoReadings_orThreeInAQuarterOfAnHour_tellNoSlope() {
    double[] u = {0.1, 0.1, 0.1};
    double[] same = {50, 50, 50};
    assertTrue(NewestSlope.of(new double[] {0, 6, 12.1}, same, u, 0.1).isEmpty());
    assertTrue(NewestSlope.of(new double[] {0, 6, 12}, same, u, 0.1).isPresent());
    assertTrue(
        NewestSlope.of(new double[] {0, 6}, new double[] {5, 5}, new double[] {1, 1}, 0.1)
            .isEmpty());
  }
}
