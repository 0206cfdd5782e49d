package loadwalk.view.canvas;

/** The line at the foot of a screen that names the keys that work here. */
public final class Keys {
  private Keys() {}

  /** Paints pairs of key and meaning on the last row. */
  public static void paint(Canvas canvas, String... pairs) {
    int row = canvas.rows() - 1;
    int column = 1;
    int gap = width(pairs, 2) <= canvas.columns() - 1 ? 2 : 1;
    for (int i = 0; i + 1 < pairs.length; i += 2) {
      column = canvas.text(column, row, pairs[i], Style.KEY);
      column = canvas.text(column + 1, row, pairs[i + 1], Style.TEXT) + gap;
    }
  }

  private static int width(String[] pairs, int gap) {
    int width = 0;
    for (String text : pairs) {
      width += text.length();
    }
    return width + pairs.length / 2 * (1 + gap);
  }

  /** Paints a message above the keys. */
  public static void paintMessage(Canvas canvas, String message, Style style) {
    canvas.rule(canvas.rows() - 4);
    canvas.paragraph(1, canvas.rows() - 3, canvas.columns() - 2, 2, message, style);
  }
}
