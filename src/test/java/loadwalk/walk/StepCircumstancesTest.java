package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.bench.ThdKind;
import loadwalk.result.Circumstances;
import loadwalk.result.Criterion;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

/** How a step was read: warm or not, for how long, in what air. */
class StepCircumstancesTest {
  private final Floor floor = new Floor();

  private Circumstances around(String step) {
    WalkState state = floor.model.state();
    return StepCircumstances.of(state, state.planned(step).orElseThrow());
  }

  private void warmed() {
    floor.hear(new Intent.Begin()).letPass(600).hear(new Intent.Finish());
  }

  private void read(String step) {
    String ohms = step.substring(step.indexOf('-') + 1);
    floor.hear(new Intent.Arm(ohms));
    floor.hear(new Intent.Enter(step, ReadingId.OUTPUT_VOLTS, "13.4 V"));
    floor.hear(new Intent.SetCriterion(step, Criterion.THD_LIMIT));
  }

  private void done(String step) {
    read(step);
    floor.hear(new Intent.Finish());
  }

  @Test
  void stepAfterAWholeWarmUp_isWarm() {
    warmed();
    floor.at("stereo-4");
    done("stereo-4");
    assertEquals(Optional.of(true), around("stereo-4").warm());
  }

  @Test
  void stepAfterOneEndedEarlyOrSkipped_isNot() {
    floor.hear(new Intent.Begin()).letPass(500).hear(new Intent.EndEarly("no time today"));
    floor.at("stereo-4");
    done("stereo-4");
    assertEquals(Optional.of(false), around("stereo-4").warm());
    Floor skipped = new Floor().at("stereo-4");
    assertEquals(
        Optional.of(false),
        StepCircumstances.of(
                skipped.model.state(), skipped.model.state().planned("stereo-4").orElseThrow())
            .warm());
  }

  @Test
  void stepReadAfterItCooled_isNotWarm_andTheNextWarmUpChangesThat() {
    warmed();
    floor.at("stereo-4");
    done("stereo-4");
    floor.letPass(1000);
    assertTrue(floor.model.state().cooled().isPresent());
    done("bridged-4");
    assertEquals(Optional.of(true), around("stereo-4").warm());
    assertEquals(Optional.of(false), around("bridged-4").warm());
    floor.hear(new Intent.WarmAgain());
    warmed();
    done("bridged-2");
    assertEquals(Optional.of(true), around("bridged-2").warm());
    assertEquals(Optional.of(false), around("bridged-4").warm());
  }

  /** What is typed later corrects the reading; the amplifier was as it was. */
  @Test
  void amendmentOfAFinishedStep_keepsHowItWasRead() {
    warmed();
    floor.at("stereo-4").hear(new Intent.Begin()).letPass(40);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.4 V"));
    floor.hear(new Intent.Finish()).letPass(1000);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_WATTS, "46 W"));
    assertEquals(46, floor.step("stereo-4").output().orElseThrow().value());
    assertEquals(Optional.of(true), around("stereo-4").warm());
    assertEquals(OptionalDouble.of(40), around("stereo-4").heldSeconds());
  }

  @Test
  void warmUpEndedEarlyAndThenDoneAgain_counts() {
    floor.hear(new Intent.Begin()).letPass(500).hear(new Intent.EndEarly("no time today"));
    floor.at("stereo-4").hear(new Intent.WarmAgain());
    warmed();
    done("stereo-4");
    assertEquals(Optional.of(true), around("stereo-4").warm());
  }

  @Test
  void heldSeconds_countFromTheStart_andAnAmendmentWhileItRunsCountsOn() {
    warmed();
    floor.at("stereo-4").hear(new Intent.Begin()).letPass(12.34);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.4 V"));
    assertEquals(OptionalDouble.of(12.3), around("stereo-4").heldSeconds());
    floor.letPass(10).hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.3 V"));
    assertEquals(OptionalDouble.of(22.3), around("stereo-4").heldSeconds());
  }

  @Test
  void wallClockSetForward_holdsNothingLonger() {
    warmed();
    floor.at("stereo-4").hear(new Intent.Begin()).letPass(5);
    Model.Clock clock = floor.model.clock();
    long nanos = clock.monoNanos().orElseThrow() + 1_000_000_000L;
    floor.hear(new Event.Tick(nanos, clock.wallMillis() + 300_000));
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.4 V"));
    assertEquals(OptionalDouble.of(6), around("stereo-4").heldSeconds());
  }

  @Test
  void pauseStopAndAWalkReadAgain_loseCount() {
    warmed();
    floor.at("stereo-4").hear(new Intent.Begin()).letPass(5);
    floor.hear(new Intent.Pause()).hear(new Intent.Resume()).letPass(3);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.4 V"));
    assertEquals(OptionalDouble.empty(), around("stereo-4").heldSeconds());
    floor.hear(new Intent.Stop()).hear(new Intent.ExplainStop("a smell"));
    floor.hear(new Intent.Resume()).hear(new Intent.Begin()).letPass(4);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.4 V"));
    assertEquals(OptionalDouble.of(4), around("stereo-4").heldSeconds());
    floor.model = Model.of(floor.model.state(), 1);
    floor.letPass(3).hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13.5 V"));
    assertEquals(OptionalDouble.empty(), around("stereo-4").heldSeconds());
  }

  @Test
  void newestAmbient_countsForEveryStep() {
    floor.at("idle").hear(new Intent.Begin());
    floor.hear(new Intent.Enter("idle", ReadingId.AMBIENT_CELSIUS, "21.5"));
    assertEquals(OptionalDouble.of(21.5), around("stereo-4").ambientCelsius());
  }

  @Test
  void capturedThd_countsHarmonicsUpToTheTenth() {
    floor.at("stereo-4").hear(new Intent.Begin());
    floor.hear(
        new Intent.TakeCapture(
            "stereo-4", CapturesTest.capture(1, true, OptionalDouble.empty()), 0));
    assertEquals(Optional.of(ThdKind.THD_F), around("stereo-4").thdKind());
    assertEquals(OptionalDouble.of(400), around("stereo-4").thdBandwidthHertz());
    floor.hear(new Intent.Enter("stereo-4", ReadingId.THD_PERCENT, "1.1"));
    assertEquals(Optional.empty(), around("stereo-4").thdKind());
  }

  /** A figure typed by hand counts what the bench's meter counts. */
  @Test
  void typedThd_countsWhatTheBenchsMeterCounts() {
    Meter box =
        new Meter("box", ReadingId.THD_PERCENT, 5, 1, 0.01, Optional.empty())
            .counting(Optional.of(ThdKind.THD_N), OptionalDouble.of(80_000));
    Fact.Opened opened = floor.model.state().opened();
    Bench bench = opened.bench().with(List.of(box));
    WalkState state =
        WalkState.begin(
            new Fact.Opened(
                "walk",
                "test",
                opened.sequence(),
                Floor.SEQUENCE,
                opened.amplifier(),
                bench,
                OptionalLong.empty()),
            0);
    assertEquals(Optional.empty(), kind(state), "no distortion was read");
    Fact thd =
        new Fact.Entered(
            "stereo-4",
            ReadingId.THD_PERCENT,
            "1.0",
            1,
            0.1,
            List.of(),
            0,
            Optional.empty(),
            OptionalDouble.empty());
    state = thd.applyTo(state, 0);
    assertEquals(Optional.of(ThdKind.THD_N), kind(state));
    assertEquals(
        OptionalDouble.of(80_000),
        StepCircumstances.of(state, state.planned("stereo-4").orElseThrow()).thdBandwidthHertz());
  }

  private static Optional<ThdKind> kind(WalkState state) {
    return StepCircumstances.of(state, state.planned("stereo-4").orElseThrow()).thdKind();
  }

  @Test
  void stop_keepsItsStepAndItsTime() {
    warmed();
    floor.at("stereo-4").letPass(7).hear(new Intent.Stop());
    WalkState.Stop stop = floor.model.state().stops().get(0);
    assertEquals("stereo-4", stop.stepId());
    assertEquals(floor.model.clock().wallMillis(), stop.wallMillis());
    assertEquals(Optional.empty(), stop.reason());
    floor.hear(new Intent.ExplainStop("a smell of resin"));
    assertEquals(Optional.of("a smell of resin"), floor.model.state().stops().get(0).reason());
  }
}
