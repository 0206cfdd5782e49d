package loadwalk.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnsTest {
  @Test
  void of_countsMarksNotAndWideSignsTwice() {
    assertEquals(4, Columns.of("40 Ω"));
    assertEquals(1, Columns.of("e\u0301"));
    assertEquals(5, Columns.of("漢字!"));
    assertEquals(2, Columns.of("😀"));
  }

  @Test
  void padded_fillsColumnsNotCharacters() {
    assertEquals("漢  |", Columns.padded("漢", 4, false) + "|");
    assertEquals("  12", Columns.padded("12", 4, true));
    assertEquals("12345", Columns.padded("12345", 4, true));
  }

  @Test
  void shortened_keepsWithinItsWidth() {
    assertEquals("abcdef", Columns.shortened("abcdef", 6, false));
    assertEquals("abcd…", Columns.shortened("abcdef", 5, false));
    assertEquals("ab...", Columns.shortened("abcdef", 5, true));
    assertEquals("漢…", Columns.shortened("漢字漢字", 4, false));
    assertEquals("..", Columns.shortened("abcdef", 2, true));
    assertEquals("", Columns.shortened("abcdef", 0, false));
  }

  @Test
  void wrapped_breaksAtBlanks() {
    assertEquals(List.of("one two", "three"), Columns.wrapped("one  two three", 8, 8));
    assertEquals(List.of("a", "4\u00a0V b"), Columns.wrapped("a 4\u00a0V b", 3, 6));
    assertEquals(List.of(""), Columns.wrapped("", 5, 5));
    assertEquals(List.of("fits"), Columns.wrapped(" fits ", 9, 9));
  }

  @Test
  void wrapped_longWord_isBrokenAndLosesNothing() {
    List<String> parts = Columns.wrapped("ab " + "x".repeat(25) + " cd", 10, 8);
    assertEquals(List.of("ab", "xxxxxxxx", "xxxxxxxx", "xxxxxxxx", "x cd"), parts);
    assertEquals(List.of("😀", "😀"), Columns.wrapped("😀😀", 1, 1));
  }

  @Test
  void wrapped_neverExceedsItsWidth() {
    String text =
        "The fuse 漢字漢字漢字漢字 of 30 A protects nothing behind the e\u0301e\u0301e\u0301e\u0301 lead";
    for (int width = 2; width < 60; width++) {
      for (String line : Columns.wrapped(text, width, width)) {
        assertTrue(Columns.of(line) <= width, width + ": " + line);
      }
    }
  }
}
