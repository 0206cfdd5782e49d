package loadwalk.view.canvas;

import java.util.Arrays;
import java.util.List;
import loadwalk.text.Columns;

/** A frame while it is being painted; whatever lies outside is cut off, never an error. */
public final class Canvas {
  private final Size size;
  private final Look look;
  private final char[] glyphs;
  private final Style[] styles;
  private int cursor = -1;

  /** Makes a blank canvas for a terminal. */
  public Canvas(Size size, Look look) {
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

  /** Returns the characters the terminal can show. */
  public Look look() {
    return look;
  }

  /** Returns how many cells it is wide. */
  public int columns() {
    return size.columns();
  }

  /** Returns how many cells it is high. */
  public int rows() {
    return size.rows();
  }

  /** Paints one line of text and returns the column behind it. */
  public int text(int column, int row, String text, Style style) {
    String shown = look.cells(text);
    for (int i = 0; i < shown.length(); i++) {
      put(column + i, row, shown.charAt(i), style);
    }
    return column + shown.length();
  }

  /** Paints the name of a field, marked where it is in focus; returns the column behind it. */
  public int label(int column, int row, String name, boolean focus) {
    return text(column, row, (focus ? "> " : "  ") + name, focus ? Style.STRONG : Style.TEXT);
  }

  /** Paints text folded at words into at most so many rows; returns the row behind it. */
  public int paragraph(int column, int row, int width, int mostRows, String text, Style style) {
    List<String> lines = fold(text, width);
    int shown = Math.min(lines.size(), Math.max(0, mostRows));
    for (int i = 0; i < shown; i++) {
      boolean cut = i == shown - 1 && shown < lines.size();
      String line = cut ? shortened(lines.get(i) + " " + lines.get(i + 1), width) : lines.get(i);
      text(column, row + i, line, style);
    }
    return row + shown;
  }

  /** Blanks a whole row in a style. */
  public void fill(int row, Style style) {
    for (int column = 0; column < size.columns(); column++) {
      put(column, row, ' ', style);
    }
  }

  /** Blanks an area. */
  public void clear(Area area) {
    for (int row = area.row(); row < area.bottom(); row++) {
      for (int column = 0; column < area.columns(); column++) {
        put(area.column() + column, row, ' ', Style.TEXT);
      }
    }
  }

  /** Draws a line across a row. */
  public void rule(int row) {
    for (int column = 0; column < size.columns(); column++) {
      put(column, row, look.pick('─', '-'), Style.FAINT);
    }
  }

  /** Paints one cell. */
  public void put(int column, int row, char glyph, Style style) {
    if (column >= 0 && row >= 0 && column < size.columns() && row < size.rows()) {
      glyphs[row * size.columns() + column] = glyph;
      styles[row * size.columns() + column] = style;
    }
  }

  /** Puts the cursor on a cell. */
  public void cursor(int column, int row) {
    if (column >= 0 && row >= 0 && column < size.columns() && row < size.rows()) {
      cursor = row * size.columns() + column;
    }
  }

  /** Returns what has been painted; nothing may be painted after that. */
  public Frame frame() {
    return new Frame(size, glyphs, styles, cursor);
  }

  /** Returns a text that fits a width: whole, or cut with a mark behind it. */
  public String shortened(String text, int width) {
    return Columns.shortened(look.cells(text), width, look.ascii());
  }

  /** Breaks text at words; a word longer than the width is broken where it must be. */
  public List<String> fold(String text, int width) {
    return width < 1 ? List.of() : Columns.wrapped(look.cells(text), width, width);
  }
}
