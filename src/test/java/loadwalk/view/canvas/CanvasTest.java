package loadwalk.view.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Text on cells: nothing outside is painted, nothing in it reaches the terminal as a command. */
class CanvasTest {
  private static final String ESCAPE = "\u001b[31mCLEAR\u001b]0;x\u0007";

  private final Canvas canvas = new Canvas(new Size(12, 4), new Look(false));

  private List<String> lines() {
    return canvas.frame().lines();
  }

  @Test
  void escapeSequence_isShownInSignsThatDoNothing() {
    for (boolean ascii : new boolean[] {false, true}) {
      Canvas wide = new Canvas(new Size(60, 1), new Look(ascii));
      wide.text(0, 0, ESCAPE, Style.TEXT);
      String line = wide.frame().lines().get(0);
      assertTrue(line.chars().noneMatch(Character::isISOControl), line);
      assertTrue(line.contains("CLEAR"), line);
    }
    assertTrue(new Look(true).text(ESCAPE).chars().allMatch(c -> c >= ' ' && c < 127));
    assertFalse(new Look(false).text(ESCAPE).contains("\u001b"));
    assertEquals("4 ohm", new Look(true).text("4 Ω"));
    assertEquals("4 Ω", new Look(false).text("4 Ω"));
  }

  @Test
  void wideCharacter_takesOneCell_soThatWhatFollowsStandsWhereItIsPut() {
    int behind = canvas.text(0, 0, "a界b", Style.TEXT);
    assertEquals(3, behind);
    assertEquals('b', canvas.frame().glyph(2, 0));
  }

  @Test
  void paragraph_isFoldedAtWords_andItsCutIsMarked() {
    assertEquals(2, canvas.paragraph(1, 0, 11, 3, "one two three four", Style.HEED));
    assertEquals(List.of(" one two", " three four", "", ""), lines());
    assertEquals(1, canvas.paragraph(1, 0, 11, 1, "one two three four", Style.HEED));
    assertEquals(" one two th…", lines().get(0));
    assertEquals(3, canvas.paragraph(1, 3, 11, 0, "nothing", Style.HEED));
    assertEquals(3, canvas.paragraph(1, 3, 11, -1, "nothing", Style.HEED));
    assertEquals("", lines().get(3));
    assertEquals(0, canvas.paragraph(1, 0, 0, 2, "no width", Style.HEED));
    assertEquals(List.of("a", "b"), canvas.fold("a b", 1));
  }

  @Test
  void whatLiesOutside_isCut_onEverySide() {
    canvas.text(-2, 0, "abcd", Style.KEY);
    canvas.text(9, 1, "abcd", Style.KEY);
    canvas.text(0, -1, "above", Style.KEY);
    canvas.text(0, 4, "below", Style.KEY);
    assertEquals(List.of("cd", "         abc", "", ""), lines());
  }

  @Test
  void cursor_staysWithin_andOutsideItIsHidden() {
    canvas.cursor(3, 2);
    for (int[] out : new int[][] {{-1, 0}, {0, -1}, {12, 0}, {0, 4}}) {
      canvas.cursor(out[0], out[1]);
      assertEquals(2 * 12 + 3, canvas.frame().cursor());
    }
    canvas.cursor(0, 0);
    assertEquals(0, canvas.frame().cursor());
    assertEquals(-1, new Canvas(new Size(2, 2), new Look(false)).frame().cursor());
    assertEquals(-1, canvas.frame().canvas(new Look(false)).frame().cursor());
  }

  @Test
  void fillAndClear_reachEveryCellOfTheirPlace_andNoOther() {
    canvas.fill(1, Style.HALT);
    canvas.rule(2);
    canvas.clear(new Area(1, 1, 10, 2));
    Frame frame = canvas.frame();
    for (int row = 1; row <= 2; row++) {
      assertNotEquals(Style.TEXT, frame.style(0, row));
      assertNotEquals(Style.TEXT, frame.style(11, row));
      for (int column = 1; column <= 10; column++) {
        assertEquals(Style.TEXT, frame.style(column, row));
        assertEquals(' ', frame.glyph(column, row));
      }
    }
    assertEquals('─', frame.glyph(11, 2));
  }

  @Test
  void frames_areEqual_whereEveryCellAndTheCursorAre() {
    Frame one = painted("a", Style.TEXT, 1);
    assertEquals(one, painted("a", Style.TEXT, 1));
    assertEquals(one.hashCode(), painted("a", Style.TEXT, 1).hashCode());
    assertNotEquals(one, painted("b", Style.TEXT, 1));
    assertNotEquals(one.hashCode(), painted("b", Style.TEXT, 1).hashCode());
    assertNotEquals(one, painted("a", Style.HEED, 1));
    assertNotEquals(one, painted("a", Style.TEXT, 2));
    assertNotEquals(one, new Canvas(new Size(6, 4), new Look(false)).frame());
    assertNotEquals("a", one);
  }

  private static Frame painted(String text, Style style, int cursor) {
    Canvas canvas = new Canvas(new Size(12, 2), new Look(false));
    canvas.text(0, 1, text, style);
    canvas.cursor(cursor, 0);
    return canvas.frame();
  }

  @Test
  void row_isTheSame_whereNoCellOfItDiffers() {
    Frame one = painted("a", Style.TEXT, 1);
    assertTrue(one.sameRow(painted("a", Style.TEXT, 2), 1));
    assertTrue(one.sameRow(painted("b", Style.TEXT, 1), 0));
    assertFalse(one.sameRow(painted("b", Style.TEXT, 1), 1));
    assertFalse(one.sameRow(painted("a", Style.HEED, 1), 1));
    assertFalse(one.sameRow(painted("           x", Style.TEXT, 1), 1));
  }

  @Test
  void size_isEnough_fromTheLeastOn() {
    assertTrue(new Size(80, 24).isEnough());
    assertFalse(new Size(79, 24).isEnough());
    assertFalse(new Size(80, 23).isEnough());
  }
}
