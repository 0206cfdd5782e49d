package loadwalk.view.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import loadwalk.bench.Mode;
import loadwalk.bench.Target;
import loadwalk.chart.Axis;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.chart.Series.Point;
import loadwalk.chart.TextChart;
import loadwalk.forecast.Band;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.result.PublishedPower;
import loadwalk.result.WalkResult;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.WalkState;

/** Draws power vs. load so far, with the forecast of the loads briefed. */
final class PowerChart {
  private static final int PLOT_ROWS = 8;

  /** Stereo and bridged at one load stand beside each other, not on top. */
  private static final double BESIDE = 1.1;

  private PowerChart() {}

  /** Returns the lines; none before a load has been measured. */
  static List<String> lines(WalkState state, WalkResult result, int columns, boolean ascii) {
    if (result.published().isEmpty()) {
      return List.of();
    }
    TreeSet<Double> ohms = new TreeSet<>();
    List<Point> forecast = forecast(state, ohms);
    List<Series> series = new ArrayList<>();
    series.add(new Series("forecast, 95 %", Series.Kind.RANGES, 0, forecast));
    for (Mode mode : Mode.values()) {
      List<Point> points = new ArrayList<>();
      for (PublishedPower power : result.published().values()) {
        if (power.mode() == mode) {
          double u = power.watts().expanded();
          points.add(Point.within(beside(mode, power.ohms()), power.watts().value(), u));
          ohms.add(power.ohms());
        }
      }
      if (!points.isEmpty()) {
        series.add(
            new Series(
                Sentence.of("{} so far", mode.word()),
                Series.Kind.MARKS,
                1 + mode.ordinal(),
                points));
      }
    }
    List<Axis.Tick> ticks =
        ohms.stream().map(o -> new Axis.Tick(o, Printer.UTF8.exact(o, Unit.ONE))).toList();
    Chart chart =
        Chart.of(
            "Power vs. load",
            Axis.ratios("load, Ω", ticks),
            Axis.fromZero("power in one load, W"),
            series);
    return TextChart.lines(chart, columns, PLOT_ROWS, ascii);
  }

  private static List<Point> forecast(WalkState state, TreeSet<Double> ohms) {
    List<Point> points = new ArrayList<>();
    for (PlannedStep planned : state.plan()) {
      Optional<Target> target =
          Targets.of(state, planned)
              .filter(t -> t.kind() == Target.Kind.LOADED && planned.step().repeats().isEmpty());
      Optional<Band> watts =
          state.step(planned.id()).brief().flatMap(brief -> brief.demand().loadWatts());
      if (target.isPresent() && watts.isPresent()) {
        Band band = watts.get();
        double x = beside(target.get().mode(), target.get().ohms());
        points.add(new Point(x, band.middle(), band.low(), band.high()));
        ohms.add(target.get().ohms());
      }
    }
    return points;
  }

  private static double beside(Mode mode, double ohms) {
    return mode == Mode.STEREO ? ohms / BESIDE : ohms * BESIDE;
  }
}
