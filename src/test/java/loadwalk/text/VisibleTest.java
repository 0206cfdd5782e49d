package loadwalk.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;

class VisibleTest {
  @Test
  void line_writesWhatSteersAsItsCode() {
    assertEquals(
        "a\\u001b[2J\\u0000 \\u202eb\\ud83d", Visible.name("a\u001b[2J\u0000\n\u202eb\ud83d"));
    assertEquals("Ω 漢字 😀", Visible.sentence("Ω 漢字 😀"));
  }

  @Test
  void line_isCutWithAMark() {
    assertEquals("😀😀…", Visible.line("😀😀😀", 2));
    assertEquals("abc", Visible.line("abc", 3));
    assertEquals("x".repeat(80) + "…", Visible.name("x".repeat(99)));
  }

  @Test
  void line_plainText_isNoCopy() {
    String text = "45.5 ± 1.2 W into 4 Ω";
    assertSame(text, Visible.name(text));
  }

  @Test
  void quoted_showsLineBreaksToo() {
    assertEquals("«a\\u000ab»", Visible.quoted("a\nb"));
  }

  @Test
  void cells_areOneColumnEach() {
    assertEquals("Ωé??x?", Visible.cells("Ωé漢\u0301x\u202e"));
    assertEquals("??", Visible.cells("😀"));
    assertEquals("a b", Visible.cells("a\nb"));
    assertEquals("?", Visible.cells("\u001b"));
  }

  @Test
  void harmless_leavesLayout() {
    assertEquals('\n', Visible.harmless('\n'));
    assertEquals('?', Visible.harmless('\u001b'));
    assertEquals('?', Visible.harmless('\u009b'));
    assertEquals('Ω', Visible.harmless('Ω'));
  }
}
