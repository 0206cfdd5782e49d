package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loadwalk.chart.Axis;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.chart.Series.Point;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Figure;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Page.Section;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.walk.fact.Capture;

/** Draws and words the captured waves that outputs were taken from. */
final class WaveSections {
  private static final double SHOWN_PERCENT = 0.001;
  private static final Printer PRINTER = Printer.UTF8;

  /** The lowest level drawn, dB; a harmonic of zero has no level in decibels. */
  private static final double FLOOR_DECIBELS = -100;

  private static final int PERIODS = 2;
  private static final int CAPTURED = 0;
  private static final int PURE = 1;
  private static final int HARMONICS = 1;
  private static final int MOST_HARMONIC = 10;

  private WaveSections() {}

  /** Returns the sections on waves; none if every output was typed. */
  static List<Section> sections(Sheet sheet) {
    List<Sheet.StepLine> steps =
        sheet.steps().stream().filter(step -> step.wave().isPresent()).toList();
    if (steps.isEmpty()) {
      return List.of();
    }
    List<Block> figures = new ArrayList<>();
    List<String> sources = new ArrayList<>();
    for (Sheet.StepLine step : steps) {
      Capture wave = step.wave().orElseThrow();
      figures.addAll(figures(step.id(), wave));
      sources.add(source(step.id(), wave));
    }
    return List.of(
        new Section("wave-charts", "Waves and spectra", figures),
        new Section(
            "waves",
            "Captured waves",
            List.of(readings(steps), harmonics(steps), new Bullets(sources))));
  }

  private static List<Block> figures(String step, Capture wave) {
    List<Block> figures = new ArrayList<>();
    if (!wave.cycle().isEmpty()) {
      figures.add(new Figure(wave(step, wave), waveCaption(step, wave)));
    }
    if (!wave.harmonics().isEmpty()) {
      figures.add(new Figure(spectrum(step, wave), spectrumCaption(step, wave)));
    }
    return figures;
  }

  private static String waveCaption(String step, Capture wave) {
    return wave.atLimit()
        ? Sentence.of(
            "Two averaged periods of {} at the limit, and a sine at the same fundamental: {}.",
            step,
            wave.shape())
        : Sentence.of(
            "Two averaged periods of {}, and a sine at the same fundamental: {}.",
            step,
            wave.shape());
  }

  private static String spectrumCaption(String step, Capture wave) {
    return wave.atLimit()
        ? Sentence.of(
            "Harmonics of {} at the limit, relative to the fundamental."
                + " What is below −100 dB is drawn at −100 dB.",
            step)
        : Sentence.of(
            "Harmonics of {}, relative to the fundamental."
                + " What is below −100 dB is drawn at −100 dB.",
            step);
  }

  static Chart wave(String step, Capture wave) {
    List<Double> cycle = wave.cycle();
    int n = cycle.size();
    double sine = 0;
    double cosine = 0;
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / n;
      sine += 2 * cycle.get(i) * Math.sin(angle) / n;
      cosine += 2 * cycle.get(i) * Math.cos(angle) / n;
    }
    double mean = cycle.stream().mapToDouble(y -> y).average().orElseThrow();
    List<Point> pure = new ArrayList<>();
    List<Point> captured = new ArrayList<>();
    for (int i = 0; i < PERIODS * n; i++) {
      double turns = (i + 0.5) / n;
      double angle = 2 * Math.PI * turns;
      double millis = 1000 * turns / wave.hertz();
      pure.add(Point.exact(millis, mean + sine * Math.sin(angle) + cosine * Math.cos(angle)));
      captured.add(Point.exact(millis, cycle.get(i % n)));
    }
    return Chart.of(
        Sentence.of("Wave of {}", step),
        Axis.fromZero("time, ms"),
        Axis.overRange("output, V"),
        List.of(
            new Series("captured", Series.Kind.CURVE, CAPTURED, captured),
            new Series("sine at the same fundamental", Series.Kind.CURVE, PURE, pure)));
  }

  static Chart spectrum(String step, Capture wave) {
    List<Point> lines = new ArrayList<>();
    List<Axis.Tick> ticks = new ArrayList<>();
    lines.add(new Point(1, 0, FLOOR_DECIBELS, 0));
    ticks.add(new Axis.Tick(1, "1"));
    for (int i = 0; i < wave.harmonics().size(); i++) {
      double decibels = 20 * Math.log10(wave.harmonics().get(i) / 100);
      double shown = Math.max(FLOOR_DECIBELS, decibels);
      lines.add(new Point(i + 2, shown, FLOOR_DECIBELS, Math.max(shown, FLOOR_DECIBELS)));
      ticks.add(new Axis.Tick(i + 2, String.valueOf(i + 2)));
    }
    String base = PRINTER.value(wave.hertz(), Unit.HERTZ, 4);
    return Chart.of(
        Sentence.of("Spectrum of {}", step),
        new Axis(Sentence.of("harmonic of {}", base), false, false, ticks),
        Axis.overRange("relative to the fundamental, dB"),
        List.of(new Series("harmonics", Series.Kind.RANGES, HARMONICS, lines)));
  }

  private static Table readings(List<Sheet.StepLine> steps) {
    List<List<String>> rows = new ArrayList<>();
    for (Sheet.StepLine step : steps) {
      Capture wave = step.wave().orElseThrow();
      rows.add(
          List.of(
              step.id(),
              PRINTER.value(wave.volts(), Unit.VOLT, 5),
              wave.thdPercent().isPresent() ? percent(wave.thdPercent().getAsDouble()) : "",
              PRINTER.value(wave.hertz(), Unit.HERTZ, 6),
              wave.atLimit() ? "at the limit" : "at one level",
              wave.shape()));
    }
    return new Table(
        "Readings from the waves",
        List.of(
            Column.words("Step"),
            Column.numbers("Output, rms"),
            Column.numbers("THD"),
            Column.numbers("Frequency"),
            Column.words("Read"),
            Column.words("Looks like")),
        rows);
  }

  private static Table harmonics(List<Sheet.StepLine> steps) {
    int most =
        steps.stream()
            .mapToInt(s -> Math.min(MOST_HARMONIC, s.wave().orElseThrow().harmonics().size() + 1))
            .max()
            .orElse(1);
    List<Column> columns = new ArrayList<>(List.of(Column.words("Step")));
    IntStream.rangeClosed(2, most).forEach(n -> columns.add(Column.numbers("H" + n)));
    List<List<String>> rows = new ArrayList<>();
    for (Sheet.StepLine step : steps) {
      List<Double> percents = step.wave().orElseThrow().harmonics();
      List<String> row = new ArrayList<>(List.of(step.id()));
      IntStream.rangeClosed(2, most)
          .forEach(n -> row.add(n - 2 < percents.size() ? percent(percents.get(n - 2)) : ""));
      rows.add(row);
    }
    return new Table("Harmonics, relative to the fundamental", columns, rows);
  }

  private static String percent(double percent) {
    return PRINTER.reading(percent, Unit.PERCENT, SHOWN_PERCENT);
  }

  private static String source(String step, Capture wave) {
    return Sentence.of(
        "{}: {}, channel {}, SHA-256 {}. {} Calibration: {}. Input overdriven: {}.",
        step,
        Visible.name(wave.file()),
        wave.channel(),
        Visible.name(wave.sha256()),
        ResultWords.sentence(Visible.name(wave.method())),
        Visible.name(wave.calibration()),
        Visible.name(wave.overdriven()));
  }
}
