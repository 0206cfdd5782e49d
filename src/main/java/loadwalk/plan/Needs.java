package loadwalk.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loadwalk.bench.AmplifierClass;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.plan.wiring.WiringAnswer;
import loadwalk.text.Sentence;

/** Lists what a bench needs for a whole sequence: supply, fuse, leads, load resistors. */
final class Needs {
  /** Common fuse ratings, amperes (common practice, no source). */
  private static final double[] FUSES = {
    5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350,
    400, 500
  };

  /** Common wire sizes, thinnest first (common practice, no source). */
  private static final int[] GAUGES = {18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3};

  /** The lead length assumed if none is described, metres each way. Common practice, no source. */
  private static final double METRES_EACH_WAY = 1;

  /** Insulation of the leads to buy, °C: common in car and battery cable. */
  private static final double BOUGHT = 105;

  private final Tables tables;
  private final Wire wire;
  private final Evidence evidence;
  private final Bench bench;
  private final List<StepPlan> steps;
  private final double worstAmps;

  Needs(Tables tables, Evidence evidence, List<StepPlan> steps) {
    this.tables = tables;
    this.evidence = evidence;
    this.steps = steps;
    wire = new Wire(tables);
    bench = evidence.bench();
    worstAmps =
        steps.stream()
            .flatMap(step -> step.amps().stream())
            .mapToDouble(Band::high)
            .max()
            .orElse(Double.NaN);
  }

  List<String> sentences() {
    List<String> out = new ArrayList<>();
    if (worstAmps > 0) {
      supplies().ifPresent(out::add);
      fuse().ifPresent(out::add);
      leads().ifPresent(out::add);
    } else {
      out.add(
          "The supply current is not known. Enter the amplifier's rated powers, or measure a light"
              + " load first.");
    }
    out.addAll(loads());
    unknownClass().ifPresent(out::add);
    return out;
  }

  private Optional<String> unknownClass() {
    return evidence
        .amplifier()
        .amplifierClass()
        .filter(written -> AmplifierClass.of(written).isEmpty())
        .map(
            written ->
                Sentence.of(
                    "A class that is known here: «{}» is forecast as none; known are {}.",
                    written,
                    AmplifierClass.KNOWN));
  }

  private Optional<String> supplies() {
    OptionalDouble usable = bench.usableAmps();
    if (usable.isPresent() && usable.getAsDouble() >= worstAmps) {
      return Optional.empty();
    }
    String buy =
        Sentence.of(
            "Supplies of {} A in all at {} V: {} A at worst, and {} % of the sum counts as usable.",
            Figures.three(worstAmps / bench.usableFraction()),
            Figures.three(evidence.conditions().supplyVolts()),
            Figures.three(worstAmps),
            Figures.three(100 * bench.usableFraction()));
    return Optional.of(
        usable.isEmpty()
            ? buy
            : Sentence.of(
                "{} The bench has {} A usable.", buy, Figures.three(usable.getAsDouble())));
  }

  /** Returns the rating of the fuse on the bench if it is suitable, otherwise of the one to buy. */
  private OptionalDouble fuseRating() {
    OptionalDouble own = bench.fuseAmps();
    return own.isPresent() && own.getAsDouble() >= worstAmps
        ? own
        : Arrays.stream(FUSES).filter(rating -> rating >= worstAmps).findFirst();
  }

  private Optional<String> fuse() {
    OptionalDouble fitting = fuseRating();
    if (fitting.isPresent() && fitting.equals(bench.fuseAmps())) {
      return Optional.empty();
    }
    if (fitting.isEmpty()) {
      return Optional.of(
          Sentence.of(
              "No common single fuse carries {} A. Check the ratings.", Figures.three(worstAmps)));
    }
    double rating = fitting.getAsDouble();
    double continuous = tables.limit("fuse-continuous-percent") / 100 * rating;
    return Optional.of(
        Sentence.of(
            "A {} A fuse ({}) at the source, good for {} A continuous. The leads must carry more"
                + " than the fuse.",
            Figures.three(rating),
            tables.fuseFor(rating).type(),
            Figures.three(continuous)));
  }

  private Optional<String> leads() {
    boolean enough =
        !bench.leads().isEmpty()
            && bench.leads().stream().allMatch(lead -> wire.ampacity(lead) >= worstAmps);
    if (enough) {
      return Optional.empty();
    }
    double carried = fuseRating().orElse(worstAmps);
    double volts = evidence.conditions().supplyVolts();
    double limit = tables.limit("drop-percent") / 100 * volts;
    for (int number : GAUGES) {
      Lead lead =
          new Lead("each way", new Lead.Awg(number), METRES_EACH_WAY, 1).insulatedFor(BOUGHT);
      double drop = 2 * wire.dropVolts(lead, worstAmps, wire.workingCelsius());
      if (wire.ampacity(lead) >= carried && drop <= limit) {
        return Optional.of(
            Sentence.of(
                "Supply leads of {} or thicker with insulation for 105 °C, 1 m each way: good for"
                    + " {} A continuous, {} V lost at worst.",
                lead.gauge().text(),
                Figures.three(wire.ampacity(lead)),
                Figures.three(drop)));
      }
    }
    return Optional.of(
        Sentence.of(
            "No single lead up to AWG 4/0 carries {} A over 1 m each way within {} %. Run several"
                + " in parallel, or check the ratings.",
            Figures.three(worstAmps), Figures.three(tables.limit("drop-percent"))));
  }

  /**
   * Returns what to buy for the loads that cannot be wired, at their worst-case watts: each kind
   * once, as many as the step takes that needs most of it, for the steps come one after another.
   */
  private List<String> loads() {
    Map<String, StepPlan> worst = new LinkedHashMap<>();
    for (StepPlan step : steps) {
      if (step.unwired().isPresent()) {
        worst.merge(load(step), step, (a, b) -> watts(b) > watts(a) ? b : a);
      }
    }
    Map<LoadResistor, List<StepPlan>> byKind = new LinkedHashMap<>();
    List<String> notFound = new ArrayList<>();
    for (StepPlan step : worst.values()) {
      purchase(step)
          .ifPresentOrElse(
              kind -> byKind.computeIfAbsent(kind.counted(1), k -> new ArrayList<>()).add(step),
              () -> notFound.add(notFound(step)));
    }
    List<String> out = new ArrayList<>();
    byKind.forEach((kind, served) -> out.add(buy(kind, served)));
    out.addAll(notFound);
    return out;
  }

  private static Optional<LoadResistor> purchase(StepPlan step) {
    return step.unwired().flatMap(WiringAnswer.None::purchase);
  }

  private static String buy(LoadResistor kind, List<StepPlan> served) {
    int count =
        served.stream()
            .flatMap(step -> purchase(step).stream())
            .mapToInt(LoadResistor::count)
            .max()
            .orElseThrow();
    String loads = served.stream().map(Needs::what).collect(Collectors.joining("; "));
    return Sentence.of("For {}: buy {}.", loads, resistors(kind.counted(count)));
  }

  private static String notFound(StepPlan step) {
    return Sentence.of(
        "For {}, nothing to buy was found. {}",
        what(step),
        step.unwired().orElseThrow().sentence());
  }

  private static String what(StepPlan step) {
    return watts(step) > 0
        ? Sentence.of("{}, {} W each at worst", load(step), Figures.three(watts(step)))
        : load(step);
  }

  private static String load(StepPlan step) {
    return step.target().mode().load(step.target().ohms());
  }

  private static double watts(StepPlan step) {
    return step.forecast().demand().loadWatts().map(Band::high).orElse(0.0);
  }

  private static String resistors(LoadResistor kind) {
    String ohms = Figures.three(kind.ohms());
    String watts = Figures.three(kind.watts());
    return kind.count() == 1
        ? Sentence.of("1 resistor of {} Ω, {} W", ohms, watts)
        : Sentence.of("{} resistors of {} Ω, {} W", kind.count(), ohms, watts);
  }
}
