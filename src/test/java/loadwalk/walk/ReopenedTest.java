package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Verdict;
import loadwalk.result.Criterion;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState.Hold;
import org.junit.jupiter.api.Test;

/** A walk taken up again, and a brief made anew: what becomes a fact, and what does not. */
class ReopenedTest {
  private final Floor floor = new Floor();

  private List<String> reopened(long millisLater) {
    int before = floor.facts.size();
    floor.hear(new Event.Reopened(7, floor.model.state().lastWallMillis() + millisLater));
    return floor.facts.subList(before, floor.facts.size()).stream()
        .map(f -> f.getClass().getSimpleName())
        .toList();
  }

  private Verdict brief(String step) {
    return floor.step(step).brief().orElseThrow().verdict();
  }

  @Test
  void clearStepThatRan_goesOnRunning() {
    floor.at("stereo-4").hear(new Intent.Begin());
    assertEquals(List.of("Resumed"), reopened(1000));
    assertEquals(Status.RUNNING, floor.step("stereo-4").status());
  }

  @Test
  void armedStepThatRan_isBriefedAndArmedAnew() {
    floor.at("stereo-4", Verdict.HEED).hear(new Intent.Arm("4"));
    assertEquals(List.of("Briefed", "Resumed"), reopened(1000));
    assertEquals(Status.BRIEFED, floor.step("stereo-4").status());
    assertTrue(floor.step("stereo-4").armedOhms().isEmpty());
    assertEquals(List.of("Resumed"), reopened(1000), "nothing runs, so the brief stands");
  }

  @Test
  void pausedOrFinishedWalk_isNotResumedByItself() {
    floor.at("stereo-4").hear(new Intent.Begin()).hear(new Intent.Pause());
    assertEquals(List.of(), reopened(1000));
    assertEquals(Hold.PAUSED, floor.model.state().hold());
    floor.hear(new Intent.Resume()).at("recheck").hear(new Intent.Skip("not today"));
    assertEquals(List.of(), reopened(1000));
  }

  @Test
  void warmWalk_hasCooledAfterANight() {
    floor.hear(new Intent.Begin()).letPass(20);
    assertEquals(List.of("Cooled", "Resumed", "Briefed"), reopened(9 * 3_600_000));
    assertEquals(Hold.RUNNING, floor.model.state().hold());
    assertEquals(0, floor.model.clock().warmSeconds());
  }

  @Test
  void pausedWalk_thatCooledBeforeItWasReopened_isBriefedAnewWhenItGoesOn() {
    floor.hear(new Intent.Begin()).letPass(20).hear(new Intent.EndEarly("warm enough"));
    floor.at("stereo-4").hear(new Intent.Pause());
    assertEquals(List.of("Cooled"), reopened(9 * 3_600_000));
    floor.hear(new Intent.Resume());
    Forecast brief = floor.step("stereo-4").brief().orElseThrow();
    assertEquals(List.of("cooled"), brief.cautions().stream().map(Caution::code).toList());
    assertEquals(Verdict.HEED, brief.verdict());
  }

  @Test
  void brief_isMadeAnewWhereItsEvidenceChanged_andNotOtherwise() {
    floor.at("stereo-4").hear(new Intent.Begin());
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "13"));
    floor.hear(new Intent.Finish());
    assertEquals(Verdict.CLEAR, brief("bridged-4"));
    floor.verdict = Verdict.HEED;
    floor.hear(new Intent.Note("nothing new"));
    assertEquals(Verdict.CLEAR, brief("bridged-4"), "a note is no evidence");
    floor.doubted = List.of(ReadingId.SUPPLY_AMPS);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.SUPPLY_AMPS, "17"));
    assertEquals(Verdict.HEED, brief("bridged-4"), "a reading is");
    floor.doubted = List.of();
    floor.verdict = Verdict.CLEAR;
    floor.hear(new Intent.SetCriterion("stereo-4", Criterion.CLIPPING_ONSET));
    Verdict afterCriterion = brief("bridged-4");
    floor.verdict = Verdict.HALT;
    floor.hear(new Intent.StandBy("stereo-4", ReadingId.SUPPLY_AMPS, "it is so"));
    assertEquals(Verdict.HALT, brief("bridged-4"), "a doubt answered is");
    assertTrue(afterCriterion != Verdict.HALT, "the criterion was followed by a brief of its own");
    floor.verdict = Verdict.CLEAR;
    floor.hear(new Intent.SetCriterion("stereo-4", Criterion.THD_LIMIT));
    assertEquals(Verdict.CLEAR, brief("bridged-4"), "the criterion is");
  }
}
