package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import loadwalk.tui.Surface;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Differences written one after another must leave what a frame written whole would. */
class SurfacePropertyTest {
  private static final long SEED = 20261125;
  private static final int STROKES = 400;
  private static final String[] WORDS = {
    "Enter",
    "Tab",
    "Up",
    "Down",
    "Left",
    "Right",
    "Back",
    "Esc",
    "F1",
    "F3",
    "F4",
    "F8",
    "F9",
    "text:4",
    "text:15.5",
    "text:because",
    "wait:1",
    "PageDown",
  };

  @TempDir Path folder;

  @Test
  void differences_leaveTheSameCellsAndCursorAsAWholeFrame() throws IOException {
    Random random = new Random(SEED);
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour().press("Tab", "text:4", "Enter");
    for (int stroke = 0; stroke < STROKES; stroke++) {
      String word = WORDS[random.nextInt(WORDS.length)];
      if (random.nextInt(60) == 0) {
        bench.resize(80 + random.nextInt(60), 24 + random.nextInt(30));
      } else {
        bench.press(word);
      }
      if (random.nextInt(80) == 0) {
        bench.press("Esc", "text:because", "Enter", "Enter");
      }
      String where = "seed " + SEED + ", stroke " + stroke + " " + word;
      sameAsWhole(bench, where);
    }
  }

  private static void sameAsWhole(BenchSide bench, String where) throws IOException {
    TerminalSize size = bench.terminal().getTerminalSize();
    DefaultVirtualTerminal fresh = new DefaultVirtualTerminal(size);
    Frame frame = bench.program().paintWhole(new Size(size.getColumns(), size.getRows()));
    new Surface(fresh, true).show(frame);
    for (int row = 0; row < size.getRows(); row++) {
      for (int column = 0; column < size.getColumns(); column++) {
        String cell = where + ", row " + row + " column " + column;
        assertEquals(
            frame.glyph(column, row),
            bench.terminal().getCharacter(column, row).getCharacterString().charAt(0),
            cell);
        assertEquals(
            fresh.getCharacter(column, row), bench.terminal().getCharacter(column, row), cell);
      }
    }
    assertEquals(fresh.isCursorVisible(), bench.terminal().isCursorVisible(), where);
    if (frame.cursor() >= 0) {
      assertEquals(fresh.getCursorPosition(), bench.terminal().getCursorPosition(), where);
    }
  }
}
