package loadwalk.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import loadwalk.text.Sentence;

/** Describes a chart in words for people who cannot see it. */
final class ChartWords {
  private static final double LEAST_PLAIN = 1.001e-4;
  private static final double MOST_PLAIN = 9999;

  private static final int MOST_POINTS = 12;

  /** The largest offset of a point set beside its tick so that it hides no other, a fraction. */
  private static final double NEAR = 0.2;

  private ChartWords() {}

  /** Returns what each axis shows and the values of each series. */
  static String of(Chart chart) {
    List<String> parts = new ArrayList<>();
    parts.add(Sentence.of("{} vs. {}.", chart.y().label(), chart.x().label()));
    for (Series series : chart.series()) {
      parts.add(series.name() + ": " + values(chart, series) + ".");
    }
    chart.limits().forEach(l -> parts.add(l.name() + ": " + number(l.y()) + "."));
    return String.join(" ", parts);
  }

  private static String values(Chart chart, Series series) {
    List<Series.Point> points = series.points();
    if (points.isEmpty()) {
      return "no values";
    }
    if (series.kind() == Series.Kind.CURVE || points.size() > MOST_POINTS) {
      Series.Point first = points.get(0);
      Series.Point last = points.get(points.size() - 1);
      return Sentence.of("a curve from {} to {}", at(chart, first), at(chart, last));
    }
    List<String> texts = new ArrayList<>();
    for (Series.Point p : points) {
      texts.add(series.kind() == Series.Kind.RANGES ? rangeAt(chart, p) : at(chart, p));
    }
    return String.join(", ", texts);
  }

  private static String at(Chart chart, Series.Point p) {
    return Sentence.of("{} at {}", number(p.y()), place(chart, p.x()));
  }

  private static String rangeAt(Chart chart, Series.Point p) {
    return Sentence.of("{} to {} at {}", number(p.low()), number(p.high()), place(chart, p.x()));
  }

  private static String place(Chart chart, double x) {
    return chart.x().ticks().stream()
        .filter(t -> Math.abs(t.value() - x) <= NEAR * Math.max(1e-9, Math.abs(x)))
        .min(Comparator.comparingDouble(t -> Math.abs(t.value() - x)))
        .map(Axis.Tick::label)
        .orElse(number(x));
  }

  static String number(double value) {
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    return size > LEAST_PLAIN && size < MOST_PLAIN
        ? plain(value)
        : String.format(Locale.ROOT, "%.4g", value)
            .replaceFirst("(\\.\\d*?)0+$", "$1")
            .replaceFirst("\\.$", "");
  }

  /** Formats a number without a format string, which would load the tables of all languages. */
  private static String plain(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(4, RoundingMode.HALF_UP));
    return rounded.stripTrailingZeros().toPlainString();
  }
}
