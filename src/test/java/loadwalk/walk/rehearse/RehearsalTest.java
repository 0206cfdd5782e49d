package loadwalk.walk.rehearse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.Verdict;
import loadwalk.result.Criterion;
import loadwalk.walk.Floor;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;

/** A walk run from answers written before, through the same gate as at the bench. */
class RehearsalTest {
  private final Floor floor = new Floor();
  private final Map<String, Map<String, String>> answers = new LinkedHashMap<>();

  private Rehearsal.Outcome rehearsed() {
    return Rehearsal.of(floor, new Rehearsal.Script(floor.model.state().opened(), answers));
  }

  private static Status status(Rehearsal.Outcome outcome, String step) {
    return outcome.state().step(step).status();
  }

  @Test
  void answers_areTakenAsTyped_andStepsWithoutAnyAreSkipped() {
    answers.put("stereo-4", Map.of("outputVolts", "13.4 V"));
    Rehearsal.Outcome outcome = rehearsed();
    assertTrue(outcome.state().isFinished());
    assertEquals(8, outcome.steps().size());
    assertEquals(List.of(), outcome.problems());
    assertEquals(Status.DONE, status(outcome, "stereo-4"));
    StepState step = outcome.state().step("stereo-4");
    assertEquals("13.4 V", step.latest(ReadingId.OUTPUT_VOLTS).orElseThrow().text());
    assertEquals(Status.SKIPPED, status(outcome, "bridged-4"));
    assertEquals(Optional.of("no answer"), outcome.state().step("bridged-4").reason());
  }

  @Test
  void output_isReadAfterATimeThatNobodyCounted() {
    answers.put("stereo-4", Map.of("outputVolts", "13.4 V"));
    StepState step = rehearsed().state().step("stereo-4");
    assertEquals(OptionalDouble.empty(), step.output().orElseThrow().heldSeconds());
  }

  @Test
  void warmUp_endsWithoutAClock_andGivesNoReason() {
    Rehearsal.Outcome outcome = rehearsed();
    assertEquals(Status.DONE, status(outcome, "warm-up"));
    assertEquals(Optional.empty(), outcome.state().step("warm-up").reason());
    assertEquals(0, outcome.state().step("warm-up").warmSeconds());
  }

  @Test
  void point_isSaidBesideTheReadings() {
    answers.put("stereo-4", Map.of("outputVolts", "13.4 V", "criterion", "clipping-onset"));
    Rehearsal.Outcome outcome = rehearsed();
    assertEquals(List.of(), outcome.problems());
    assertEquals(Optional.of(Criterion.CLIPPING_ONSET), outcome.state().step("stereo-4").said());
  }

  @Test
  void pointThatIsNone_orHasNoPlace_isAProblem() {
    answers.put("stereo-4", Map.of("outputVolts", "13.4 V", "criterion", "thd-limits"));
    answers.put("bridged-4", Map.of("outputVolts", "13.4 V", "criterion", "not-known"));
    answers.put("idle", Map.of("supplyAmps", "1.9 A", "criterion", "thd-limit"));
    Rehearsal.Outcome outcome = rehearsed();
    assertEquals(
        List.of(
            "the step reads no output at a limit",
            "«thd-limits» names no point at which an output is read; nearest: «thd-limit»",
            "«not-known» names no point at which an output is read; nearest: «thd-limit»"),
        outcome.problems().stream().map(Rehearsal.Problem::text).toList());
    assertEquals("criterion", outcome.problems().get(0).reading());
    assertEquals(Optional.empty(), outcome.state().step("stereo-4").said());
    assertEquals(Status.DONE, status(outcome, "stereo-4"));
  }

  @Test
  void halt_isNotedAndPassed_withItsReason() {
    floor.verdict = Verdict.HALT;
    answers.put("stereo-4", Map.of("outputVolts", "13.4"));
    Rehearsal.Outcome outcome = rehearsed();
    assertEquals(Status.DONE, status(outcome, "stereo-4"));
    assertEquals(
        Optional.of("rehearsed: the halt is noted and passed"),
        outcome.state().step("stereo-4").liftReason());
    Rehearsal.Rehearsed step =
        outcome.steps().stream().filter(s -> s.step().equals("stereo-4")).findFirst().orElseThrow();
    assertEquals(Verdict.HALT, step.brief().verdict());
  }

  /** A doubted reading feeds no later forecast, and holds no later step. */
  @Test
  void doubt_staysOpen_andIsToldOnce() {
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    answers.put("stereo-4", Map.of("outputVolts", "134", "supplyAmps", "17"));
    answers.put("bridged-4", Map.of("outputVolts", "26"));
    Rehearsal.Outcome outcome = rehearsed();
    Rehearsal.Rehearsed step = outcome.steps().get(2);
    assertEquals("stereo-4", step.step());
    assertEquals(1, step.doubts().size());
    assertEquals(Slip.DECIMAL_POINT, step.doubts().get(0).slip());
    assertEquals(2, outcome.state().openDoubts().size());
    assertEquals(Status.DONE, status(outcome, "bridged-4"));
    for (Observation seen : floor.asked.observations()) {
      assertFalse(seen.readings().containsKey(ReadingId.OUTPUT_VOLTS), seen.toString());
    }
  }

  @Test
  void coldLoad_isEntered_beforeTheBriefIsTaken() {
    answers.put("stereo-4", Map.of("loadOhms", "3.97"));
    Rehearsal.Outcome outcome = rehearsed();
    StepState step = outcome.state().step("stereo-4");
    assertEquals(3.97, step.latest(ReadingId.LOAD_OHMS).orElseThrow().value());
    assertEquals(Status.SKIPPED, step.status(), "nothing else was answered");
  }

  @Test
  void answersThatCannotBeTaken_areNamed() {
    answers.put("stereo-5", Map.of("outputVolts", "13"));
    answers.put("idle", Map.of("supplyAmp", "2"));
    answers.put("stereo-4", Map.of("outputVolts", "many"));
    answers.put("recheck", Map.of("outputVolts", "9"));
    List<Rehearsal.Problem> problems = rehearsed().problems();
    assertEquals(
        new Rehearsal.Problem(
            "stereo-5", "", "the sequence has no such step; nearest step: «stereo-4»"),
        problems.get(0));
    assertEquals(
        new Rehearsal.Problem(
            "idle", "supplyAmp", "there is no such reading; nearest: «supplyAmps»"),
        problems.get(1));
    assertEquals("outputVolts", problems.get(2).reading());
    assertEquals("the step takes no readings", problems.get(3).text());
    assertEquals(4, problems.size());
  }

  @Test
  void answerThatCannotBeTaken_takesNoOtherWithIt() {
    Map<String, String> both = new LinkedHashMap<>();
    both.put("supplyAmps", "many");
    both.put("outputVolts", "13.4");
    answers.put("stereo-4", both);
    Rehearsal.Outcome outcome = rehearsed();
    assertEquals(1, outcome.problems().size());
    assertEquals(Status.DONE, status(outcome, "stereo-4"));
  }

  /** A note and music are passed through; a measurement without an answer is not. */
  @Test
  void stepsThatReadNothing_areDone() {
    Floor kinds =
        new Floor(
            """
            {"format":"loadwalk-sequence/1","name":"k","title":"K","tone":{"hertz":40},
             "limit":{"thdPercent":1.0},"supplyVolts":13.8,
             "steps":[{"do":"note","text":"Look."},{"do":"music","minutes":1},
              {"do":"idle"},{"do":"measure","mode":"stereo","ohms":4}]}
            """);
    Rehearsal.Outcome outcome =
        Rehearsal.of(kinds, new Rehearsal.Script(kinds.model.state().opened(), Map.of()));
    assertEquals(Status.DONE, status(outcome, "note"));
    assertEquals(Status.DONE, status(outcome, "music"));
    assertEquals(Status.SKIPPED, status(outcome, "idle"));
    assertEquals(Status.SKIPPED, status(outcome, "stereo-4"));
  }

  /** A doubt that comes as a step ends is noted, and the step ends all the same. */
  @Test
  void doubtAtTheEnd_isNotedAndPassed() {
    floor.doubtsOnlyAtTheEnd = true;
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    answers.put("stereo-4", Map.of("outputVolts", "134"));
    Rehearsal.Outcome outcome = rehearsed();
    assertEquals(Status.DONE, status(outcome, "stereo-4"));
    assertEquals(1, outcome.steps().get(2).doubts().size());
  }
}
