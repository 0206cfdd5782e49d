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
    bench.press("wait:5");
    assertEquals(1, bench.program().bells());
    bench.sees("time is up", "up to 0.5 is steady").press("Enter").sees("Not steady yet: wait");
    bench.press("wait:1", "F8", "wait:2", "F8", "wait:2", "F8");
    bench.sees("a minute: steady. Warm: Enter goes on").press("Enter");
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
    bench.sees("recheck brief: HEED", "The heatsink reaches about", "> To arm");
    bench.press("Enter").seesNot("recheck running").press("text:0.5", "Enter");
    bench.sees("recheck running").press("F8").seesNot("DOUBT").press("F9");
    bench.sees("Every step is done.", "stereo-4", "bridged-0.5", "W total");
    assertTrue(bench.model().state().isFinished());
    bench.model().state().plan().forEach(p -> assertEquals(Status.DONE, status(bench, p.id())));
    bench.press("F6").sees("Sheet of").press("F10");
    bench.journalTellsTheSame();
    bench.press("F10").sees("Sheet Halvorsen & Pike HP 250, full-walk, finished");
  }

  private static void loaded(BenchSide bench, String step, String ohms) {
    bench.sees(step + " brief: ").press("F9").sees(step + " is not running");
    started(bench, step, ohms).sees("meter ").press("F8").seesNot("DOUBT").press("F9");
  }

  /** Starts a step by its load: until the heatsink is hot, the easy amplifier has no cautions. */
  private static BenchSide started(BenchSide bench, String step, String ohms) {
    bench.sees(step + " brief: CLEAR", "> Load really connected, in ohms (optional)");
    return bench.press("text:" + ohms, "Enter").seesNot("brief:").sees(step);
  }

  private static Status status(BenchSide bench, String step) {
    return bench.step(step).status();
  }
}
