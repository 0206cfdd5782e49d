package loadwalk.result;

import static loadwalk.result.Readings.bench;
import static loadwalk.result.Readings.bridged;
import static loadwalk.result.Readings.load;
import static loadwalk.result.Readings.meter;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.stereo;
import static loadwalk.result.Readings.volts;
import static loadwalk.result.Readings.walk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The damping factor: from which loaded step, and only where the meter can tell the volts apart.
 */
class SourceResistanceTest {
  private static final Bench FINE =
      bench(
          List.of(meter(ReadingId.OUTPUT_VOLTS, 0.5, 1, 0.01)),
          List.of(load(8, 0), load(4, 0), load(2, 0), load(1, 0)));

  /**
   * One digit of 0.01 V on each of two readings of 20 V: u(V₀/V) = 0.01/√3·√2/20 = 0.00041. Two
   * equal rectangular parts need k = 1.93 for 95 % (the triangle of half-width 0.001), so 0.00079
   * or 0.0157 V of 20 V.
   */
  @ParameterizedTest
  @CsvSource({"20.00, false", "20.01, false", "20.02, true", "20.10, true"})
  void dampingFactor_isGivenOnlyIfTheMeterTellsTheVoltsApart(double open, boolean resolved) {
    WalkResult result = walk(FINE, stereo(4, volts(20), open(open)));
    assertEquals(resolved, result.dampingFactor().isPresent());
    assertEquals(4 * (open / 20 - 1), result.sourceResistance().orElseThrow().value(), 1e-9);
    assertEquals(
        resolved ? 0 : 1,
        result.remarks().stream()
            .filter(r -> r.code().equals("damping-factor-not-resolved"))
            .count());
  }

  @Test
  void dampingFactorNotResolved_isSaidWithItsLeast() {
    // Rs = 4·0.0005 = 0.002 Ω, expanded by 1.93·4·0.0004083 = 0.00315 Ω: 4/0.00515 = 777.
    assertTrue(
        texts(walk(FINE, stereo(4, volts(20), open(20.01))))
            .contains(
                "the meter cannot tell the volts with and without load apart: the damping factor is"
                    + " at least 780"));
  }

  @Test
  void dampingFactorBelowZero_countsFromZero() {
    // V₀ < V is scatter: the least factor comes from the uncertainty alone, 4/0.00315 = 1270.
    assertTrue(
        texts(walk(FINE, stereo(4, volts(20), open(19.99))))
            .contains(
                "the meter cannot tell the volts with and without load apart: the damping factor is"
                    + " at least 1300"));
  }

  @Test
  void dampingFactorOfAnExactMeter_hasNoLeast() {
    Bench exact = bench(List.of(meter(ReadingId.OUTPUT_VOLTS, 0.5, 0, 0)), List.of(load(4, 0)));
    TakenReading loaded = new TakenReading(ReadingId.OUTPUT_VOLTS, 20, 0);
    TakenReading unloaded = new TakenReading(ReadingId.OPEN_VOLTS, 20, 0);
    assertTrue(
        texts(walk(exact, stereo(4, loaded, unloaded)))
            .contains("the volts with and without load are equal: no damping factor can be given"));
  }

  @Test
  void openStepOfALoad_takesTheStepOfThatLoad() {
    assertEquals(
        "stereo-2",
        loadedStep(stereo(4, volts(20)), stereo(2, volts(18)), openStep(Mode.STEREO, 2.001)));
  }

  @Test
  void openStepWithoutALoad_takesTheLightestOfItsMode() {
    assertEquals(
        "stereo-4",
        loadedStep(
            bridged(8, volts(36)),
            stereo(2, volts(18)),
            stereo(4, volts(20)),
            stereo(1, volts(15)),
            openStep(Mode.STEREO, Double.NaN)));
    assertEquals(
        "bridged-8",
        loadedStep(
            bridged(8, volts(21)), stereo(4, volts(20)), openStep(Mode.BRIDGED, Double.NaN)));
  }

  @Test
  void loadedStepWithoutVolts_isPassedOver() {
    assertEquals(
        "stereo-2",
        loadedStep(
            stereo(4, of(ReadingId.SUPPLY_VOLTS, 14)),
            stereo(8, volts(0)),
            stereo(2, volts(18)),
            openStep(Mode.STEREO, Double.NaN)));
  }

  @Test
  void ownVoltsOfTheOpenStep_goFirst() {
    WalkResult result = walk(FINE, stereo(8, volts(20.5)), stereo(4, volts(20), open(22)));
    assertEquals(4 * 0.1, result.sourceResistance().orElseThrow().value(), 1e-9);
    assertEquals(4 / 0.4, result.dampingFactor().orElseThrow().value(), 1e-9);
  }

  @Test
  void openVoltsWithoutAnyLoadedStep_giveNothing() {
    WalkResult result = walk(FINE, openStep(Mode.STEREO, Double.NaN));
    assertEquals(Optional.empty(), result.sourceResistance());
    assertEquals(Optional.empty(), result.dampingFactor());
  }

  @Test
  void readingsOfAWarmUp_areNotTheLoadedVolts() {
    MeasuredStep warm = Readings.below("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 8, volts(14));
    assertEquals(
        "stereo-2", loadedStep(warm, stereo(2, volts(18)), openStep(Mode.STEREO, Double.NaN)));
  }

  /** Returns the id of the step whose loaded volts were used, from the remark on it. */
  private static String loadedStep(MeasuredStep... steps) {
    String said =
        texts(walk(FINE, steps)).stream()
            .filter(t -> t.startsWith("source resistance uses"))
            .findFirst()
            .orElseThrow();
    assertTrue(
        said.endsWith(
            " and the unloaded volts of open-load: right only if nobody touched the generator in"
                + " between"),
        said);
    return said.replaceAll("^source resistance uses the loaded volts of (.*) and the un.*$", "$1");
  }

  private static List<String> texts(WalkResult result) {
    return result.remarks().stream().map(Remark::text).toList();
  }

  private static TakenReading open(double volts) {
    return of(ReadingId.OPEN_VOLTS, volts);
  }

  private static MeasuredStep openStep(Mode mode, double ohms) {
    return Readings.below("open-load", Target.Kind.OPEN_LOAD, mode, ohms, open(22));
  }
}
