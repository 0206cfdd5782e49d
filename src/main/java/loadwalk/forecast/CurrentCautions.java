package loadwalk.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Figures;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.Lead;
import loadwalk.bench.Supply;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;

/** Weighs the supply current of a step against supplies, fuses and leads. */
final class CurrentCautions {
  /** A setting this far above what the sequence asks is taken as a slip that kills amplifiers. */
  private static final double TOO_HIGH = 1.15;

  private static final double TOO_LOW = 0.95;
  private static final double SPREAD = 0.02;

  private final Tables tables;
  private final Wire wire;

  CurrentCautions(Tables tables) {
    this.tables = tables;
    wire = new Wire(tables);
  }

  List<Caution> of(StepQuestion step) {
    List<Caution> found = new ArrayList<>();
    supplyAmps(step).ifPresent(found::add);
    supplySetting(step).ifPresent(found::add);
    fuses(step, found);
    leads(step, found);
    return found;
  }

  private static Optional<Caution> supplyAmps(StepQuestion step) {
    OptionalDouble usable = step.bench().usableAmps();
    Optional<Band> amps = step.amps();
    if (usable.isEmpty()) {
      String text =
          amps.map(a -> "The step draws " + StepQuestion.words(a, "A") + ", and no").orElse("No")
              + " supply is entered to hold that against.";
      return step.driven()
          ? Optional.of(unknown("supply-amps", Verdict.HEED, text))
          : Optional.empty();
    }
    double limit = usable.getAsDouble();
    return amps.flatMap(
        a ->
            weighed(
                "supply-amps",
                a,
                limit,
                StepCautions.NEAR,
                "The step draws "
                    + StepQuestion.words(a, "A")
                    + ", of "
                    + Figures.three(limit)
                    + " A that may be counted on from the supplies."));
  }

  private Optional<Caution> supplySetting(StepQuestion step) {
    List<Supply> supplies = step.bench().supplies();
    double asked = step.evidence().conditions().supplyVolts();
    if (supplies.isEmpty() || !(asked > 0)) {
      return Optional.empty();
    }
    double highest = supplies.stream().mapToDouble(Supply::volts).max().orElseThrow();
    double lowest = supplies.stream().mapToDouble(Supply::volts).min().orElseThrow();
    double drop = step.amps().map(Band::middle).orElse(0.0) * leadOhms(step);
    if (highest > TOO_HIGH * asked) {
      String text =
          "A supply is set to " + volts(highest) + ", the sequence asks " + volts(asked) + ".";
      return caution("supply-volts", Verdict.HALT, text, highest / asked);
    }
    if (highest - lowest > SPREAD * highest) {
      String text =
          "Paralleled supplies are set to "
              + volts(lowest)
              + " and "
              + volts(highest)
              + ": the higher carries the load alone until it limits.";
      return caution("supply-volts", Verdict.HEED, text, highest / lowest);
    }
    if (highest - drop < TOO_LOW * asked) {
      String text =
          "With "
              + volts(highest)
              + " set and "
              + volts(drop)
              + " lost in the leads the terminals get about "
              + volts(highest - drop)
              + " of "
              + volts(asked)
              + " asked.";
      return caution("supply-volts", Verdict.HEED, text, asked / Math.max(1e-3, highest - drop));
    }
    return Optional.empty();
  }

  private void fuses(StepQuestion step, List<Caution> found) {
    OptionalDouble own = step.amplifier().fuseAmps();
    OptionalDouble source = step.bench().fuseAmps();
    if (own.isEmpty() && source.isEmpty() && step.driven()) {
      found.add(
          unknown(
              "bench-fuse",
              Verdict.HEED,
              "No fuse is entered, neither the amplifier's nor one at the source: nothing known"
                  + " stops a short."));
      return;
    }
    if (own.isPresent()) {
      double single = step.amplifier().fuses().get(0);
      String name = "The amplifier's fuses, " + Figures.three(own.getAsDouble()) + " A together";
      fuse(step, "amplifier-fuse", name, own.getAsDouble(), single).ifPresent(found::add);
    } else if (step.heavy()) {
      String text = "The amplifier's own fuses are not entered; they may be the first to open.";
      found.add(unknown("amplifier-fuse", Verdict.HEED, text));
    }
    if (source.isPresent()) {
      double rating = source.getAsDouble();
      String name = "The bench fuse of " + Figures.three(rating) + " A";
      fuse(step, "bench-fuse", name, rating, rating).ifPresent(found::add);
    } else if (step.heavy()) {
      String text = "No fuse at the source is entered: a short in the leads would find none.";
      found.add(unknown("bench-fuse", Verdict.HEED, text));
    }
  }

  private Optional<Caution> fuse(
      StepQuestion step, String code, String name, double rating, double singleRating) {
    double near = tables.limit("fuse-continuous-percent") / 100;
    FuseCurve curve = tables.fuseFor(singleRating);
    return step.amps()
        .flatMap(
            a -> {
              FuseCurve.Opening worst = curve.opening(Math.max(0, a.high() / rating));
              String opens =
                  worst.span() == FuseCurve.Span.BELOW_TABLE
                      ? "meant for "
                          + Figures.three(near * rating)
                          + " A in continuous use, it need not open"
                      : "at worst it opens " + timeWords(worst);
              String text = name + ": " + StepQuestion.words(a, "A") + "; " + opens + ".";
              return weighed(code, a, rating, near, text);
            });
  }

  private static String timeWords(FuseCurve.Opening opening) {
    return opening.maxSeconds().isEmpty() || opening.span() == FuseCurve.Span.ABOVE_TABLE
        ? opening.text()
        : "in " + opening.text();
  }

  private void leads(StepQuestion step, List<Caution> found) {
    if (step.bench().leads().isEmpty()) {
      if (step.driven()) {
        String text = "No supply leads are entered: their drop and heat are not checked.";
        found.add(unknown("lead-drop", step.unknownGravity(), text));
      }
      return;
    }
    step.amps()
        .ifPresent(
            amps -> {
              drop(step, amps).ifPresent(found::add);
              for (Lead lead : step.bench().leads()) {
                carries(lead, amps).ifPresent(found::add);
              }
            });
  }

  private Optional<Caution> drop(StepQuestion step, Band amps) {
    double ohms = leadOhms(step);
    double asked = step.evidence().conditions().supplyVolts();
    double worst = amps.high() * ohms;
    double limit = tables.limit("drop-percent") / 100 * asked;
    if (!(worst > limit)) {
      return Optional.empty();
    }
    Band drop = new Band(amps.low() * ohms, amps.middle() * ohms, worst);
    String text =
        "The leads lose "
            + StepQuestion.words(drop, "V")
            + " of "
            + volts(asked)
            + ", and turn up to "
            + Figures.three(amps.high() * worst)
            + " W into heat.";
    return caution("lead-drop", Verdict.HEED, text, worst / limit);
  }

  private Optional<Caution> carries(Lead lead, Band amps) {
    double limit = wire.ampacity(lead);
    if (!(amps.high() > StepCautions.NEAR * limit)) {
      return Optional.empty();
    }
    String size = lead.parallel() == 1 ? "" : lead.parallel() + " × ";
    String text =
        "The run \""
            + lead.label()
            + "\" ("
            + size
            + lead.gauge().text()
            + ") may carry "
            + Figures.three(limit)
            + " A for ever and sees "
            + StepQuestion.words(amps, "A")
            + ".";
    Verdict gravity = amps.middle() > limit ? Verdict.HALT : Verdict.HEED;
    return caution("lead-amps", gravity, text, amps.high() / limit);
  }

  private double leadOhms(StepQuestion step) {
    return wire.ohms(step.bench().leads(), wire.workingCelsius());
  }

  private static Optional<Caution> weighed(
      String code, Band demand, double limit, double near, String text) {
    if (!(demand.high() > near * limit)) {
      return Optional.empty();
    }
    Verdict gravity = demand.high() > limit ? Verdict.HALT : Verdict.HEED;
    return caution(code, gravity, text, demand.high() / limit);
  }

  private static Optional<Caution> caution(
      String code, Verdict gravity, String text, double severity) {
    return Optional.of(new Caution(code, gravity, text, severity));
  }

  private static Caution unknown(String code, Verdict gravity, String text) {
    return new Caution(code, gravity, text, Double.POSITIVE_INFINITY);
  }

  private static String volts(double volts) {
    return Figures.three(volts) + " V";
  }
}
