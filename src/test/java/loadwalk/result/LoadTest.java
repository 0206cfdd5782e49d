package loadwalk.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What heat and leads do to a load. */
class LoadTest {
  private static final String HALF = "load above its cold ohms, not corrected for";

  /**
   * 100 ppm/K over 150 K is 1.5 % (the resistor reference, computed): 60 mΩ of 4 Ω. 225 K at the
   * rated 300 W (MIL-PRF-39009), so 150 K at 200 W in one, or at 400 W in two that share them.
   */
  @ParameterizedTest
  @CsvSource({"200, 1, 0.06", "400, 2, 0.06", "100, 1, 0.03", "300, 1, 0.09", "600, 1, 0.09"})
  void heat_isHalfInTheMiddle_andTheRestEitherWay(double watts, long count, double most) {
    Map<String, Double> parts = load(OptionalDouble.of(100), count).hot(watts).contributions();
    assertEquals(most / 2, parts.get(HALF), 1e-12);
    assertEquals(most / 2 / Math.sqrt(3), parts.get("heat in load bank"), 1e-12);
  }

  @Test
  void heatOfAResistorThatFalls_isTakenOff() {
    Map<String, Double> parts = load(OptionalDouble.of(-100), 1).hot(200).contributions();
    assertEquals(-0.03, parts.get(HALF), 1e-12);
  }

  @Test
  void coldOhms_standAsTheyWere() {
    assertEquals(4, load(OptionalDouble.of(100), 1).hot(300).value());
    assertEquals(0, load(OptionalDouble.of(100), 1).hot(0).u());
    assertEquals(0, load(OptionalDouble.of(0), 1).hot(300).u());
  }

  /** ±100 ppm/K times 0 to 150 K: the mean square of the product is 100²/3 · 150²/3. */
  @Test
  void unknownCoefficient_isAWidthToBothSides() {
    Quantity hot = load(OptionalDouble.empty(), 1).hot(200);
    assertEquals(4 * 0.015 / 3, hot.u(), 1e-12);
    assertFalse(hot.contributions().containsKey(HALF));
    Load nothingKnown = new Load(Quantity.exact(4, Unit.OHM), "4 Ω", Optional.empty());
    assertEquals(4 * 0.015 / 3, nothingKnown.hot(1).u(), 1e-12);
  }

  /** Heat and lead lie on the same side: half of both adds up before it is squared. */
  @Test
  void whatIsNotCorrected_addsUp() {
    StepResult step =
        Readings.step(bench(100), Readings.bridged(4, Readings.volts(Math.sqrt(800))));
    Map<String, Double> parts = step.loadOhms().orElseThrow().contributions();
    assertEquals(0.03 + 0.01, parts.get(HALF), 1e-9);
  }

  /** The same load gets as hot again, so that a recheck does not count it. */
  @Test
  void heatOfTheSameLoad_cancelsBetweenRuns() {
    MeasuredStep first = Readings.bridged(4, Readings.volts(28));
    MeasuredStep again = Readings.rechecking(Readings.named(first, "again"), first.stepId());
    assertEquals(
        Readings.walk(bench(0), first, again).rechecks().get(0).limitWatts(),
        Readings.walk(bench(200), first, again).rechecks().get(0).limitWatts(),
        1e-9);
  }

  private static Bench bench(double ppm) {
    return Readings.bench(
        List.of(Readings.meter(ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01)),
        List.of(resistor(OptionalDouble.of(ppm))));
  }

  private static Load load(OptionalDouble ppm, long count) {
    return new Load(
        Quantity.exact(4, Unit.OHM), "bank", Optional.of(new Load.Made(resistor(ppm), count)));
  }

  private static LoadResistor resistor(OptionalDouble ppm) {
    return new LoadResistor("bank", 4, 1, 300, 8, ppm);
  }
}
