package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The practice amplifier from the home screen to the sheet, at sixty times the pace. */
class FullWalkScenarioTest {
  @TempDir Path folder;

  @Test
  void fullWalk_onThePracticeAmplifier_goesFromIdentityToTheSheet() {
    BenchSide bench = BenchSide.at(folder);
    bench.sees("Practice", "New walk", "never says that something is safe");
    bench.practising().sees("warm-up brief: CLEAR", "50 % of full power for 15 min");
    bench.press("Enter", "F8").seesLeft(15, 0);
    bench.press("wait:5", "F8", "wait:5", "F8").seesLeft(5, 0).seesNot("Warm:");
    bench.press("Enter").sees("The warm-up time is not up");
    bench.press("wait:2", "F8", "wait:3", "F8");
    assertEquals(1, bench.program().bells());
    bench.sees("time is up", "Not steady yet").press("Enter").sees("still warming too fast");
    bench.press("wait:16", "F8", "wait:1", "F8", "wait:1", "F8");
    bench.sees("Warm: Enter goes on").press("Enter");
    bench.sees("idle brief:").idled();
    for (String ohms : List.of("4", "2", "1")) {
      loaded(bench, "stereo-" + ohms, ohms);
    }
    for (String ohms : List.of("4", "2", "1", "0.5")) {
      loaded(bench, "bridged-" + ohms, ohms);
    }
    bench.sees("open-load brief:", "Take the load off").press("Enter");
    bench.sees("open-load running").press("F8", "F9");
    started(bench, "warm-up#2", "4").press("wait:15").sees("Warm: Enter goes on").press("Enter");
    loaded(bench, "recheck", "0.5");
    bench.sees("Every step is done.", "stereo-4", "bridged-0.5", "W total");
    assertTrue(bench.model().state().isFinished());
    bench.model().state().plan().forEach(p -> assertEquals(Status.DONE, status(bench, p.id())));
    bench.press("F6").sees("Sheet of").press("F10");
    bench.journalTellsTheSame();
    bench.press("F10").sees("Sheet Halvorsen & Pike HP 250, full-walk, finished");
  }

  private static void loaded(BenchSide bench, String step, String ohms) {
    bench.sees(step + " brief: H").press("F9").sees(step + " is not running");
    started(bench, step, ohms).sees("meter ").press("F8").seesNot("DOUBT").press("F9");
  }

  /** Arms and starts a step; a hot heatsink halts the heavier ones, which are lifted first. */
  private static BenchSide started(BenchSide bench, String step, String ohms) {
    bench.sees(step + " brief: H", "really connected");
    if (bench.picture().contains("brief: HALT")) {
      bench.press("F7", "text:a fan blows on the heatsink", "Enter").seesNot("F7 lift");
    }
    return bench.sees("> To arm").press("text:" + ohms, "Enter").sees(step);
  }

  private static Status status(BenchSide bench, String step) {
    return bench.step(step).status();
  }
}
