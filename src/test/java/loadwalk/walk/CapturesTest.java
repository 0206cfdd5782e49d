package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.plan.StockRules;
import loadwalk.quantity.Quantity;
import loadwalk.result.Criterion;
import loadwalk.result.StepResult;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState;
import org.junit.jupiter.api.Test;

class CapturesTest {
  private final Floor floor = new Floor();

  static Capture capture(double thdPercent, boolean atLimit, OptionalDouble calibrationU) {
    return new Capture(
        "ramp.wav",
        "ab12",
        1,
        40,
        13.25,
        0.01,
        42,
        calibrationU,
        "volts per full scale and divider ratio",
        OptionalDouble.of(thdPercent),
        atLimit,
        "interpolation of log THD between two levels",
        "no distortion to name",
        "no",
        Collections.nCopies(128, 1.5),
        List.of(0.1, thdPercent));
  }

  /** Returns a capture of the same wave by a recorder that clipped. */
  static Capture clipped(Capture c) {
    return new Capture(
        c.file(),
        c.sha256(),
        c.channel(),
        c.hertz(),
        c.volts(),
        c.scatterVolts(),
        c.voltsPerUnit(),
        c.calibrationU(),
        c.calibration(),
        c.thdPercent(),
        c.atLimit(),
        c.method(),
        c.shape(),
        "yes",
        c.cycle(),
        c.harmonics());
  }

  private void running() {
    floor.at("stereo-4").hear(new Intent.Begin());
  }

  private Intent take(Capture capture) {
    return new Intent.TakeCapture("stereo-4", capture, 1_700_000_000_000L);
  }

  @Test
  void wave_entersTheStep_withItsNameAndHash() {
    running();
    Capture capture = capture(1, true, OptionalDouble.of(0.005));
    floor.hear(take(capture));
    StepState step = floor.step("stereo-4");
    assertEquals(List.of(capture), step.captures());
    Entry volts = step.latest(ReadingId.OUTPUT_VOLTS).orElseThrow();
    assertEquals(13.25, volts.value());
    assertEquals("capture ramp.wav", volts.instrument().orElseThrow().meter());
    assertEquals("sha256 ab12", volts.instrument().orElseThrow().identity());
    assertEquals(1, step.latest(ReadingId.THD_PERCENT).orElseThrow().value());
    assertEquals(Optional.of(capture), step.captureOfOutput());
    assertEquals(Criterion.THD_LIMIT, step.criterion(1));
    assertEquals(
        "Taken from ramp.wav: 13.25 V at 1.00 % THD. It counts as read at the THD limit.",
        floor.said());
  }

  @Test
  void uncertainty_isTheCapturesOwn_andNotTheMeters() {
    running();
    floor.hear(take(capture(1, true, OptionalDouble.of(0.005))));
    Quantity volts = result().outputVolts().orElseThrow();
    // The wave's own scatter, its calibration, and 0.4 % of volts for setting the limit by hand.
    double own = Math.hypot(0.01, 0.005 * 13.25);
    assertEquals(Math.hypot(own, 0.004 * 13.25), volts.u(), 1e-12);
  }

  @Test
  void unstatedCalibration_isAssumed_andSaid() {
    running();
    floor.hear(take(capture(1, true, OptionalDouble.empty())));
    Quantity volts = result().outputVolts().orElseThrow();
    double own = Math.hypot(0.01, 0.01 / Math.sqrt(3) * 13.25);
    assertEquals(Math.hypot(own, 0.004 * 13.25), volts.u(), 1e-12);
    assertTrue(
        result().remarks().stream().anyMatch(r -> r.code().equals("calibration-assumed")),
        result().remarks()::toString);
  }

  private StepResult result() {
    return Results.of(floor.model.state(), StockRules.RULES.wire()).step("stereo-4").orElseThrow();
  }

  @Test
  void wave_saysAtWhatTheOutputWasRead() {
    running();
    floor.hear(take(capture(0.3, false, OptionalDouble.empty())));
    assertEquals(Criterion.BELOW_LIMIT, floor.step("stereo-4").criterion(1));
    assertTrue(floor.said().endsWith("It counts as read below the limit."), floor.said());
    floor.hear(take(capture(1, true, OptionalDouble.empty())));
    assertEquals(Criterion.THD_LIMIT, floor.step("stereo-4").criterion(1));
    floor.hear(new Intent.SetCriterion("stereo-4", Criterion.CLIPPING_ONSET));
    floor.hear(take(capture(0.3, false, OptionalDouble.empty())));
    assertEquals(Criterion.BELOW_LIMIT, floor.step("stereo-4").criterion(1));
  }

  @Test
  void laterTypedVolts_standWithoutTheWave() {
    running();
    floor.hear(take(capture(1, true, OptionalDouble.empty())));
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.1 V"));
    assertEquals(Optional.empty(), floor.step("stereo-4").captureOfOutput());
    assertEquals(1, floor.step("stereo-4").captures().size());
  }

  @Test
  void doubtedWave_keepsItsDoubt() {
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    running();
    floor.hear(take(capture(1, true, OptionalDouble.empty())));
    assertEquals(List.of(ReadingId.OUTPUT_VOLTS), floor.step("stereo-4").openDoubts());
  }

  @Test
  void stepThatDoesNotRun_takesNoWave() {
    floor.at("stereo-4");
    floor.hear(take(capture(1, true, OptionalDouble.empty())));
    assertTrue(floor.said().contains("start the step first"), floor.said());
    floor.hear(new Intent.TakeCapture("idle", capture(1, true, OptionalDouble.empty()), 0));
    assertEquals("idle takes no output from a wave.", floor.said());
    assertFalse(floor.holds(Fact.Captured.class));
  }

  /** The same file taken twice, after its calibration was put right: the later one counts. */
  @Test
  void waveTakenAgain_replacesTheEarlierOne() {
    running();
    floor.hear(take(capture(1, true, OptionalDouble.empty())));
    Capture again = capture(1, true, OptionalDouble.of(0.002));
    floor.hear(take(again));
    assertEquals(Optional.of(again), floor.step("stereo-4").captureOfOutput());
  }

  /** Nearer than four fifths of the limit counts as at it, whatever the limit. */
  @Test
  void wave_isBelowTheLimit_byPartsOfTheLimit() {
    Floor ten = new Floor(Floor.SEQUENCE.replace("\"thdPercent\":1.0", "\"thdPercent\":10"));
    ten.at("stereo-4").hear(new Intent.Begin());
    ten.hear(take(capture(9, false, OptionalDouble.empty())));
    assertEquals(Criterion.THD_LIMIT, ten.step("stereo-4").criterion(10));
    ten.hear(take(capture(6, false, OptionalDouble.empty())));
    assertEquals(Criterion.BELOW_LIMIT, ten.step("stereo-4").criterion(10));
  }
}
