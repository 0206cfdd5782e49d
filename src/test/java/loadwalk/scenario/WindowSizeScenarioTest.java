package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import loadwalk.walk.fact.WalkState.Hold;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window made larger, smaller, too small, and large enough again, in mid-walk. */
class WindowSizeScenarioTest {
  @TempDir Path folder;

  @Test
  void wideWindow_showsWhatWasMeasuredBeside_andBackIsTheSamePicture() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("text:4", "Enter", "F8");
    String before = bench.picture();
    bench.resize(120, 40).sees("So far", "stereo-4 running", "15.72 V");
    bench.sees("power in one load, W", "forecast, 95 %", "stereo, channel 1");
    assertEquals(40, bench.rows().size());
    assertTrue(bench.rows().stream().anyMatch(row -> row.length() > 100));
    bench.resize(80, 24);
    assertEquals(before, bench.picture());
  }

  @Test
  void doubtedReading_hasNoVerdictBeside_untilItIsAnswered() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour().resize(120, 40);
    bench.press("text:4", "Enter", "text:1.55", "Enter");
    bench.sees("stereo-4 0.601", "in doubt, no answer yet").seesNot("missed");
    bench.press("Up", "text:15.5", "Enter").sees("So far, per load", "stereo-4 60.1");
    bench.sees("rated 50 W: other conditions").seesNot("no answer yet");
  }

  @Test
  void window_ofTooFewColumnsOrRows_leavesTheChartOut() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("text:4", "Enter", "F8");
    bench.resize(117, 40).seesNot("power in one load, W");
    bench.resize(118, 40).sees("power in one load, W");
    bench.resize(118, 24).sees("So far").seesNot("power in one load, W");
  }

  @Test
  void smallWindow_saysSo_keepsTheWalk_andTheStopKeyWorks() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    String before = bench.picture();
    bench.resize(60, 20).sees("needs 80 columns and 24 rows", "Esc still stops the walk");
    bench.resize(80, 24);
    assertEquals(before, bench.picture());
    bench.resize(30, 5).press("Esc").sees("OUTPUT DOWN, SUPPLY OFF");
    assertEquals(Hold.STOPPED, bench.model().state().hold());
  }

  @Test
  void windowOfOneCell_stopsAllTheSame() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.resize(1, 1).press("wait:2", "Esc");
    assertEquals("O", bench.picture());
    assertEquals(Hold.STOPPED, bench.model().state().hold());
    bench.resize(80, 24).sees("S T O P").press("text:tried it", "Enter").sees("PAUSED");
  }
}
