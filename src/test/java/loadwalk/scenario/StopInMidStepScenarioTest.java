package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The stop key in the middle of a loaded step, the reason after it, and the way back. */
class StopInMidStepScenarioTest {
  @TempDir Path folder;

  @Test
  void stop_inALoadedStep_asksWhyAfterwards_andTheStepIsArmedAnew() {
    BenchSide bench = BenchSide.at(folder).heedAtStereoFour();
    bench.press("text:4", "Enter", "text:15.5 V", "Enter").sees("stereo-4 running");
    bench.press("text:13", "Esc");
    bench.sees("S T O P", "OUTPUT DOWN", "SUPPLY OFF", "why did you stop?").seesNot("13");
    assertEquals(Status.AHEAD, bench.step("stereo-4").status());
    bench.press("Enter").sees("Say in a few words why");
    bench.press("F9", "F10", "F1").sees("S T O P");
    bench.press("text:smell of hot varnish", "Enter");
    bench.sees("PAUSED", "smell of hot varnish");
    bench.press("Enter").sees("stereo-4 brief: HEED", "really connected");
    assertEquals(List.of("15.5 V"), bench.typed("stereo-4", ReadingId.OUTPUT_VOLTS));
    bench.press("Enter").seesNot("stereo-4 running");
    bench.press("text:4", "Enter").sees("stereo-4 running", "15.5 V");
    bench.journalTellsTheSame();
    List<Fact> facts = bench.facts().stream().map(Stamped::fact).toList();
    int stopped = facts.indexOf(new Fact.Stopped("stereo-4"));
    assertEquals(new Fact.StopExplained("smell of hot varnish"), facts.get(stopped + 1));
  }

  @Test
  void stop_overAnotherScreenAndAnOpenQuestion_showsAtOnce() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("F4").sees("Readings").press("Esc").sees("OUTPUT DOWN");
    bench.press("text:looking", "Enter", "Enter", "F2", "text:half a no", "Esc");
    bench.sees("OUTPUT DOWN").seesNot("half a no");
    bench.press("text:again", "Enter", "Enter", "F1").sees("Help").press("Esc").sees("OUTPUT DOWN");
    assertEquals(
        List.of(Optional.of("looking"), Optional.of("again"), Optional.empty()),
        bench.model().state().stops().stream().map(WalkState.Stop::reason).toList());
  }
}
