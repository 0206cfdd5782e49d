package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Verdict;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every refusal of the gate, and what opens it. */
class GateTest {
  private final Floor floor = new Floor();

  private String refusal() {
    return Gate.refusal(floor.model.state(), StartOverride.NOTHING).orElse("");
  }

  @Test
  void clearStep_startsWithoutArming() {
    floor.at("stereo-4");
    assertEquals("", refusal());
    floor.hear(new Intent.Begin());
    assertEquals(Status.RUNNING, floor.step("stereo-4").status());
    assertEquals("stereo-4 is already running.", refusal());
  }

  @Test
  void heedStep_wantsTheLoadTyped() {
    floor.at("stereo-4", Verdict.HEED).hear(new Intent.Begin());
    assertEquals("Type the load that is really connected, in ohms.", floor.said());
    assertEquals(Status.BRIEFED, floor.step("stereo-4").status());
    floor.hear(new Intent.Arm("4 Ω"));
    assertEquals(new Fact.Armed("stereo-4", "4 Ω", 4), floor.last(Fact.Armed.class));
    assertEquals(Status.RUNNING, floor.step("stereo-4").status());
  }

  @ParameterizedTest
  @CsvSource({"4.4,true", "3.6,true", "4.41,false", "3.59,false", "2,false", "8,false", "0,false"})
  void arming_takesTheStepsLoadWithinATenth(String typed, boolean taken) {
    floor.at("stereo-4", Verdict.HEED).hear(new Intent.Arm(typed));
    assertEquals(taken, floor.step("stereo-4").status() == Status.RUNNING, floor.said());
    assertEquals(taken, floor.holds(Fact.Armed.class));
  }

  @ParameterizedTest
  @CsvSource({"''", "four", "4 V", "-4", "NaN", "Infinity", "1e400"})
  void arming_refusesWhatIsNoLoad(String typed) {
    floor.at("stereo-4", Verdict.HEED).hear(new Intent.Arm(typed));
    assertEquals(Status.BRIEFED, floor.step("stereo-4").status());
    assertFalse(floor.said().isEmpty());
  }

  @Test
  void halt_isLiftedOnlyWithWords_andStillWantsTheLoad() {
    floor.at("stereo-4", Verdict.HALT).hear(new Intent.Arm("4"));
    assertTrue(floor.said().startsWith("Halt: do not connect this."), floor.said());
    for (String reason : List.of("", "  ", "ok", "12345", "...!")) {
      floor.hear(new Intent.LiftHalt(reason));
      assertEquals("Give a reason in words to lift a halt.", floor.said());
    }
    assertTrue(Gate.isHalted(floor.model.state()));
    floor.hear(new Intent.LiftHalt(" owner insists "));
    assertEquals(
        new Fact.HaltLifted("stereo-4", List.of("test"), "owner insists"),
        floor.last(Fact.HaltLifted.class));
    assertFalse(Gate.isHalted(floor.model.state()));
    assertEquals("Type the load that is really connected, in ohms.", refusal());
    floor.hear(new Intent.Arm("4"));
    assertEquals(Status.RUNNING, floor.step("stereo-4").status());
  }

  @Test
  void newBrief_takesLiftAndArmingBack() {
    floor.at("stereo-4", Verdict.HALT).hear(new Intent.LiftHalt("owner insists"));
    floor.hear(new Intent.Enter("stereo-4", ReadingId.LOAD_OHMS, "3.98"));
    floor.verdict = Verdict.HEED;
    floor.hear(new Intent.Enter("stereo-4", ReadingId.LOAD_OHMS, "3.99"));
    assertEquals(Optional.empty(), floor.step("stereo-4").liftReason());
    floor.hear(new Intent.Arm("4")).hear(new Intent.Stop());
    floor.hear(new Intent.ExplainStop("smell")).hear(new Intent.Resume());
    assertTrue(floor.step("stereo-4").armedOhms().isEmpty());
    assertEquals("Type the load that is really connected, in ohms.", refusal());
  }

  @Test
  void openDoubt_holdsHeedAndBridgedSteps_untilItIsAnswered() {
    floor.at("stereo-4").hear(new Intent.Begin());
    floor.doubted = List.of(ReadingId.OUTPUT_VOLTS);
    floor.hear(new Intent.Enter("stereo-4", ReadingId.OUTPUT_VOLTS, "1.34"));
    floor.hear(new Intent.Finish());
    floor.doubted = List.of();
    assertEquals(Verdict.HEED, floor.step("bridged-4").brief().orElseThrow().verdict());
    floor.hear(new Intent.Arm("4"));
    assertEquals("Held: answer the doubt on stereo-4, output volts, first.", floor.said());
    floor.hear(new Intent.StandBy("stereo-4", ReadingId.OUTPUT_VOLTS, "probe is ten to one"));
    assertEquals(Verdict.CLEAR, floor.step("bridged-4").brief().orElseThrow().verdict());
    floor.hear(new Intent.Begin());
    assertEquals(Status.RUNNING, floor.step("bridged-4").status());
  }

  @Test
  void finishedWalk_hasNothingToStart() {
    floor.at("recheck").hear(new Intent.Skip("not today"));
    assertEquals("Every step is done.", refusal());
  }

  @Test
  void armProblem_namesBothLoads() {
    String why = Gate.armProblem(Target.loaded("bridged-2", Mode.BRIDGED, 2), 4).orElseThrow();
    assertTrue(why.contains("bridged 2 Ω") && why.contains("typed 4 Ω"), why);
    assertTrue(Gate.armProblem(Target.loaded("x", Mode.STEREO, 2), Double.NaN).isPresent());
  }

  @Test
  void warmingAgain_bringsARunningStepBackToItsBrief() {
    floor.hear(new Intent.Begin()).letPass(600).letPass(1).hear(new Intent.EndEarly("warm enough"));
    floor.at("stereo-4", Verdict.HEED).hear(new Intent.Arm("4")).hear(new Intent.WarmAgain());
    assertEquals("warm-up", floor.model.state().currentId());
    floor.hear(new Intent.Arm("4")).hear(new Intent.EndEarly("warm enough"));
    assertEquals("stereo-4", floor.model.state().currentId());
    assertEquals(Status.BRIEFED, floor.step("stereo-4").status());
    assertEquals("Type the load that is really connected, in ohms.", refusal());
  }
}
