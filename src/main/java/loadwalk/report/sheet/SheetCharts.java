package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.Target;
import loadwalk.chart.Axis;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.chart.Series.Point;
import loadwalk.numeric.ThermalFit;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Figure;
import loadwalk.result.Mark;
import loadwalk.result.OutputFit;
import loadwalk.result.StepResult;
import loadwalk.text.Sentence;

/** Makes the charts of a sheet; an empty chart is left out. */
public final class SheetCharts {
  /**
   * The factor that sets stereo and bridged at one load side by side, so that neither hides the
   * other.
   */
  private static final double BESIDE = 1.05;

  private static final int EXPECTED = 0;
  private static final int STEREO = 1;
  private static final int BRIDGED = 2;
  private static final int RATED = 3;
  private static final int OTHER = 4;
  private static final int IMPOSSIBLE = 5;
  private static final int CURVE_POINTS = 60;
  private static final double CATEGORY_HALF = 0.12;

  private final Sheet sheet;

  SheetCharts(Sheet sheet) {
    this.sheet = sheet;
  }

  List<Block> figures() {
    List<Figure> all = new ArrayList<>();
    all.add(
        new Figure(
            power(),
            "Power in each load that was read, with the rating and the forecast made before each"
                + " run. Bars cover 95 %."));
    all.add(new Figure(volts(), voltsCaption()));
    all.add(
        new Figure(
            current(),
            "Current drawn for the output of each step, with the limits of supplies and fuses."));
    all.add(new Figure(efficiency(), "Output divided by input. The rest is heat."));
    all.add(new Figure(heat(), "Heat in the amplifier while each load is read."));
    sheet.record().warmUps().stream()
        .filter(w -> w.temperatures().size() > 1)
        .forEach(w -> all.add(new Figure(warmUp(w), warmUpCaption(w))));
    all.add(new Figure(recheck(), "First run and recheck, each with its uncertainty."));
    return all.stream().filter(f -> !f.chart().isEmpty()).map(Block.class::cast).toList();
  }

  private Chart power() {
    List<Point> forecast = new ArrayList<>();
    List<Point> rated = new ArrayList<>();
    for (Sheet.LoadLine line : sheet.loads()) {
      double x = beside(line.power().mode(), line.power().ohms());
      line.forecast().ifPresent(b -> forecast.add(new Point(x, b.middle(), b.low(), b.high())));
    }
    for (Rating r : sheet.amplifier().ratings()) {
      rated.add(Point.exact(beside(r.mode(), r.ohms()), r.watts()));
    }
    List<Series> series = new ArrayList<>();
    add(series, "forecast, 95 %", Series.Kind.RANGES, EXPECTED, forecast);
    add(series, "stereo, channel 1", Series.Kind.JOINED, STEREO, published(Mode.STEREO, 0));
    add(series, "stereo, channel 2", Series.Kind.JOINED, OTHER, published(Mode.STEREO, 1));
    add(series, "bridged", Series.Kind.JOINED, BRIDGED, published(Mode.BRIDGED, 0));
    add(series, "impossible", Series.Kind.MARKS, IMPOSSIBLE, impossible());
    add(series, "rated", Series.Kind.MARKS, RATED, sheet.loads().isEmpty() ? List.of() : rated);
    return Chart.of("Power vs. load", loads(), Axis.fromZero("power in one load, W"), series);
  }

  private List<Point> published(Mode mode, int channel) {
    return sheet.loads().stream()
        .map(Sheet.LoadLine::power)
        .filter(p -> p.mode() == mode && p.channelWatts().size() > channel)
        .filter(p -> !p.marks().contains(Mark.IMPOSSIBLE))
        .map(
            p ->
                point(
                    channel == 0 ? beside(mode, p.ohms()) : p.ohms(),
                    p.channelWatts().get(channel)))
        .toList();
  }

  /** Returns what cannot be, joined to nothing. */
  private List<Point> impossible() {
    return sheet.loads().stream()
        .map(Sheet.LoadLine::power)
        .filter(p -> p.marks().contains(Mark.IMPOSSIBLE))
        .map(p -> point(beside(p.mode(), p.ohms()), p.watts()))
        .toList();
  }

  private Chart volts() {
    List<Series> series = new ArrayList<>();
    List<Point> curve = new ArrayList<>();
    Optional<OutputFit> fit = sheet.result().outputFit();
    List<StepResult> measured = measured();
    double low = measured.stream().mapToDouble(SheetCharts::channelOhms).min().orElse(1);
    double high = measured.stream().mapToDouble(SheetCharts::channelOhms).max().orElse(1);
    if (fit.isPresent()) {
      for (int i = 0; i <= CURVE_POINTS; i++) {
        double ohms = low * Math.pow(high / low, (double) i / CURVE_POINTS);
        curve.add(Point.exact(ohms, fit.get().voltsAt(ohms)));
      }
    }
    add(series, "fit", Series.Kind.CURVE, EXPECTED, curve);
    for (Mode mode : Mode.values()) {
      double part = mode == Mode.BRIDGED ? 0.5 : 1;
      List<Point> points =
          measured.stream()
              .filter(s -> s.mode() == mode)
              .map(s -> point(channelOhms(s), s.outputVolts().orElseThrow().scaledBy(part)))
              .toList();
      add(
          series,
          mode == Mode.BRIDGED ? "bridged, half the volts" : "stereo, channel 1",
          Series.Kind.MARKS,
          style(mode),
          points);
    }
    TreeSet<Double> ohms = new TreeSet<>();
    measured.forEach(s -> ohms.add(s.mode().channelOhms(s.ohms())));
    return Chart.of(
        "Output volts vs. load",
        Axis.ratios("load per channel, Ω", ticks(ohms)),
        Axis.fromZero("volts per channel, rms"),
        series);
  }

  private String voltsCaption() {
    return sheet
        .result()
        .outputFit()
        .map(
            f ->
                Sentence.of(
                    "Fit: V = E × R/(R + r), E = {}, r = {}. {}",
                    Printer.UTF8.quantity(f.openVolts()),
                    Printer.UTF8.quantity(f.seriesOhms()),
                    ResultWords.closeness(f)))
        .orElse("Too few loads for a fit.");
  }

  private Chart current() {
    List<Series> series = new ArrayList<>();
    for (Mode mode : Mode.values()) {
      List<Point> points = new ArrayList<>();
      for (StepResult step : sheet.result().steps()) {
        if (isLoaded(step) && step.mode() == mode) {
          double watts = step.totalWatts().orElseThrow().value();
          step.supplyAmps().ifPresent(amps -> points.add(point(watts, amps)));
        }
      }
      add(series, mode.word(), Series.Kind.MARKS, style(mode), points);
    }
    List<Chart.Limit> limits = new ArrayList<>();
    limit(limits, "usable supply current", sheet.bench().usableAmps());
    limit(limits, "fuse at the source", sheet.bench().fuseAmps());
    limit(limits, "amplifier fuses", sheet.amplifier().fuseAmps());
    return new Chart(
        "Supply current vs. output",
        Axis.fromZero("total power, W"),
        Axis.fromZero("supply current, A"),
        series,
        limits);
  }

  private static void limit(List<Chart.Limit> limits, String name, OptionalDouble amps) {
    amps.ifPresent(a -> limits.add(new Chart.Limit(name, a)));
  }

  private Chart efficiency() {
    return ofSteps("Efficiency vs. load", "efficiency, %", 100, StepResult::efficiency);
  }

  private Chart heat() {
    return ofSteps("Heat vs. load", "heat, W", 1, StepResult::heatWatts);
  }

  private Chart ofSteps(
      String title, String label, double factor, Function<StepResult, Optional<Quantity>> what) {
    List<Series> series = new ArrayList<>();
    for (Mode mode : Mode.values()) {
      List<Point> points = new ArrayList<>();
      for (StepResult step : measured()) {
        if (step.mode() == mode) {
          what.apply(step)
              .filter(q -> !step.marks().contains(Mark.IMPOSSIBLE))
              .ifPresent(q -> points.add(point(beside(mode, step.ohms()), q.scaledBy(factor))));
        }
      }
      add(series, mode.word(), Series.Kind.JOINED, style(mode), points);
    }
    return Chart.of(title, loads(), Axis.fromZero(label), series);
  }

  private static String warmUpCaption(Sheet.WarmUp w) {
    return w.fit()
        .map(
            fit ->
                Sentence.of(
                    "Heatsink temperature as typed. It settles with a time constant of {} min.",
                    Printer.UTF8.value(fit.tauMinutes(), Unit.ONE, 2)))
        .orElse("Heatsink temperature as typed. The readings are too few or too uneven for a fit.");
  }

  private static Chart warmUp(Sheet.WarmUp w) {
    List<Point> typed =
        w.temperatures().stream()
            .map(t -> Point.within(t.minutes(), t.celsius(), 2 * t.u()))
            .toList();
    List<Series> series = new ArrayList<>();
    if (w.fit().isPresent()) {
      ThermalFit.Settling fit = w.fit().get();
      double first = typed.get(0).x();
      double last = typed.get(typed.size() - 1).x();
      List<Point> curve = new ArrayList<>();
      for (int i = 0; i <= CURVE_POINTS; i++) {
        double minutes = (last - first) * i / CURVE_POINTS;
        curve.add(Point.exact(first + minutes, fit.celsiusAt(minutes)));
      }
      String end = Printer.UTF8.value(fit.endCelsius(), Unit.CELSIUS, 3);
      add(series, Sentence.of("fit, settling at {}", end), Series.Kind.CURVE, EXPECTED, curve);
    }
    add(series, "typed", Series.Kind.MARKS, STEREO, typed);
    return Chart.of(
        Sentence.of("Heatsink temperature in {}", w.stepId()),
        Axis.fromZero("warm-up clock, min"),
        Axis.overRange("heatsink, °C"),
        series);
  }

  private Chart recheck() {
    List<Point> first = new ArrayList<>();
    List<Point> again = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (var agreement : sheet.result().rechecks()) {
      Optional<Quantity> one = total(agreement.firstId());
      Optional<Quantity> two = total(agreement.recheckId());
      if (one.isPresent() && two.isPresent()) {
        double at = names.size();
        names.add(agreement.firstId());
        first.add(point(at - CATEGORY_HALF, one.get()));
        again.add(point(at + CATEGORY_HALF, two.get()));
      }
    }
    List<Series> series = new ArrayList<>();
    add(series, "first run", Series.Kind.MARKS, STEREO, first);
    add(series, "recheck", Series.Kind.MARKS, BRIDGED, again);
    return Chart.of(
        "Recheck vs. first run",
        Axis.ofThings("step", names),
        Axis.overRange("total power, W"),
        series);
  }

  private Optional<Quantity> total(String stepId) {
    return sheet.result().step(stepId).flatMap(StepResult::totalWatts);
  }

  /** Returns the steps that measured a load, the first time or again. */
  private List<StepResult> measured() {
    return sheet.result().published().values().stream()
        .map(p -> sheet.result().step(p.fromStepId()).orElseThrow())
        .filter(SheetCharts::isLoaded)
        .toList();
  }

  private static boolean isLoaded(StepResult step) {
    return step.kind() == Target.Kind.LOADED
        && step.outputVolts().isPresent()
        && step.totalWatts().isPresent();
  }

  private static double channelOhms(StepResult step) {
    return step.mode().channelOhms(step.loadOhms().orElseThrow().value());
  }

  private Axis loads() {
    TreeSet<Double> ohms = new TreeSet<>();
    sheet.loads().forEach(l -> ohms.add(l.power().ohms()));
    sheet.amplifier().ratings().forEach(r -> ohms.add(r.ohms()));
    return Axis.ratios("load, Ω", ticks(ohms));
  }

  private static int style(Mode mode) {
    return mode == Mode.STEREO ? STEREO : BRIDGED;
  }

  /** Returns a tick at each load, ohms. */
  public static List<Axis.Tick> ticks(TreeSet<Double> ohms) {
    return ohms.stream().map(o -> new Axis.Tick(o, Printer.UTF8.exact(o, Unit.ONE))).toList();
  }

  static double beside(Mode mode, double ohms) {
    return mode == Mode.STEREO ? ohms / BESIDE : ohms * BESIDE;
  }

  static Point point(double x, Quantity y) {
    return Point.within(x, y.value(), y.expanded());
  }

  /** Adds a series if it has points. */
  public static void add(
      List<Series> series, String name, Series.Kind kind, int style, List<Point> points) {
    if (!points.isEmpty()) {
      series.add(new Series(name, kind, style, points));
    }
  }
}
