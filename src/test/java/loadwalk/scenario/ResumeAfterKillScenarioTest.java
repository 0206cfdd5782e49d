package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import loadwalk.bench.ReadingId;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A killed Loadwalk taken up again: the same step and readings, armed anew. */
class ResumeAfterKillScenarioTest {
  @TempDir Path folder;

  @Test
  void resume_afterAKillInALoadedStep_keepsTheReadings_andWantsTheLoadAgain() {
    BenchSide bench = BenchSide.at(folder).heedAtStereoFour();
    bench.press("text:4", "Enter", "text:15.5 V", "Enter", "text:15.4", "Enter");
    bench.press("text:13.6");
    bench.killedAndStartedAgain().sees("Resume", "open at stereo-4");
    bench.press("Up", "Enter").sees("stereo-4 brief: HEED", "really connected");
    assertEquals(List.of("15.5 V"), bench.typed("stereo-4", ReadingId.OUTPUT_VOLTS));
    assertEquals(List.of("15.4"), bench.typed("stereo-4", ReadingId.OTHER_OUTPUT_VOLTS));
    assertEquals(List.of(), bench.typed("stereo-4", ReadingId.SUPPLY_VOLTS));
    bench.press("text:2", "Enter").sees("Check the wiring");
    assertEquals(Status.BRIEFED, bench.step("stereo-4").status());
    bench.press("Enter").sees("Check the wiring").press("Back", "text:4", "Enter");
    bench.sees("stereo-4 running", "15.5 V").journalTellsTheSame();
  }

  @Test
  void resume_afterAKillInAWarmUp_goesOnWithTheClock() {
    BenchSide bench = BenchSide.at(folder).press("Enter", "Left", "Left", "Enter");
    bench.press("Enter", "wait:100").seesLeft(6, 40).killedAndStartedAgain();
    bench.press("Up", "Enter").sees("time left", "practice bench, 60×");
    double kept = bench.step("warm-up").warmSeconds();
    assertTrue(kept >= 425 && kept <= 500, "kept " + kept);
    bench.press("wait:10").journalTellsTheSame();
  }

  @Test
  void resume_theNextDay_saysTheAmplifierHasCooled_andStartsTheWarmUpAgain() {
    BenchSide bench = BenchSide.at(folder).practising().press("Enter", "wait:8");
    bench.clocks().goOn(12 * 3600);
    bench.clocks().boot();
    bench.killedAndStartedAgain().press("Up", "Enter").sees("warm-up brief");
    assertEquals(0, bench.step("warm-up").warmSeconds());
    assertTrue(bench.facts().stream().map(Stamped::fact).anyMatch(Fact.Cooled.class::isInstance));
    bench.press("Enter").seesLeft(15, 0);
  }

  @Test
  void resume_withAClockThatSaysNineteenSeventy_takesTheAmplifierAsCold() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.clocks().setWall(Instant.EPOCH);
    bench.clocks().boot();
    bench.killedAndStartedAgain().press("Up", "Enter");
    bench.sees("stereo-4 brief: HEED", "wall clock went backwards", "Take it as cold");
    bench.press("text:4.01", "Enter", "text:4", "Enter", "F8", "F9").sees("stereo-2 brief");
    bench.journalTellsTheSame();
  }
}
