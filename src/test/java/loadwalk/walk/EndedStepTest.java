package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.EndedStep;
import loadwalk.bench.Mode;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;
import loadwalk.forecast.Verdict;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.UnreadableFact;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

/** A step that drives a load and ends before it is measured: protected, fuse opened, gave out. */
class EndedStepTest {
  private static final String STEP = "stereo-4";

  private final Floor floor = new Floor();

  private Floor running() {
    return floor.at(STEP).hear(new Intent.Begin());
  }

  private Floor ended(Outcome outcome) {
    return running()
        .hear(new Intent.Enter(STEP, ReadingId.OUTPUT_VOLTS, "18 V"))
        .hear(new Intent.Enter(STEP, ReadingId.SUPPLY_AMPS, "41.2 A"))
        .hear(new Intent.EndAs(outcome, " red lamp "));
  }

  @Test
  void endedStep_isOver_andKeepsWhatWasRead() {
    ended(Outcome.PROTECTED);
    StepState step = floor.step(STEP);
    assertEquals(new Fact.Ended(STEP, Outcome.PROTECTED, "red lamp"), floor.last(Fact.Ended.class));
    assertEquals(Status.DONE, step.status());
    assertEquals(Optional.of(Outcome.PROTECTED), step.outcome());
    assertEquals(Optional.of("red lamp"), step.reason());
    assertEquals(41.2, step.latest(ReadingId.SUPPLY_AMPS).orElseThrow().value());
    assertEquals("bridged-4", floor.model.state().currentId());
    assertFalse(floor.holds(Fact.Done.class));
  }

  @Test
  void outcome_isMeasuredOrSkippedAsBefore_andNothingUntilTheStepIsOver() {
    running();
    assertEquals(Optional.empty(), floor.step(STEP).outcome());
    floor.hear(new Intent.Enter(STEP, ReadingId.OUTPUT_VOLTS, "18 V")).hear(new Intent.Finish());
    assertEquals(Optional.of(Outcome.MEASURED), floor.step(STEP).outcome());
    assertEquals(Optional.of(Outcome.SKIPPED), floor.step("idle").outcome());
  }

  @Test
  void operator_isToldToFindTheCause_unlessTheSupplyEnded() {
    ended(Outcome.FUSE_OPENED);
    assertEquals(
        "Output down, supply off. Find the cause before you drive the amplifier again.",
        floor.said());
    floor.at("bridged-2").hear(new Intent.Begin());
    floor.hear(new Intent.EndAs(Outcome.NOT_REACHED, ""));
    assertEquals("", floor.said());
    assertEquals(Optional.empty(), floor.step("bridged-2").reason());
  }

  @Test
  void onlyAStepThatRunsAndDrivesALoad_endsSo() {
    String refusal = "Only a step that runs and drives a load ends like this; skip it instead.";
    floor.at(STEP).hear(new Intent.EndAs(Outcome.PROTECTED, ""));
    assertEquals(refusal, floor.said());
    Floor idle = new Floor().at("idle").hear(new Intent.Begin());
    idle.hear(new Intent.EndAs(Outcome.PROTECTED, ""));
    assertEquals(refusal, idle.said());
    assertEquals(Status.RUNNING, idle.step("idle").status());
  }

  @Test
  void endedStep_isNoResult_andNoEvidenceOfTheOutput() {
    ended(Outcome.PROTECTED);
    assertEquals(List.of(), Results.of(floor.model.state(), new Wire(Tables.stock())).steps());
    assertEquals(List.of(), floor.asked.observations());
    assertEquals(
        List.of(
            new EndedStep(
                Target.loaded(STEP, Mode.STEREO, 4),
                Outcome.PROTECTED,
                Map.of(ReadingId.OUTPUT_VOLTS, 18.0, ReadingId.SUPPLY_AMPS, 41.2))),
        floor.asked.ended());
  }

  @Test
  void stepsBehind_areNoEvidenceForTheOnesBefore() {
    ended(Outcome.PROTECTED);
    WalkState state = floor.model.state();
    assertEquals(List.of(), Targets.evidenceBefore(state, STEP).ended());
    assertEquals("protected at 41.2 A", Targets.ended(state).get(0).text());
  }

  @Test
  void doubtsOfAReading_endWithTheStep_andNoneIsRaisedBehind() {
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    running().hear(new Intent.Enter(STEP, ReadingId.OUTPUT_VOLTS, "1.8 V"));
    assertEquals(1, floor.model.state().openDoubts().size());
    floor.hear(new Intent.EndAs(Outcome.PROTECTED, ""));
    assertEquals(List.of(), floor.model.state().openDoubts());
    floor.hear(new Intent.Enter(STEP, ReadingId.OUTPUT_VOLTS, "18 V"));
    assertEquals(18, floor.step(STEP).latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value());
    assertEquals(List.of(), floor.model.state().openDoubts());
  }

  @Test
  void warmUpThatEnded_leavesTheAmplifierNotWarm_andIsRememberedWhenDoneAgain() {
    floor.hear(new Intent.Begin()).letPass(300).hear(new Intent.EndAs(Outcome.PROTECTED, ""));
    assertEquals(300, floor.step("warm-up").warmSeconds());
    PlannedStep next = floor.model.state().planned(STEP).orElseThrow();
    assertEquals(Optional.of(false), StepCircumstances.of(floor.model.state(), next).warm());
    floor.at("idle").hear(new Intent.WarmAgain());
    assertEquals(Optional.empty(), floor.step("warm-up").outcome());
    assertEquals(List.of(Outcome.PROTECTED), floor.step("warm-up").endedBefore());
    assertEquals(1, Targets.ended(floor.model.state()).size());
    floor.hear(new Intent.Begin()).letPass(60).hear(new Intent.EndEarly("cold night"));
    assertEquals(Optional.of(Outcome.MEASURED), floor.step("warm-up").outcome());
  }

  @Test
  void halt_isLiftedWithAReason_asEveryHalt() {
    ended(Outcome.GAVE_OUT);
    floor.verdict = Verdict.HALT;
    floor.hear(new Intent.Enter(STEP, ReadingId.SUPPLY_AMPS, "42 A"));
    floor.hear(new Intent.Begin());
    assertEquals("Halt: do not connect this. Only a typed reason lifts it.", floor.said());
    floor.hear(new Intent.LiftHalt("repaired")).hear(new Intent.Arm("4"));
    assertEquals(Status.RUNNING, floor.step("bridged-4").status());
  }

  @Test
  void fact_isReadAsItWasWritten() {
    Stamped ended = new Stamped(new Fact.Ended(STEP, Outcome.FUSE_OPENED, "pop"), 1000);
    String body = FactText.body(List.of(ended));
    assertTrue(body.contains("\"outcome\":\"fuse-opened\""), body);
    assertEquals(List.of(ended), FactText.read(body));
    String later = body.replace("fuse-opened", "melted");
    UnreadableFact fault = assertThrows(UnreadableFact.class, () -> FactText.read(later));
    assertEquals("«melted» is a word this version does not know", fault.getMessage());
  }

  @Test
  void outcome_isTypedByNumberOrByTheStartOfItsWord_thenWhatWasSeen() {
    assertEquals(
        Optional.of(new Intent.EndAs(Outcome.PROTECTED, "red lamp")),
        Intent.EndAs.typed(" Protected  red lamp "));
    assertEquals(
        Optional.of(new Intent.EndAs(Outcome.FUSE_OPENED, "")), Intent.EndAs.typed("fuse"));
    assertEquals(Optional.of(new Intent.EndAs(Outcome.NOT_REACHED, "")), Intent.EndAs.typed("4"));
    for (String none : List.of("", "5", "0", "no", "measured", "skipped", "red lamp")) {
      assertEquals(Optional.empty(), Intent.EndAs.typed(none), none);
    }
  }
}
