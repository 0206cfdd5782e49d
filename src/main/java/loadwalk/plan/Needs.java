package loadwalk.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.plan.wiring.WiringAnswer;

/** Says what a bench lacks for a whole sequence: supply, fuse, leads, load resistors. */
final class Needs {
  /** Ratings commonly made (common practice, no source), amperes. */
  private static final double[] FUSES = {
    5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350,
    400, 500
  };

  /** Sizes commonly sold (common practice, no source), thinnest first. */
  private static final int[] GAUGES = {18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3};

  /** The length of a lead where none is described, metres each way. Common practice, no source. */
  private static final double METRES_EACH_WAY = 1;

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
          "Nothing tells the supply current: enter the amplifier's rated powers, or measure a"
              + " light load first.");
    }
    out.addAll(loads());
    return out;
  }

  private Optional<String> supplies() {
    OptionalDouble usable = bench.usableAmps();
    if (usable.isPresent() && usable.getAsDouble() >= worstAmps) {
      return Optional.empty();
    }
    double rated = worstAmps / bench.usableFraction();
    return Optional.of(
        "Supplies of "
            + Figures.three(rated)
            + " A together at "
            + Figures.three(evidence.conditions().supplyVolts())
            + " V, for "
            + Figures.three(worstAmps)
            + " A at worst with "
            + Figures.three(100 * bench.usableFraction())
            + " % of the sum counted on"
            + usable.stream()
                .mapToObj(has -> "; the bench has " + Figures.three(has) + " A to count on")
                .findFirst()
                .orElse("")
            + ".");
  }

  /** Returns the rating of the fuse on the bench if it will do, else of the one to get. */
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
          "No single fuse commonly made bears "
              + Figures.three(worstAmps)
              + " A: check the ratings.");
    }
    double rating = fitting.getAsDouble();
    double continuous = tables.limit("fuse-continuous-percent") / 100 * rating;
    return Optional.of(
        "A fuse at the source of "
            + Figures.three(rating)
            + " A ("
            + tables.fuseFor(rating).type()
            + "), meant for "
            + Figures.three(continuous)
            + " A in continuous use, and leads that carry more than it.");
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
      Lead lead = new Lead("each way", new Lead.Awg(number), METRES_EACH_WAY, 1);
      double drop = 2 * wire.dropVolts(lead, worstAmps, wire.workingCelsius());
      if (wire.ampacity(lead) >= carried && drop <= limit) {
        return Optional.of(
            "Supply leads of "
                + lead.gauge().text()
                + " or thicker for 1 m each way: "
                + Figures.three(wire.ampacity(lead))
                + " A for ever, "
                + Figures.three(drop)
                + " V lost at worst.");
      }
    }
    return Optional.of(
        "No single lead to AWG 4/0 carries "
            + Figures.three(worstAmps)
            + " A over 1 m each way within 3 %: lay several side by side, or check the ratings.");
  }

  /** Tells what to buy for each load that has no wiring, at its worst watts. */
  private List<String> loads() {
    Map<String, StepPlan> worst = new LinkedHashMap<>();
    for (StepPlan step : steps) {
      if (step.unwired().isPresent()) {
        String load = step.target().mode().word() + " " + Figures.three(step.target().ohms());
        worst.merge(load, step, (a, b) -> watts(b) > watts(a) ? b : a);
      }
    }
    List<String> out = new ArrayList<>();
    worst.forEach(
        (load, step) -> {
          WiringAnswer.None none = step.unwired().orElseThrow();
          String each =
              watts(step) > 0 ? ", " + Figures.three(watts(step)) + " W each at worst" : "";
          String buy = none.purchase().map(Needs::bought).orElse(none.sentence());
          out.add("For " + load + " Ω" + each + ": " + buy.replaceFirst("\\.$", "") + ".");
        });
    return out;
  }

  private static double watts(StepPlan step) {
    return step.forecast().demand().loadWatts().map(Band::high).orElse(0.0);
  }

  private static String bought(LoadResistor kind) {
    return "buy "
        + kind.count()
        + (kind.count() == 1 ? " resistor of " : " resistors of ")
        + Figures.three(kind.ohms())
        + " Ω, "
        + Figures.three(kind.watts())
        + " W";
  }
}
