package loadwalk.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import loadwalk.text.Columns;

/**
 * Draws a chart as an inline SVG picture.
 *
 * <p>It uses no chart library. The available ones draw through AWT, which needs fonts and native
 * libraries that a headless machine lacks; they write fixed colours that cannot follow a reader's
 * dark mode, name no parts for a screen reader, and would double the size of the jar. Here every
 * stroke is {@code currentColor}, and the page's style colours the groups {@code s0}, {@code s1}, …
 * Series differ by mark and dash, so colour is never the only cue.
 */
public final class SvgChart {
  private static final int WIDTH = 360;
  private static final int HEIGHT = 250;
  private static final int RIGHT = 12;
  private static final int TOP = 10;
  private static final int BOTTOM = 42;
  private static final int LEGEND_LINE = 17;
  private static final int LABEL = 22;
  private static final double DIGIT = 7.7;
  private static final double LETTER = 6.5;
  private static final int LEGEND_LETTERS = 40;
  private static final int LIMIT_LETTERS = 28;
  private static final int NAME_HEIGHT = 10;
  private static final double CAP = 4;

  private final Chart chart;
  private final String id;
  private final int left;
  private final Scale x;
  private final Scale y;
  private final StringBuilder out = new StringBuilder();

  private SvgChart(Chart chart, String id) {
    this.chart = chart;
    this.id = id;
    this.x = Scale.x(chart);
    this.y = Scale.y(chart);
    int letters = y.ticks().stream().mapToInt(t -> t.label().length()).max().orElse(1);
    this.left = LABEL + (int) Math.ceil(Math.max(2, letters) * DIGIT) + 6;
  }

  /**
   * Returns the chart as an {@code svg} element, with a title and a description in words.
   *
   * @param id a word that is unique on the page; the ids of its parts start with it
   */
  public static String svg(Chart chart, String id) {
    return new SvgChart(chart, id).draw();
  }

  private String draw() {
    SvgLegend legend = new SvgLegend(chart, WIDTH - left - RIGHT, LEGEND_LETTERS, LETTER);
    int height = HEIGHT + legend.lines() * LEGEND_LINE;
    out.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\""
                + " aria-labelledby=\"%s-t %s-d\" font-size=\"12\" fill=\"currentColor\">",
            WIDTH,
            height,
            id,
            id));
    out.append("<title id=\"").append(id).append("-t\">").append(SvgText.safe(chart.title()));
    out.append("</title><desc id=\"").append(id).append("-d\">");
    out.append(SvgText.safe(ChartWords.of(chart))).append("</desc>");
    axes();
    limits();
    chart.series().forEach(this::series);
    limitNames();
    legend.draw(out, left, HEIGHT, LEGEND_LINE);
    return out.append("</svg>").toString();
  }

  private void axes() {
    out.append("<g class=\"grid\" stroke=\"currentColor\" stroke-opacity=\".25\">");
    for (Axis.Tick tick : y.ticks()) {
      double at = py(tick.value());
      line(left, at, WIDTH - RIGHT, at, "");
    }
    out.append("</g><g stroke=\"currentColor\">");
    line(left, TOP, left, HEIGHT - BOTTOM, "");
    line(left, HEIGHT - BOTTOM, WIDTH - RIGHT, HEIGHT - BOTTOM, "");
    for (Axis.Tick tick : x.ticks()) {
      double at = px(tick.value());
      line(at, HEIGHT - BOTTOM, at, HEIGHT - BOTTOM + 4, "");
    }
    out.append("</g><g class=\"ticks\">");
    for (Axis.Tick tick : y.ticks()) {
      text(left - 6, py(tick.value()) + 4, "end", tick.label());
    }
    for (Axis.Tick tick : x.ticks()) {
      text(px(tick.value()), HEIGHT - BOTTOM + 17, "middle", tick.label());
    }
    text((left + WIDTH - RIGHT) / 2.0, HEIGHT - 8, "middle", chart.x().label());
    double middle = (TOP + HEIGHT - BOTTOM) / 2.0;
    out.append(
        String.format(
            Locale.ROOT,
            "<text transform=\"translate(13 %.1f) rotate(-90)\" text-anchor=\"middle\">%s</text>",
            middle,
            SvgText.safe(chart.y().label())));
    out.append("</g>");
  }

  private void limits() {
    for (Chart.Limit limit : chart.limits()) {
      double at = py(limit.y());
      out.append("<g class=\"limit\" stroke=\"currentColor\">");
      line(left, at, WIDTH - RIGHT, at, " stroke-dasharray=\"8 3\"");
      out.append("</g>");
    }
  }

  /** Writes each limit's name above or below its level, right or left, where it hides least. */
  private void limitNames() {
    List<Box> taken = new ArrayList<>();
    for (Series series : chart.series()) {
      series.points().forEach(p -> taken.add(Box.around(px(p.x()), py(p.y()))));
    }
    chart.limits().forEach(l -> taken.add(Box.level(left, py(l.y()))));
    for (Chart.Limit limit : chart.limits()) {
      String name = Columns.shortened(limit.name(), LIMIT_LETTERS, false);
      double width = name.length() * LETTER;
      double at = py(limit.y());
      List<Box> places = new ArrayList<>();
      for (double top : new double[] {at - NAME_HEIGHT - 4, at + 3}) {
        places.add(new Box(WIDTH - RIGHT - 2 - width, top, width, NAME_HEIGHT));
        places.add(new Box(left + 4, top, width, NAME_HEIGHT));
      }
      places.removeIf(b -> b.top() < TOP - NAME_HEIGHT || b.bottom() > HEIGHT - BOTTOM);
      Box best = places.stream().min(Comparator.comparingLong(b -> b.hidden(taken))).orElseThrow();
      taken.add(best);
      out.append("<g class=\"over\">");
      boolean right = best.left() > left + 4;
      double x = right ? WIDTH - RIGHT - 2 : left + 4;
      text(x, best.bottom() - 1, right ? "end" : "start", name);
      out.append("</g>");
    }
  }

  /** A rectangle in the picture. */
  private record Box(double left, double top, double width, double height) {
    private static final double MARK = 12;

    static Box around(double x, double y) {
      return new Box(x - MARK / 2, y - MARK / 2, MARK, MARK);
    }

    static Box level(double left, double y) {
      return new Box(left, y - 1, WIDTH - RIGHT - left, 2);
    }

    double bottom() {
      return top + height;
    }

    long hidden(List<Box> others) {
      return others.stream().filter(this::meets).count();
    }

    private boolean meets(Box o) {
      return left < o.left + o.width
          && o.left < left + width
          && top < o.bottom()
          && o.top < bottom();
    }
  }

  private void series(Series series) {
    int index = series.style();
    out.append("<g class=\"s").append(index % Mark.COUNT).append("\">");
    switch (series.kind()) {
      case RANGES -> ranges(series.points());
      case CURVE -> path(series.points(), Mark.dash(index));
      case JOINED -> {
        path(series.points(), Mark.dash(index));
        marks(series.points(), index);
      }
      case MARKS -> marks(series.points(), index);
    }
    out.append("</g>");
  }

  private void ranges(List<Series.Point> points) {
    for (Series.Point p : points) {
      double top = py(p.high());
      out.append(
          String.format(
              Locale.ROOT,
              "<rect x=\"%.1f\" y=\"%.1f\" width=\"16\" height=\"%.1f\" fill=\"currentColor\""
                  + " fill-opacity=\".22\" stroke=\"currentColor\" stroke-opacity=\".5\"/>",
              px(p.x()) - 8,
              top,
              Math.max(1, py(p.low()) - top)));
    }
  }

  private void path(List<Series.Point> points, String dash) {
    StringBuilder path = new StringBuilder();
    for (Series.Point p : points) {
      path.append(path.length() == 0 ? 'M' : 'L');
      path.append(String.format(Locale.ROOT, "%.1f %.1f", px(p.x()), py(p.y())));
    }
    if (path.length() > 0) {
      out.append("<path fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.5\"");
      out.append(dash).append(" d=\"").append(path).append("\"/>");
    }
  }

  private void marks(List<Series.Point> points, int index) {
    for (Series.Point p : points) {
      double cx = px(p.x());
      if (p.hasRange()) {
        out.append("<g stroke=\"currentColor\" stroke-width=\"1.2\">");
        line(cx, py(p.low()), cx, py(p.high()), "");
        line(cx - CAP, py(p.low()), cx + CAP, py(p.low()), "");
        line(cx - CAP, py(p.high()), cx + CAP, py(p.high()), "");
        out.append("</g>");
      }
      Mark.svg(out, index, cx, py(p.y()));
    }
  }

  private double px(double value) {
    return left + x.at(value) * (WIDTH - left - RIGHT);
  }

  private double py(double value) {
    return HEIGHT - BOTTOM - y.at(value) * (HEIGHT - BOTTOM - TOP);
  }

  private void line(double x1, double y1, double x2, double y2, String more) {
    out.append(
        String.format(
            Locale.ROOT,
            "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\"%s/>",
            x1,
            y1,
            x2,
            y2,
            more));
  }

  private void text(double atX, double atY, String anchor, String text) {
    out.append(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>",
            atX,
            atY,
            anchor,
            SvgText.safe(text)));
  }
}
