package loadwalk.view.canvas;

import java.util.Arrays;
import java.util.List;

/** A painted screen: one character and one style a cell; immutable and comparable. */
public final class Frame {
  private final Size size;
  private final char[] glyphs;
  private final Style[] styles;
  private final int cursor;

  /** Takes the arrays over, uncopied: each key paints a frame. */
  Frame(Size size, char[] glyphs, Style[] styles, int cursor) {
    this.size = size;
    this.glyphs = glyphs;
    this.styles = styles;
    this.cursor = cursor;
  }

  /** Returns a canvas that shows this frame, to be painted on further; its cursor is hidden. */
  public Canvas canvas(Look look) {
    return new Canvas(size, look, glyphs.clone(), styles.clone());
  }

  /** Returns the size it was painted for. */
  public Size size() {
    return size;
  }

  /** Returns the character at a cell. */
  public char glyph(int column, int row) {
    return glyphs[row * size.columns() + column];
  }

  /** Returns the style at a cell. */
  public Style style(int column, int row) {
    return styles[row * size.columns() + column];
  }

  /** Returns the index of the cell the cursor is on, row by row, or -1 where it is hidden. */
  public int cursor() {
    return cursor;
  }

  /** Tells whether a row is as it is in another frame of the same size. */
  public boolean sameRow(Frame other, int row) {
    int from = row * size.columns();
    int to = from + size.columns();
    return Arrays.equals(glyphs, from, to, other.glyphs, from, to)
        && Arrays.equals(styles, from, to, other.styles, from, to);
  }

  /** Returns the characters as lines, trailing blanks cut. */
  public List<String> lines() {
    String[] lines = new String[size.rows()];
    for (int row = 0; row < lines.length; row++) {
      lines[row] = new String(glyphs, row * size.columns(), size.columns()).replaceAll("\\s+$", "");
    }
    return List.of(lines);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Frame frame
        && size.equals(frame.size)
        && cursor == frame.cursor
        && Arrays.equals(glyphs, frame.glyphs)
        && Arrays.equals(styles, frame.styles);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(glyphs);
  }
}
