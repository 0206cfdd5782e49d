package loadwalk.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** A frame while it is being painted; whatever lies outside is cut off, never an error. */
final class Canvas {
  private static final Pattern GAP = Pattern.compile("\\s+");

  private final Size size;
  private final Look look;
  private final char[] glyphs;
  private final Style[] styles;
  private int cursor = -1;

  Canvas(Size size, Look look) {
    this(
        size,
        look,
        new char[size.columns() * size.rows()],
        new Style[size.columns() * size.rows()]);
    Arrays.fill(glyphs, ' ');
    Arrays.fill(styles, Style.TEXT);
  }

  Canvas(Size size, Look look, char[] glyphs, Style[] styles) {
    this.size = size;
    this.look = look;
    this.glyphs = glyphs;
    this.styles = styles;
  }

  Look look() {
    return look;
  }

  int columns() {
    return size.columns();
  }

  int rows() {
    return size.rows();
  }

  /** Paints one line of text and returns the column behind it. */
  int text(int column, int row, String text, Style style) {
    String shown = look.text(text);
    for (int i = 0; i < shown.length(); i++) {
      put(column + i, row, visible(shown.charAt(i)), style);
    }
    return column + shown.length();
  }

  /** Paints text folded at words into at most so many rows; returns the row behind it. */
  int paragraph(int column, int row, int width, int mostRows, String text, Style style) {
    List<String> lines = fold(look.text(text), width);
    int shown = Math.min(lines.size(), Math.max(0, mostRows));
    for (int i = 0; i < shown; i++) {
      boolean cut = i == shown - 1 && shown < lines.size();
      String line = cut ? shortened(lines.get(i) + " " + lines.get(i + 1), width) : lines.get(i);
      text(column, row + i, line, style);
    }
    return row + shown;
  }

  void fill(int row, Style style) {
    for (int column = 0; column < size.columns(); column++) {
      put(column, row, ' ', style);
    }
  }

  void clear(Area area) {
    for (int row = area.row(); row < area.bottom(); row++) {
      for (int column = 0; column < area.columns(); column++) {
        put(area.column() + column, row, ' ', Style.TEXT);
      }
    }
  }

  void rule(int row) {
    for (int column = 0; column < size.columns(); column++) {
      put(column, row, look.pick('─', '-'), Style.FAINT);
    }
  }

  void put(int column, int row, char glyph, Style style) {
    if (column >= 0 && row >= 0 && column < size.columns() && row < size.rows()) {
      glyphs[row * size.columns() + column] = glyph;
      styles[row * size.columns() + column] = style;
    }
  }

  void cursor(int column, int row) {
    if (column >= 0 && row >= 0 && column < size.columns() && row < size.rows()) {
      cursor = row * size.columns() + column;
    }
  }

  /** Returns what has been painted; nothing may be painted after that. */
  Frame frame() {
    return new Frame(size, glyphs, styles, cursor);
  }

  static String shortened(String text, int width) {
    return text.length() <= width ? text : text.substring(0, Math.max(0, width - 1)) + "…";
  }

  /** Breaks text at words; a word longer than the width is broken where it must be. */
  static List<String> fold(String text, int width) {
    List<String> lines = new ArrayList<>();
    if (width < 1) {
      return lines;
    }
    StringBuilder line = new StringBuilder();
    for (String word : GAP.split(text.strip())) {
      String rest = word;
      if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > width) {
        lines.add(rest.substring(0, width));
        rest = rest.substring(width);
      }
      line.append(line.length() > 0 ? " " : "").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /** Control and direction characters must not reach a terminal; they show as a question mark. */
  private static char visible(char c) {
    if (c >= ' ' && c <= '~') {
      return c;
    }
    int type = Character.getType(c);
    boolean bad =
        Character.isISOControl(c)
            || type == Character.FORMAT
            || type == Character.SURROGATE
            || type == Character.LINE_SEPARATOR
            || type == Character.PARAGRAPH_SEPARATOR
            || type == Character.NON_SPACING_MARK
            || type == Character.ENCLOSING_MARK
            || isWide(c);
    return bad ? '?' : c;
  }

  /** A character two cells wide would push the row; the trade needs none. */
  private static boolean isWide(char c) {
    return (c >= 0x1100 && c <= 0x115f)
        || (c >= 0x2e80 && c <= 0xa4cf)
        || (c >= 0xac00 && c <= 0xd7a3)
        || (c >= 0xf900 && c <= 0xfaff)
        || (c >= 0xfe30 && c <= 0xfe6f)
        || (c >= 0xff00 && c <= 0xff60)
        || (c >= 0xffe0 && c <= 0xffe6);
  }
}
