package loadwalk.view;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Style;

/**
 * A frame as a text to be read: its characters, and below them a letter for the style of each cell.
 *
 * <p>Plain text and blanks of no style have no letter: {@code .} faint, {@code s} strong, {@code h}
 * heading, {@code g} good, {@code W} a warning (heed), {@code S} halt and stop, {@code f} focus,
 * {@code k} key. {@code @} is where the cursor stands.
 */
final class StyledPicture {
  private static final Map<Style, Character> LETTERS =
      new EnumMap<>(
          Map.of(
              Style.TEXT, ' ',
              Style.FAINT, '.',
              Style.STRONG, 's',
              Style.HEADING, 'h',
              Style.GOOD, 'g',
              Style.HEED, 'W',
              Style.HALT, 'S',
              Style.FOCUS, 'f',
              Style.KEY, 'k'));

  private StyledPicture() {}

  static String of(Frame frame) {
    int columns = frame.size().columns();
    StringBuilder text = new StringBuilder(String.join("\n", frame.lines())).append('\n');
    text.append("=".repeat(columns)).append('\n');
    for (int row = 0; row < frame.size().rows(); row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < columns; column++) {
        boolean cursor = frame.cursor() == row * columns + column;
        line.append(cursor ? '@' : LETTERS.get(frame.style(column, row)));
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }

  /** Returns the words of a frame that stand in one style, each run of cells a line. */
  static List<String> runs(Frame frame, Style style) {
    StringBuilder words = new StringBuilder();
    for (int row = 0; row < frame.size().rows(); row++) {
      for (int column = 0; column < frame.size().columns(); column++) {
        boolean in = frame.style(column, row) == style;
        words.append(in ? frame.glyph(column, row) : '\n');
      }
      words.append('\n');
    }
    return words.toString().lines().map(String::strip).filter(w -> !w.isEmpty()).toList();
  }
}
