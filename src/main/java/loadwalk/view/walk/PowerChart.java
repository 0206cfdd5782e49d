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
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.result.WalkResult;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.WalkState;

/** Draws power vs. load so far, with the forecast of the loads briefed. */
final class PowerChart {
  private static final int PLOT_ROWS = 8;
  private static final int STEREO = 1;
  private static final int BRIDGED = 2;
  private static final int OTHER = 4;

  /** Both channels and bridged at one load stand beside each other, not on top. */
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
    result.published().values().forEach(power -> ohms.add(power.ohms()));
    add(series, "stereo, channel 1", STEREO, read(result, Mode.STEREO, 0));
    add(series, "stereo, channel 2", OTHER, read(result, Mode.STEREO, 1));
    add(series, "bridged", BRIDGED, read(result, Mode.BRIDGED, 0));
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

  private static void add(List<Series> series, String name, int style, List<Point> points) {
    if (!points.isEmpty()) {
      series.add(new Series(name, Series.Kind.MARKS, style, points));
    }
  }

  /** Returns the power read in the loads of one channel, or in the bridged loads. */
  private static List<Point> read(WalkResult result, Mode mode, int channel) {
    return result.published().values().stream()
        .filter(power -> power.mode() == mode && power.channelWatts().size() > channel)
        .map(
            power ->
                point(
                    channel == 0 ? beside(mode, power.ohms()) : power.ohms(),
                    power.channelWatts().get(channel)))
        .toList();
  }

  private static Point point(double ohms, Quantity watts) {
    return Point.within(ohms, watts.value(), watts.expanded());
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
