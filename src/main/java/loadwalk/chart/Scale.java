package loadwalk.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A scale, which lays an axis over a length.
 *
 * @param low the value at the start, or its logarithm
 * @param high the value at the end, or its logarithm; above low
 * @param logarithmic whether low and high are logarithms
 * @param ticks the marks inside the range
 */
record Scale(double low, double high, boolean logarithmic, List<Axis.Tick> ticks) {
  private static final double MARGIN = 0.08;
  private static final int MOST_TICKS = 6;

  /** Half the width of a category; categories lie at whole numbers. */
  private static final double HALF_STEP = 0.5;

  private static final double[] STEPS = {1, 2, 2.5, 5, 10};

  Scale {
    ticks = List.copyOf(ticks);
    if (!(high > low)) {
      throw new IllegalArgumentException("a scale needs low < high, got " + low + ", " + high);
    }
  }

  static Scale x(Chart chart) {
    List<Double> values = new ArrayList<>();
    chart.series().forEach(s -> s.points().forEach(p -> values.add(p.x())));
    return of(chart.x(), values);
  }

  static Scale y(Chart chart) {
    List<Double> values = new ArrayList<>();
    for (Series series : chart.series()) {
      for (Series.Point p : series.points()) {
        values.add(p.low());
        values.add(p.high());
      }
    }
    chart.limits().forEach(l -> values.add(l.y() * (1 + MARGIN)));
    return of(chart.y(), values);
  }

  static Scale of(Axis axis, List<Double> values) {
    if (axis.logarithmic()) {
      return ratios(axis, values);
    }
    double low = values.stream().mapToDouble(v -> v).min().orElse(0);
    double high = values.stream().mapToDouble(v -> v).max().orElse(1);
    axis.ticks().forEach(t -> Finite.require(t.value(), axis.label()));
    if (axis.fromZero()) {
      low = Math.min(0, low);
      high = Math.max(0, high);
    }
    if (!(high > low)) {
      double room = Math.max(1, Math.abs(low) * MARGIN);
      low -= axis.fromZero() && low == 0 ? 0 : room;
      high += room;
    }
    if (!axis.ticks().isEmpty()) {
      double first = axis.ticks().get(0).value();
      double last = axis.ticks().get(axis.ticks().size() - 1).value();
      double from = Math.min(low, first - HALF_STEP);
      return new Scale(from, Math.max(high, last + HALF_STEP), false, axis.ticks());
    }
    double step = step(high - low);
    double from = Math.floor(low / step + 1e-9) * step;
    double to = Math.ceil(high / step - 1e-9) * step;
    return new Scale(from, to, false, round(from, to, step));
  }

  private static Scale ratios(Axis axis, List<Double> values) {
    List<Double> all = new ArrayList<>(values);
    axis.ticks().forEach(t -> all.add(t.value()));
    all.removeIf(v -> !(v > 0));
    double low = Math.log(all.stream().mapToDouble(v -> v).min().orElse(1));
    double high = Math.log(all.stream().mapToDouble(v -> v).max().orElse(1));
    double room = Math.max((high - low) * MARGIN, 0.2);
    return new Scale(low - room, high + room, true, axis.ticks());
  }

  private static double step(double span) {
    double rough = span / (MOST_TICKS - 1);
    double size = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double factor : STEPS) {
      if (factor * size >= rough * (1 - 1e-9)) {
        return factor * size;
      }
    }
    return 10 * size;
  }

  private static List<Axis.Tick> round(double from, double to, double step) {
    List<Axis.Tick> ticks = new ArrayList<>();
    int count = (int) Math.round((to - from) / step);
    int places = (int) Math.max(0, 1 - Math.floor(Math.log10(step)));
    for (int i = 0; i <= count; i++) {
      BigDecimal value =
          BigDecimal.valueOf(from + i * step).setScale(places, RoundingMode.HALF_EVEN);
      String label = value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
      ticks.add(new Axis.Tick(value.doubleValue(), label));
    }
    return ticks;
  }

  /** Returns the position of a value, 0 at the start and 1 at the end; NaN if it has none. */
  double at(double value) {
    double place = logarithmic ? (value > 0 ? Math.log(value) : Double.NaN) : value;
    return (place - low) / (high - low);
  }
}
