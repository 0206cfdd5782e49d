package loadwalk.view.canvas;

import java.util.List;

/** Draws samples as a line of dots, two columns and four rows of them a cell. */
public final class Scope {
  private static final int ACROSS = 2;
  private static final int DOWN = 4;

  /** The bits of a braille cell, by column and then by row from the top. */
  private static final int[][] DOTS = {{0x01, 0x02, 0x04, 0x40}, {0x08, 0x10, 0x20, 0x80}};

  private static final char EMPTY_CELL = '\u2800';

  private Scope() {}

  /** Draws the samples from the left end of the area to its right end, zero in its middle. */
  public static void paint(Canvas canvas, List<Double> samples, Area area) {
    double most = samples.stream().mapToDouble(Math::abs).max().orElse(0);
    if (area.rows() < 1 || area.columns() < 1 || samples.isEmpty()) {
      return;
    }
    int[][] cells = new int[area.rows()][area.columns()];
    int high = area.rows() * DOWN;
    int wide = area.columns() * ACROSS;
    int before = -1;
    for (int x = 0; x < wide; x++) {
      double y = between(samples, (double) x * (samples.size() - 1) / (wide - 1));
      int at = most > 0 ? (int) Math.round((1 - y / most) / 2 * (high - 1)) : high / 2;
      int from = before < 0 || at == before ? at : before + Integer.signum(at - before);
      for (int dot = Math.min(from, at); dot <= Math.max(from, at); dot++) {
        cells[dot / DOWN][x / ACROSS] |= DOTS[x % ACROSS][dot % DOWN];
      }
      before = at;
    }
    show(canvas, cells, area);
  }

  private static double between(List<Double> samples, double at) {
    int left = (int) at;
    int right = Math.min(left + 1, samples.size() - 1);
    return samples.get(left) + (at - left) * (samples.get(right) - samples.get(left));
  }

  private static void show(Canvas canvas, int[][] cells, Area area) {
    for (int row = 0; row < cells.length; row++) {
      for (int column = 0; column < cells[row].length; column++) {
        if (cells[row][column] != 0) {
          char glyph = canvas.look().pick((char) (EMPTY_CELL + cells[row][column]), '*');
          canvas.put(area.column() + column, area.row() + row, glyph, Style.STRONG);
        }
      }
    }
  }
}
