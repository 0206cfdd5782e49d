package loadwalk.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loadwalk.text.Columns;

/** Lays out the names of the series below a chart, as many on a line as fit. */
final class SvgLegend {
  private static final int MARK = 26;
  private static final int GAP = 14;

  private final Chart chart;
  private final int letters;
  private final List<List<Integer>> lines = new ArrayList<>();
  private final double letter;

  SvgLegend(Chart chart, int width, int letters, double letter) {
    this.chart = chart;
    this.letters = letters;
    this.letter = letter;
    double used = Double.POSITIVE_INFINITY;
    for (int i = 0; i < chart.series().size(); i++) {
      double size = width(i);
      if (used + GAP + size > width) {
        lines.add(new ArrayList<>());
        used = -GAP;
      }
      lines.get(lines.size() - 1).add(i);
      used += GAP + size;
    }
  }

  int lines() {
    return lines.size();
  }

  void draw(StringBuilder out, double left, double top, int lineHeight) {
    for (int line = 0; line < lines.size(); line++) {
      double x = left;
      double y = top + line * lineHeight + 6;
      for (int i : lines.get(line)) {
        item(out, i, x, y);
        x += width(i) + GAP;
      }
    }
  }

  private void item(StringBuilder out, int index, double x, double y) {
    Series series = chart.series().get(index);
    int style = series.style();
    out.append("<g class=\"s").append(style % Mark.COUNT).append("\">");
    boolean drawn = series.kind() == Series.Kind.CURVE || series.kind() == Series.Kind.JOINED;
    if (drawn) {
      out.append(
          String.format(
              Locale.ROOT,
              "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"currentColor\""
                  + " stroke-width=\"1.5\"%s/>",
              x,
              y,
              x + MARK - 6,
              y,
              Mark.dash(style)));
    }
    if (series.kind() == Series.Kind.RANGES) {
      out.append(
          String.format(
              Locale.ROOT,
              "<rect x=\"%.1f\" y=\"%.1f\" width=\"14\" height=\"10\" fill=\"currentColor\""
                  + " fill-opacity=\".22\" stroke=\"currentColor\" stroke-opacity=\".5\"/>",
              x + 3,
              y - 5));
    } else if (series.kind() != Series.Kind.CURVE) {
      Mark.svg(out, style, x + 10, y);
    }
    out.append("</g>");
    out.append(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\">%s</text>",
            x + MARK,
            y + 4,
            SvgText.safe(name(index))));
  }

  private String name(int index) {
    return Columns.shortened(chart.series().get(index).name(), letters, false);
  }

  private double width(int index) {
    return MARK + name(index).codePointCount(0, name(index).length()) * letter;
  }
}
