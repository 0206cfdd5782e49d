package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TextColor;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A terminal that shows nothing but plain ASCII, without colours. */
class PlainLookScenarioTest {
  @TempDir Path folder;

  @Test
  void asciiWithoutColour_showsEverythingInWords() {
    BenchSide bench = BenchSide.plainLooking(folder).heedAtStereoFour();
    bench.sees("brief: HEED", "Connect 4 ohm", "+warm-up").press("text:4", "Enter", "F8");
    bench.sees("stereo-4 running").press("text:1.55 V", "Enter").sees("DOUBT");
    onlyAscii(bench);
    bench.press("F4");
    onlyAscii(bench);
    bench.press("Esc").sees("S T O P");
    onlyAscii(bench);
    bench.resize(120, 40);
    onlyAscii(bench);
  }

  private static void onlyAscii(BenchSide bench) {
    bench.picture().chars().forEach(c -> assertTrue(c < 127, bench::picture));
    for (int row = 0; row < bench.rows().size(); row++) {
      TextColor colour = bench.terminal().getCharacter(1, row).getForegroundColor();
      assertEquals(TextColor.ANSI.DEFAULT, colour);
    }
  }
}
