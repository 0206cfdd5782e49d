package loadwalk.view.canvas;

import loadwalk.text.Ascii;
import loadwalk.text.Visible;

/**
 * The characters the terminal can show.
 *
 * @param ascii whether only plain ASCII may be used
 */
public record Look(boolean ascii) {
  /** Returns a line of text with nothing in it that the terminal cannot show. */
  public String text(String text) {
    String line = Visible.line(text, Integer.MAX_VALUE - 1);
    return ascii ? Ascii.of(line) : line;
  }

  /** Returns a line of text in which each character takes one cell. */
  String cells(String text) {
    return ascii ? text(text) : Visible.cells(text);
  }

  /** Returns the fine character, or the plain one where only ASCII shows. */
  public char pick(char fine, char plain) {
    return ascii ? plain : fine;
  }
}
