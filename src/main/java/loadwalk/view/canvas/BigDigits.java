package loadwalk.view.canvas;

import java.util.Map;

/** Paints a clock in digits five rows high, to be read from across the room. */
public final class BigDigits {
  /** How many rows the digits take. */
  public static final int ROWS = 5;

  private static final int ACROSS = 2;

  private static final Map<Character, String[]> SHAPES =
      Map.ofEntries(
          Map.entry('0', new String[] {"###", "# #", "# #", "# #", "###"}),
          Map.entry('1', new String[] {" # ", "## ", " # ", " # ", "###"}),
          Map.entry('2', new String[] {"###", "  #", "###", "#  ", "###"}),
          Map.entry('3', new String[] {"###", "  #", "###", "  #", "###"}),
          Map.entry('4', new String[] {"# #", "# #", "###", "  #", "  #"}),
          Map.entry('5', new String[] {"###", "#  ", "###", "  #", "###"}),
          Map.entry('6', new String[] {"###", "#  ", "###", "# #", "###"}),
          Map.entry('7', new String[] {"###", "  #", "  #", "  #", "  #"}),
          Map.entry('8', new String[] {"###", "# #", "###", "# #", "###"}),
          Map.entry('9', new String[] {"###", "# #", "###", "  #", "###"}),
          Map.entry(':', new String[] {" ", "#", " ", "#", " "}),
          Map.entry('+', new String[] {"   ", " # ", "###", " # ", "   "}));

  private BigDigits() {}

  /** Paints digits, colons and a plus sign; returns the column behind them. */
  public static int paint(Canvas canvas, int column, int row, String text, Style style) {
    int at = column;
    for (char c : text.toCharArray()) {
      String[] shape = SHAPES.get(c);
      for (int y = 0; y < ROWS; y++) {
        for (int x = 0; x < shape[y].length() * ACROSS; x++) {
          char glyph = shape[y].charAt(x / ACROSS) == '#' ? canvas.look().pick('█', '#') : ' ';
          canvas.put(at + x, row + y, glyph, style);
        }
      }
      at += shape[0].length() * ACROSS + 2;
    }
    return at;
  }
}
