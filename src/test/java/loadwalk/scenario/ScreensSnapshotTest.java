package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import loadwalk.app.Ramps;
import loadwalk.view.Snapshots;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pictures of the main screens as plain text, at 80×24 and 120×40; {@code -Dsnapshots.update=true}
 * takes them anew.
 */
class ScreensSnapshotTest {
  @TempDir Path folder;

  @TestFactory
  Iterable<DynamicTest> everyScreen_looksAsItsPicture() throws IOException {
    Map<String, String> pictures = new LinkedHashMap<>();
    BenchSide bench = BenchSide.at(folder);
    take(pictures, bench, "home");
    take(pictures, bench.press("F1"), "help");
    take(pictures, bench.press("F10", "Down", "Enter"), "sequences");
    take(pictures, bench.press("Enter", "Enter"), "amplifier-form");
    take(pictures, bench.press("text:Verrin", "Enter", "text:V1", "F9", "Enter"), "bench-form");
    bench.press("F10", "F10", "F10", "F10", "Home");
    take(pictures, bench.press("Enter"), "practice");
    take(pictures, bench.press("Enter"), "brief-clear");
    take(pictures, bench.press("Enter", "wait:9"), "warm-up");
    take(pictures, bench.press("wait:7", "Enter", "Enter", "F8", "F9"), "brief-measure");
    take(pictures, bench.press("text:4", "Enter"), "running");
    takeWave(pictures, bench);
    take(pictures, bench.press("text:1.55 V", "Enter"), "doubt");
    take(pictures, bench.press("F4"), "readings");
    take(pictures, bench.press("F10", "Up", "text:15.5", "Enter", "F8", "F7"), "filled");
    take(pictures, bench.press("Esc"), "stopped");
    take(pictures, bench.press("text:smoke", "Enter"), "paused");
    take(pictures, bench.press("Enter", "F3"), "question");
    bench.press("F10");
    for (int step = 0; step < 10; step++) {
      bench.press("F3", "text:enough for a picture", "Enter");
    }
    take(pictures, bench, "finished");
    take(pictures, bench.press("F6"), "sheet");
    take(pictures, bench.press("F10", "F10", "Home", "Down", "Down", "Enter"), "ledger");
    assertFalse(pictures.isEmpty());
    return pictures.entrySet().stream()
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(), () -> Snapshots.holds(e.getKey(), e.getValue())))
        .toList();
  }

  private void takeWave(Map<String, String> pictures, BenchSide bench) throws IOException {
    Path ramp = Ramps.write(folder.resolve("rising-40.wav"), Ramps.rising(8));
    take(pictures, bench.press("Ctrl-W"), "wave-cautions");
    take(pictures, bench.press("Enter", "Down", "text:2", "Down", "text:21"), "wave-form");
    bench.press("Up", "Up", "text:" + ramp, "F9");
    take(pictures, bench, "wave-found");
    bench.press("F10", "F10");
  }

  private static void take(Map<String, String> pictures, BenchSide bench, String name) {
    pictures.put(name + "-80x24", bench.picture() + "\n");
    pictures.put(name + "-120x40", bench.resize(120, 40).picture() + "\n");
    bench.resize(80, 24);
  }
}
