package loadwalk.view.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line of text under the keys: what is typed, where the caret stands, what of it shows. */
class TextFieldTest {

  /** Keys by letter: < > left and right, ^ $ home and end, b backspace, d delete, else typed. */
  private static TextField typed(TextField from, String keys) {
    TextField field = from;
    for (char c : keys.toCharArray()) {
      field =
          field.after(
              switch (c) {
                case '<' -> Key.of(Key.Kind.LEFT);
                case '>' -> Key.of(Key.Kind.RIGHT);
                case '^' -> Key.of(Key.Kind.HOME);
                case '$' -> Key.of(Key.Kind.END);
                case 'b' -> Key.of(Key.Kind.BACKSPACE);
                case 'd' -> Key.of(Key.Kind.DELETE);
                default -> Key.of(c);
              });
    }
    return field;
  }

  @ParameterizedTest
  @CsvSource({
    "123, 123, 3",
    "123<, 123, 2",
    "123<<<<<, 123, 0",
    "123>>, 123, 3",
    "12^>>>>3, 123, 3",
    "13<2, 123, 2",
    "123^, 123, 0",
    "123^$, 123, 3",
    "123b, 12, 2",
    "123<b, 13, 1",
    "123^b, 123, 0",
    "123d, 123, 3",
    "123<d, 12, 2",
    "123^d, 23, 0",
    "123^>d, 13, 1"
  })
  void keys_editTheLineAtTheCaret(String keys, String text, int caret) {
    assertEquals(new TextField(text, caret), typed(TextField.EMPTY, keys));
  }

  @Test
  void otherKeysAndControlCharacters_changeNothing() {
    TextField field = TextField.holding("12");
    for (Key.Kind kind : Key.Kind.values()) {
      if (kind.name().startsWith("F") || kind == Key.Kind.UP || kind == Key.Kind.NOTHING) {
        assertSame(field, field.after(Key.of(kind)));
      }
    }
    assertSame(field, field.after(Key.of('\u001b')));
    assertSame(field, field.after(Key.of('\n')));
  }

  @Test
  void line_isFull_atTwoThousandCharacters() {
    TextField almost = TextField.holding("x".repeat(1999));
    TextField full = almost.after(Key.of('y'));
    assertEquals(2000, full.text().length());
    assertSame(full, full.after(Key.of('z')));
  }

  private static String shown(TextField field, int width) {
    Canvas canvas = new Canvas(new Size(12, 1), new Look(false));
    field.paint(canvas, 1, 0, width, true);
    Frame frame = canvas.frame();
    return frame.lines().get(0) + " caret " + frame.cursor();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "abc|' abc····· caret 4'",
        "abcdefg|' abcdefg· caret 8'",
        "abcdefgh|' bcdefgh· caret 8'",
        "abcdefghij|' defghij· caret 8'",
        "abcdefghij<<|' bcdefghi caret 8'",
        "abcdefghij^|' abcdefgh caret 1'",
        "''|' ········ caret 1'"
      })
  void longLine_isScrolled_soThatTheCaretShows(String keys, String shown) {
    assertEquals(shown, shown(typedAll(keys), 8));
  }

  /** Letters b and d are text here, so only arrows, home and end are keys. */
  private static TextField typedAll(String keys) {
    TextField field = TextField.EMPTY;
    for (char c : keys.toCharArray()) {
      field = "<>^$".indexOf(c) >= 0 ? typed(field, String.valueOf(c)) : field.after(Key.of(c));
    }
    return field;
  }

  @Test
  void fieldWithoutFocus_isFaint_andHasNoCaret() {
    Canvas canvas = new Canvas(new Size(12, 1), new Look(true));
    TextField.holding("4").paint(canvas, 1, 0, 3, false);
    Frame frame = canvas.frame();
    assertEquals(" 4__", frame.lines().get(0));
    assertEquals(-1, frame.cursor());
    assertEquals(Style.TEXT, frame.style(1, 0));
    assertEquals(Style.FAINT, frame.style(2, 0));
    assertEquals(Style.TEXT, frame.style(4, 0));
  }
}
