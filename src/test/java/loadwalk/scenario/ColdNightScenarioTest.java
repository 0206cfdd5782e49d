package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Time that goes by, or seems to: a night, a sleeping machine, a wall clock that is set. */
class ColdNightScenarioTest {
  @TempDir Path folder;

  private static long cooled(BenchSide bench) {
    return bench.facts().stream().map(Stamped::fact).filter(Fact.Cooled.class::isInstance).count();
  }

  @Test
  void pauseOverNight_saysTheAmplifierHasCooled_andWarmsAgain() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour().press("F5").sees("PAUSED");
    bench.clocks().goOn(10 * 3600);
    bench.tick().sees("PAUSED").press("Enter");
    bench.sees("stereo-4 brief: HEED", "stood still for 10 hours", "has cooled");
    bench.press("F7").sees(">warm-up", "warm-up brief").press("Enter").seesLeft(15, 0);
    bench.press("wait:15", "Enter").sees("✓warm-up", "stereo-4 brief").seesNot("has cooled");
    assertEquals(1, cooled(bench));
    bench.journalTellsTheSame();
  }

  @Test
  void pausedAndEndedOverNight_saysOnGoingOnThatTheAmplifierHasCooled() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour().press("F5").sees("PAUSED");
    bench.clocks().goOn(10 * 3600);
    bench.killedAndStartedAgain().press("Up", "Enter").sees("PAUSED").press("Enter");
    bench.sees("stereo-4 brief: HEED", "stood still for 10 hours", "has cooled");
    assertEquals(1, cooled(bench));
    bench.journalTellsTheSame();
  }

  @Test
  void machineAsleepAtABrief_andInALoadedStep_isNoticedAtTheNextTick() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.clocks().setForward(3600);
    bench.tick().sees("stereo-4 brief: HEED", "stood still for 60 minutes");
    bench.press("text:4", "Enter", "text:2").sees("stereo-4 running");
    bench.clocks().goOn(3600);
    bench.tick().sees("stereo-4 brief: HEED").press("Enter").seesNot("stereo-4 running");
    assertEquals(2, cooled(bench));
  }

  @Test
  void machineAsleepInAWarmUp_startsItFromZero() {
    BenchSide bench = BenchSide.at(folder).practising().press("Enter", "F8", "wait:10", "F8");
    bench.clocks().setForward(8 * 3600);
    bench.tick().sees("warm-up brief").press("Enter").seesLeft(15, 0);
    assertEquals(0, bench.model().clock().warmSeconds());
  }

  @Test
  void stopInAWarmUp_andANightBeforeGoingOn_doesNotKeepTheMinutes() {
    BenchSide bench = BenchSide.at(folder).practising().press("Enter", "wait:12");
    bench.press("Esc", "text:supper", "Enter");
    bench.clocks().goOn(9 * 3600);
    bench.tick().press("Enter").sees("warm-up brief").press("Enter").seesLeft(15, 0);
  }

  @Test
  void wallClockSetBackAnHour_changesNothingWhileItRuns() {
    BenchSide bench = BenchSide.at(folder).practising().press("Enter", "wait:5").seesLeft(10, 0);
    bench.clocks().setForward(-3600);
    bench.press("wait:5").seesLeft(5, 0).press("wait:5", "Enter").sees("idle brief");
    assertEquals(0, cooled(bench));
    bench.journalTellsTheSame();
  }
}
