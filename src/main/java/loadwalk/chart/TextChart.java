package loadwalk.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loadwalk.text.Ascii;
import loadwalk.text.Columns;
import loadwalk.text.Visible;

/**
 * Draws a chart in characters: marks on the cells, curves in braille dots or full stops.
 *
 * <p>Series differ by their mark, so the chart reads the same without colour.
 */
public final class TextChart {
  private static final int DOTS_WIDE = 2;
  private static final int DOTS_HIGH = 4;
  private static final int BRAILLE = 0x2800;
  private static final int[][] DOT = {{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}};
  private static final int LEAST_COLUMNS = 30;

  /** The smallest height of a plot, lines. */
  public static final int LEAST_ROWS = 5;

  private static final String LEGEND_GAP = "   ";

  private final Chart chart;
  private final boolean ascii;
  private final Scale x;
  private final Scale y;
  private final int left;
  private final int wide;
  private final int high;
  private final char[][] cells;
  private final int[][] dots;

  private TextChart(Chart chart, int columns, int rows, boolean ascii) {
    this.chart = chart;
    this.ascii = ascii;
    this.x = Scale.x(chart);
    this.y = Scale.y(chart);
    this.left = y.ticks().stream().mapToInt(t -> t.label().length()).max().orElse(1) + 1;
    this.wide = columns - left - 1;
    this.high = rows;
    this.cells = new char[high][wide];
    this.dots = new int[high][wide];
    Arrays.stream(cells).forEach(row -> Arrays.fill(row, ' '));
  }

  /**
   * Returns the lines: the plot, its axis, its labels and the legend.
   *
   * @param columns the greatest width of a line; less than 30 counts as 30
   * @param rows the height of the plot; less than 5 counts as 5
   * @param ascii whether to use only ASCII
   */
  public static List<String> lines(Chart chart, int columns, int rows, boolean ascii) {
    int width = Math.max(columns, LEAST_COLUMNS);
    return new TextChart(chart, width, Math.max(rows, LEAST_ROWS), ascii).draw(width);
  }

  private List<String> draw(int columns) {
    for (Chart.Limit limit : chart.limits()) {
      Arrays.fill(cells[row(limit.y())], ascii ? '-' : '╌');
    }
    chart.series().forEach(this::drawBelow);
    chart.series().forEach(this::drawMarks);
    List<String> lines = new ArrayList<>();
    lines.add(fit(said(chart.y().label()), columns));
    String[] labels = new String[high];
    y.ticks().forEach(t -> labels[row(t.value())] = t.label());
    for (int r = 0; r < high; r++) {
      String label = labels[r] == null ? "" : labels[r];
      String axis = ascii ? "|" : labels[r] == null ? "│" : "┤";
      String pad = " ".repeat(left - 1 - label.length());
      lines.add((pad + label + " " + axis + text(r)).stripTrailing());
    }
    lines.add(" ".repeat(left) + (ascii ? "+" : "└") + (ascii ? "-" : "─").repeat(wide));
    lines.add(tickLine());
    lines.add(fit(" ".repeat(left + 1) + said(chart.x().label()), columns));
    lines.addAll(legend(columns));
    return lines;
  }

  /** Draws lines, ranges and error bars; marks are drawn after them, so that none is hidden. */
  private void drawBelow(Series series) {
    List<Series.Point> points = series.points();
    if (series.kind() == Series.Kind.CURVE || series.kind() == Series.Kind.JOINED) {
      for (int i = 1; i < points.size(); i++) {
        stroke(points.get(i - 1), points.get(i));
      }
    }
    for (Series.Point p : points) {
      if (series.kind() == Series.Kind.RANGES) {
        bar(p, ascii ? ':' : '░');
      } else if (series.kind() != Series.Kind.CURVE && p.hasRange()) {
        bar(p, ascii ? '|' : '│');
      }
    }
  }

  private void drawMarks(Series series) {
    if (series.kind() == Series.Kind.MARKS || series.kind() == Series.Kind.JOINED) {
      char sign = Mark.sign(series.style(), ascii);
      series.points().forEach(p -> cells[row(p.y())][column(p.x())] = sign);
    }
  }

  private void bar(Series.Point p, char sign) {
    for (int r = row(p.high()); r <= row(p.low()); r++) {
      cells[r][column(p.x())] = sign;
    }
  }

  private void stroke(Series.Point from, Series.Point to) {
    double x0 = x.at(from.x()) * (wide * DOTS_WIDE - 1);
    double x1 = x.at(to.x()) * (wide * DOTS_WIDE - 1);
    double y0 = (1 - y.at(from.y())) * (high * DOTS_HIGH - 1);
    double y1 = (1 - y.at(to.y())) * (high * DOTS_HIGH - 1);
    int steps = (int) Math.max(1, Math.ceil(Math.max(Math.abs(x1 - x0), Math.abs(y1 - y0))));
    for (int i = 0; i <= steps; i++) {
      int dx = (int) Math.round(x0 + (x1 - x0) * i / steps);
      int dy = (int) Math.round(y0 + (y1 - y0) * i / steps);
      dots[dy / DOTS_HIGH][dx / DOTS_WIDE] |= DOT[dy % DOTS_HIGH][dx % DOTS_WIDE];
    }
  }

  private String text(int row) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < wide; c++) {
      boolean dotted = cells[row][c] == ' ' && dots[row][c] != 0;
      char dot = ascii ? '.' : (char) (BRAILLE + dots[row][c]);
      line.append(dotted ? dot : cells[row][c]);
    }
    return line.toString();
  }

  private String tickLine() {
    char[] line = new char[left + 1 + wide];
    Arrays.fill(line, ' ');
    int free = 0;
    for (Axis.Tick tick : x.ticks()) {
      int length = tick.label().length();
      int at = left + 1 + column(tick.value()) - length / 2;
      int start = Math.min(Math.max(at, 0), line.length - length);
      if (start >= free) {
        tick.label().getChars(0, length, line, start);
        free = start + length + 1;
      }
    }
    return new String(line).stripTrailing();
  }

  /**
   * Returns the legend, with names side by side where they fit, so that a chart takes few lines.
   */
  private List<String> legend(int columns) {
    List<String> items = new ArrayList<>();
    for (Series series : chart.series()) {
      items.add(sign(series) + " " + said(series.name()));
    }
    for (Chart.Limit limit : chart.limits()) {
      String sign = ascii ? "-" : "╌";
      items.add(sign + " " + said(limit.name()) + " (" + ChartWords.number(limit.y()) + ")");
    }
    String indent = " ".repeat(left + 1);
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String item : items) {
      if (line.length() > 0
          && Columns.of(line.toString()) + LEGEND_GAP.length() + Columns.of(item) > columns) {
        lines.add(fit(line.toString(), columns));
        line.setLength(0);
      }
      line.append(line.length() == 0 ? indent : LEGEND_GAP).append(item);
    }
    lines.add(fit(line.toString(), columns));
    return lines;
  }

  private String sign(Series series) {
    return switch (series.kind()) {
      case RANGES -> ascii ? ":" : "░";
      case CURVE -> ascii ? "." : "⠒";
      case MARKS, JOINED -> String.valueOf(Mark.sign(series.style(), ascii));
    };
  }

  private String fit(String text, int columns) {
    return Columns.shortened(text, columns, ascii);
  }

  private String said(String text) {
    String line = Visible.sentence(text);
    return ascii ? Ascii.of(line) : line;
  }

  private int column(double value) {
    return clamp(x.at(value) * (wide - 1), wide);
  }

  private int row(double value) {
    return clamp((1 - y.at(value)) * (high - 1), high);
  }

  private static int clamp(double at, int count) {
    return (int) Math.max(0, Math.min(count - 1, Math.round(at)));
  }
}
