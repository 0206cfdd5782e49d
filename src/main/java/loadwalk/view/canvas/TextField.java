package loadwalk.view.canvas;

/**
 * A line of text being typed.
 *
 * @param text the text
 * @param cursor where the next character goes, 0 to the length
 */
public record TextField(String text, int cursor) {
  /** Longer input is cut: no reading, name or reason needs more. */
  public static final int MOST = 2000;

  /** A field with nothing in it. */
  public static final TextField EMPTY = new TextField("", 0);

  /** Returns a field that holds a text, its cursor at the end. */
  public static TextField holding(String text) {
    return new TextField(text, text.length());
  }

  /** Returns the field after a key; keys that mean nothing to it leave it as it is. */
  public TextField after(Key key) {
    switch (key.kind()) {
      case CHARACTER:
        return typed(key.character());
      case BACKSPACE:
        return cursor == 0 ? this : without(cursor - 1);
      case DELETE:
        return cursor == text.length() ? this : without(cursor);
      case LEFT:
        return new TextField(text, Math.max(0, cursor - 1));
      case RIGHT:
        return new TextField(text, Math.min(text.length(), cursor + 1));
      case HOME:
        return new TextField(text, 0);
      case END:
        return new TextField(text, text.length());
      default:
        return this;
    }
  }

  private TextField typed(char c) {
    if (Character.isISOControl(c) || text.length() >= MOST) {
      return this;
    }
    return new TextField(text.substring(0, cursor) + c + text.substring(cursor), cursor + 1);
  }

  private TextField without(int index) {
    return new TextField(text.substring(0, index) + text.substring(index + 1), index);
  }

  /** Paints the field, scrolled so that the cursor shows. */
  public void paint(Canvas canvas, int column, int row, int width, boolean focus) {
    int from = Math.max(0, cursor - width + 1);
    String shown = text.substring(from, Math.min(text.length(), from + width));
    Style style = focus ? Style.FOCUS : Style.TEXT;
    for (int i = 0; i < width; i++) {
      canvas.put(column + i, row, canvas.look().pick('·', '_'), focus ? Style.FOCUS : Style.FAINT);
    }
    canvas.text(column, row, shown, style);
    if (focus) {
      canvas.cursor(column + cursor - from, row);
    }
  }
}
