package loadwalk.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;

/** Says what a bench lacks for a whole sequence: supply, fuse, leads, load resistors. */
final class Needs {
  /** Ratings commonly made (common practice, no source), amperes. */
  private static final double[] FUSES = {
    5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350,
    400, 500
  };

  /** Sizes commonly sold (common practice, no source), thinnest first. */
  private static final int[] GAUGES = {18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3};

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

  private Optional<String> fuse() {
    if (bench.fuseAmps().isPresent() && bench.fuseAmps().getAsDouble() >= worstAmps) {
      return Optional.empty();
    }
    for (double rating : FUSES) {
      if (rating >= worstAmps) {
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
    }
    return Optional.of(
        "No single fuse commonly made bears "
            + Figures.three(worstAmps)
            + " A: check the ratings.");
  }

  private Optional<String> leads() {
    boolean enough =
        !bench.leads().isEmpty()
            && bench.leads().stream().allMatch(lead -> wire.ampacity(lead) >= worstAmps);
    if (enough) {
      return Optional.empty();
    }
    double volts = evidence.conditions().supplyVolts();
    double limit = tables.limit("drop-percent") / 100 * volts;
    for (int number : GAUGES) {
      Lead lead = new Lead("each way", new Lead.Awg(number), METRES_EACH_WAY, 1);
      double drop = 2 * wire.dropVolts(lead, worstAmps, wire.workingCelsius());
      if (wire.ampacity(lead) >= worstAmps && drop <= limit) {
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

  private Set<String> loads() {
    Set<String> out = new LinkedHashSet<>();
    for (StepPlan step : steps) {
      Optional<WiringAnswer> wiring = step.wiring();
      if (wiring.isPresent() && wiring.get() instanceof WiringAnswer.None none) {
        String watts =
            step.forecast()
                .demand()
                .loadWatts()
                .map(w -> ", " + Figures.three(w.high()) + " W each at worst")
                .orElse("");
        out.add(
            "For "
                + step.target().mode().word()
                + " "
                + Figures.three(step.target().ohms())
                + " Ω"
                + watts
                + ": "
                + none.purchase().map(Needs::bought).orElse("no purchase of one kind was found")
                + ".");
      }
    }
    return out;
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
