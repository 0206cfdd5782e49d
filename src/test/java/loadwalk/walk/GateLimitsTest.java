package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Verdict;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

/** Where the gate holds and where it does not: it must not train anyone to wave it through. */
class GateLimitsTest {
  private final Floor floor = new Floor();

  private void doubtOnStereoFour() {
    floor.at("stereo-4").hear(new Intent.Begin());
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "1.34"));
    floor.hear(new Intent.Finish());
    floor.doubted = List.of();
  }

  @Test
  void everyStep_isHeldByADoubtElsewhere_untilItIsAnswered() {
    doubtOnStereoFour();
    floor.hear(new Intent.Begin());
    assertEquals("Held: answer the doubt on stereo-4, output volts, first.", floor.said());
    floor.at("open-load");
    assertEquals(Verdict.HEED, floor.step("open-load").brief().orElseThrow().verdict());
    floor.hear(new Intent.Begin());
    assertEquals("Held: answer the doubt on stereo-4, output volts, first.", floor.said());
    floor.hear(new Intent.StandBy("stereo-4", ReadingId.OUTPUT_VOLTS, "the probe divides"));
    floor.hear(new Intent.Begin());
    assertEquals(Status.RUNNING, floor.step("open-load").status(), floor.said());
  }

  @Test
  void doubtOnTheStepItself_holdsItNot() {
    floor.at("stereo-4", Verdict.HEED);
    floor.doubted = List.of(ReadingId.LOAD_OHMS);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.LOAD_OHMS, "9"));
    assertEquals(List.of(ReadingId.LOAD_OHMS), floor.step("stereo-4").openDoubts());
    floor.hear(new Intent.Arm("4"));
    assertEquals(Status.RUNNING, floor.step("stereo-4").status(), floor.said());
  }

  @Test
  void stepThatLoadsNothing_isNotArmed_andAWarmUpIs() {
    floor.at("idle", Verdict.HEED).hear(new Intent.Begin());
    assertEquals(Status.RUNNING, floor.step("idle").status(), floor.said());
    floor.hear(new Intent.WarmAgain());
    assertTrue(Gate.needsArming(floor.model.state(), floor.model.state().plan().get(0)));
    floor.hear(new Intent.Begin());
    assertEquals("Type the load that is really connected, in ohms.", floor.said());
    assertFalse(floor.step("warm-up").status() == Status.RUNNING);
  }

  @Test
  void pauseOverAnHour_coolsBeforeItGoesOn() {
    floor.hear(new Intent.Begin()).letPass(20).hear(new Intent.Pause()).letPass(3600);
    assertFalse(floor.holds(Fact.Cooled.class));
    floor.hear(new Intent.Resume());
    assertEquals("warm-up", floor.last(Fact.Cooled.class).step());
    assertEquals(0, floor.model.clock().warmSeconds());
  }

  @Test
  void liftedHalt_namesTheHaltsAlone() {
    doubtOnStereoFour();
    floor.at("bridged-2", Verdict.HALT).hear(new Intent.LiftHalt("owner insists"));
    assertEquals(2, floor.step("bridged-2").brief().orElseThrow().cautions().size());
    assertEquals(List.of("test"), floor.last(Fact.HaltLifted.class).codes());
  }

  @Test
  void stepThatNobodyBriefed_doesNotStart() {
    WalkState cold = WalkState.begin(floor.model.state().opened(), 0);
    assertEquals(
        "warm-up has no brief yet.", Gate.refusal(cold, StartOverride.NOTHING).orElseThrow());
  }
}
