package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.Lead;
import loadwalk.bench.Supply;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** Checks the supply current of a step against supplies, fuses and leads. */
final class CurrentCautions {
  /**
   * Ratio of set supply volts to those of the sequence from which the setting counts as a slip that
   * kills amplifiers. Common practice, no source.
   */
  private static final double TOO_HIGH = 1.15;

  private static final String AMPLIFIER_FUSE = "amplifier-fuse";
  private static final String BENCH_FUSE = "bench-fuse";

  /**
   * Ratio of volts at the amplifier to those of the sequence below which its rating does not apply.
   * Common practice, no source.
   */
  private static final double TOO_LOW = 0.95;

  /**
   * Largest difference between the settings of paralleled supplies, a fraction. Common practice, no
   * source.
   */
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
          amps.map(
                  a ->
                      Sentence.of(
                          "The step draws {}. No supply is entered: check its rating yourself.",
                          StepQuestion.words(a, "A")))
              .orElse("No supply is entered: check its rating yourself.");
      return step.driven()
          ? Optional.of(unknown("supply-amps", Verdict.HEED, text))
          : Optional.empty();
    }
    return supplyStress(step)
        .filter(stress -> stress.share() > StepCautions.NEAR)
        .map(
            stress ->
                new Caution(
                    stress.code(),
                    stress.share() > 1 ? Verdict.HALT : Verdict.HEED,
                    Sentence.of(
                        stress.share() > 1
                            ? "The step draws {}. Only {} A can be counted on from the supplies:"
                                + " use a bigger supply or a lighter load."
                            : "The step draws {}. {} A can be counted on from the supplies: raise"
                                + " the output slowly and watch the supply.",
                        StepQuestion.words(stress.demand(), "A"),
                        Figures.three(stress.limit())),
                    stress.share()));
  }

  /** Returns each part that the current stresses and whose limit is known. */
  List<Stress> stresses(StepQuestion step) {
    List<Stress> found = new ArrayList<>();
    supplyStress(step).ifPresent(found::add);
    fuseStress(step, AMPLIFIER_FUSE).ifPresent(found::add);
    fuseStress(step, BENCH_FUSE).ifPresent(found::add);
    step.amps()
        .ifPresent(amps -> step.bench().leads().forEach(lead -> found.add(leadStress(lead, amps))));
    return found;
  }

  private static Optional<Stress> supplyStress(StepQuestion step) {
    OptionalDouble usable = step.bench().usableAmps();
    return usable.isEmpty()
        ? Optional.empty()
        : step.amps()
            .map(a -> new Stress("supply-amps", "supplies", a, usable.getAsDouble(), Unit.AMPERE));
  }

  private static Optional<Stress> fuseStress(StepQuestion step, String code) {
    boolean own = code.equals(AMPLIFIER_FUSE);
    OptionalDouble rating = own ? step.amplifier().fuseAmps() : step.bench().fuseAmps();
    String what = own ? "amplifier's fuses" : "bench fuse";
    return rating.isEmpty()
        ? Optional.empty()
        : step.amps().map(a -> new Stress(code, what, a, rating.getAsDouble(), Unit.AMPERE));
  }

  private Stress leadStress(Lead lead, Band amps) {
    String what = Sentence.of("lead \"{}\"", lead.label());
    return new Stress("lead-amps", what, amps, wire.ampacity(lead), Unit.AMPERE);
  }

  private Optional<Caution> supplySetting(StepQuestion step) {
    List<Supply> supplies = step.bench().supplies();
    double asked = step.evidence().conditions().supplyVolts();
    if (supplies.isEmpty() || !(asked > 0)) {
      return Optional.empty();
    }
    double highest = supplies.stream().mapToDouble(Supply::volts).max().orElseThrow();
    double lowest = supplies.stream().mapToDouble(Supply::volts).min().orElseThrow();
    double drop =
        step.amps().flatMap(a -> leadVolts(step.bench(), a)).map(Band::middle).orElse(0.0);
    if (highest > TOO_HIGH * asked) {
      String text =
          Sentence.of(
              "A supply is set to {}; the sequence asks for {}. Turn it down first.",
              volts(highest),
              volts(asked));
      return caution("supply-volts", Verdict.HALT, text, highest / asked);
    }
    if (highest - lowest > SPREAD * highest) {
      String text =
          Sentence.of(
              "Paralleled supplies are set to {} and {}: the higher one carries the load alone"
                  + " until it limits. Set them alike.",
              volts(lowest),
              volts(highest));
      return caution("supply-volts", Verdict.HEED, text, highest / lowest);
    }
    if (highest - drop < TOO_LOW * asked) {
      String text =
          Sentence.of(
              "The supply is set to {} and the leads lose {}: the terminals get about {}, not {}."
                  + " Correct the setting or use heavier leads.",
              volts(highest),
              volts(drop),
              volts(highest - drop),
              volts(asked));
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
              BENCH_FUSE,
              Verdict.HEED,
              "No fuse is entered, neither the amplifier's nor one at the source. Nothing known"
                  + " stops a short: fit a fuse at the source."));
      return;
    }
    if (own.isPresent()) {
      double single = step.amplifier().fuses().get(0);
      fuse(step, AMPLIFIER_FUSE, single).ifPresent(found::add);
    } else if (step.heavy()) {
      String text =
          "The amplifier's own fuses are not entered and may blow first: look up their rating.";
      found.add(unknown(AMPLIFIER_FUSE, Verdict.HEED, text));
    }
    if (source.isPresent()) {
      double rating = source.getAsDouble();
      fuse(step, BENCH_FUSE, rating).ifPresent(found::add);
    } else if (step.heavy()) {
      String text =
          "No fuse at the source is entered: nothing stops a short in the leads. Fit one.";
      found.add(unknown(BENCH_FUSE, Verdict.HEED, text));
    }
  }

  private Optional<Caution> fuse(StepQuestion step, String code, double singleRating) {
    double near = tables.limit("fuse-continuous-percent") / 100;
    FuseCurve curve = tables.fuseFor(singleRating);
    return fuseStress(step, code)
        .filter(stress -> stress.share() > near)
        .flatMap(
            stress -> {
              FuseCurve.Opening worst = curve.opening(Math.max(0, stress.share()));
              boolean opensEarly =
                  worst.minSeconds() < tables.limit("reading-seconds")
                      || step.target().kind() == Target.Kind.WARM_UP;
              Verdict gravity = stress.share() > 1 && opensEarly ? Verdict.HALT : Verdict.HEED;
              String text =
                  worst.span() == FuseCurve.Span.BELOW_TABLE
                      ? holds(stress, near * stress.limit())
                      : blows(stress, worst, gravity);
              return caution(code, gravity, text, stress.share());
            });
  }

  /** Words the caution for a fuse that carries the current without blowing. */
  private static String holds(Stress fuse, double continuousAmps) {
    return Sentence.of(
        fuse.code().equals(AMPLIFIER_FUSE)
            ? "The amplifier's fuses ({} A together) carry {}. They are good for {} A continuous"
                + " and may not blow in time to protect anything."
            : "The bench fuse of {} A carries {}. It is good for {} A continuous and may not blow"
                + " in time to protect anything.",
        Figures.three(fuse.limit()),
        StepQuestion.words(fuse.demand(), "A"),
        Figures.three(continuousAmps));
  }

  /** Words the caution for a fuse that blows at this current sooner or later. */
  private static String blows(Stress fuse, FuseCurve.Opening worst, Verdict gravity) {
    boolean own = fuse.code().equals(AMPLIFIER_FUSE);
    String limit = Figures.three(fuse.limit());
    String asked = StepQuestion.words(fuse.demand(), "A");
    return gravity == Verdict.HALT
        ? Sentence.of(
            own
                ? "The amplifier's fuses ({} A together) carry {}. Time to blow at worst: {}. Use a"
                    + " lighter load or less output."
                : "The bench fuse of {} A carries {}. Time to blow at worst: {}. Use a lighter load"
                    + " or less output.",
            limit,
            asked,
            worst.text())
        : Sentence.of(
            own
                ? "The amplifier's fuses ({} A together) carry {}. Time to blow at worst: {}. Keep"
                    + " the reading short."
                : "The bench fuse of {} A carries {}. Time to blow at worst: {}. Keep the reading"
                    + " short.",
            limit,
            asked,
            worst.text());
  }

  private void leads(StepQuestion step, List<Caution> found) {
    if (step.bench().leads().isEmpty()) {
      if (step.driven()) {
        String text = "No supply leads are entered: their voltage drop and heat are not checked.";
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
    if (step.driven()) {
      unprotected(step).ifPresent(found::add);
    }
  }

  /** Returns the caution for the thinnest run that the bench fuse does not protect. */
  private Optional<Caution> unprotected(StepQuestion step) {
    double fuse = step.bench().fuseAmps().orElse(0);
    double most = tables.limit("fuse-over-ampacity-percent") / 100;
    return step.bench().leads().stream()
        .min(Comparator.comparingDouble(wire::ampacity))
        .filter(lead -> fuse > most * wire.ampacity(lead))
        .flatMap(
            lead -> {
              double bears = wire.ampacity(lead);
              String text =
                  Sentence.of(
                      "The bench fuse of {} A does not protect the run \"{}\", good for {} A: in a"
                          + " short the lead burns first. Fit a smaller fuse or a heavier lead.",
                      Figures.three(fuse),
                      lead.label(),
                      Figures.three(bears));
              return caution(BENCH_FUSE, Verdict.HEED, text, fuse / (most * bears));
            });
  }

  private Optional<Caution> drop(StepQuestion step, Band amps) {
    Band drop = leadVolts(step.bench(), amps).orElseThrow();
    double asked = step.evidence().conditions().supplyVolts();
    double worst = drop.high();
    double limit = tables.limit("drop-percent") / 100 * asked;
    if (!(worst > limit)) {
      return Optional.empty();
    }
    String text =
        Sentence.of(
            "Of {}, the leads lose {}; up to {} W turn into heat. Use shorter or heavier leads.",
            volts(asked),
            StepQuestion.words(drop, "V"),
            Figures.three(amps.high() * worst));
    return caution("lead-drop", Verdict.HEED, text, worst / limit);
  }

  private Optional<Caution> carries(Lead lead, Band amps) {
    Stress stress = leadStress(lead, amps);
    if (!(stress.share() > StepCautions.NEAR)) {
      return Optional.empty();
    }
    String gauge = lead.gauge().text();
    String text =
        Sentence.of(
            "The run \"{}\" ({}) is good for {} A continuous and carries {}. Use a heavier lead.",
            lead.label(),
            lead.parallel() == 1 ? gauge : Sentence.of("{} × {}", lead.parallel(), gauge),
            Figures.three(stress.limit()),
            StepQuestion.words(amps, "A"));
    Verdict gravity = amps.middle() > stress.limit() ? Verdict.HALT : Verdict.HEED;
    return caution(stress.code(), gravity, text, stress.share());
  }

  /** Returns the volts lost in all lead runs at a current; empty if no leads are entered. */
  Optional<Band> leadVolts(Bench bench, Band amps) {
    return wire.ohms(bench).stream()
        .mapToObj(r -> new Band(amps.low() * r, amps.middle() * r, amps.high() * r))
        .findFirst();
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
