package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.Source;
import loadwalk.bench.Supply;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;
import loadwalk.text.Sentence;

/** Checks how the supplies are set, what the leads lose, and whether the fuse protects them. */
final class SupplyCautions {
  /**
   * Ratio of set supply volts to those of the sequence from which the setting counts as a slip that
   * kills amplifiers. Common practice, no source.
   */
  private static final double TOO_HIGH = 1.15;

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

  /**
   * Part of the volts lost in the leads from which a bench counts as unable to feed a step; at one
   * half no more power goes through (maximum power transfer). Chosen by hand.
   */
  private static final double CANNOT_FEED = 0.3;

  private static final String SETTING = "supply-volts";

  private final Tables tables;
  private final Wire wire;

  SupplyCautions(Tables tables, Wire wire) {
    this.tables = tables;
    this.wire = wire;
  }

  List<Caution> of(StepQuestion step) {
    List<Caution> found = new ArrayList<>();
    setting(step).ifPresent(found::add);
    step.amps().flatMap(amps -> drop(step, amps)).ifPresent(found::add);
    if (step.driven()) {
      unprotected(step).ifPresent(found::add);
    }
    return found;
  }

  private Optional<Caution> setting(StepQuestion step) {
    List<Supply> supplies = step.bench().supplies();
    double asked = step.evidence().conditions().supplyVolts();
    if (supplies.isEmpty() || !(asked > 0)) {
      return Optional.empty();
    }
    if (step.bench().onBattery()) {
      return battery(step, asked);
    }
    double highest = supplies.stream().mapToDouble(Supply::volts).max().orElseThrow();
    double lowest = supplies.stream().mapToDouble(Supply::volts).min().orElseThrow();
    if (highest > TOO_HIGH * asked) {
      String text =
          Sentence.of(
              "A supply is set to {}; the sequence asks for {}. Turn it down first.",
              volts(highest),
              volts(asked));
      return Optional.of(Caution.giving(SETTING, "", Verdict.HALT, text, highest, highest / asked));
    }
    if (highest - lowest > SPREAD * highest) {
      String text =
          Sentence.of(
              "Paralleled supplies are set to {} and {}: the higher one carries the load alone"
                  + " until it limits. Set them alike.",
              volts(lowest),
              volts(highest));
      return Optional.of(Caution.once(SETTING, "", Verdict.HEED, text, highest / lowest));
    }
    double drop =
        step.amps().flatMap(a -> leadVolts(step.bench(), a)).map(Band::middle).orElse(0.0);
    boolean fed = drop <= CANNOT_FEED * asked;
    return fed && highest - drop < TOO_LOW * asked
        ? Optional.of(tooLow(highest, drop, asked))
        : Optional.empty();
  }

  /** Returns the note that a battery does not hold the volts that the sequence asks for. */
  private Optional<Caution> battery(StepQuestion step, double asked) {
    Source source = step.bench().source().orElseThrow();
    double leadOhms = wire.ohms(step.bench()).orElse(0);
    double left = source.voltsBehind(leadOhms, step.amps().map(Band::middle).orElse(0.0));
    String text =
        Sentence.of(
            "The battery has {} at rest: the terminals get about {}, not {}. Ratings at {} do not"
                + " apply.",
            volts(source.volts()),
            volts(left),
            volts(asked),
            volts(asked));
    return left < TOO_LOW * asked
        ? Optional.of(Caution.once(SETTING, "low", Verdict.CLEAR, text, asked - left))
        : Optional.empty();
  }

  private static Caution tooLow(double set, double drop, double asked) {
    double left = set - drop;
    String text =
        set < TOO_LOW * asked
            ? Sentence.of(
                "The supply is set to {}; the sequence asks for {}. Turn it up, or its ratings do"
                    + " not apply.",
                volts(set),
                volts(asked))
            : Sentence.of(
                "The supply is set to {} and the leads lose {}: the terminals get about {}, not"
                    + " {}. Correct the setting or use heavier leads.",
                volts(set),
                volts(drop),
                volts(left),
                volts(asked));
    return Caution.once(SETTING, "low", Verdict.CLEAR, text, asked - left);
  }

  private Optional<Caution> drop(StepQuestion step, Band amps) {
    double asked = step.evidence().conditions().supplyVolts();
    Optional<Band> lost = leadVolts(step.bench(), amps);
    double likely = lost.map(Band::middle).orElse(0.0);
    if (!(likely > tables.limit("drop-percent") / 100 * asked)) {
      return Optional.empty();
    }
    if (likely > CANNOT_FEED * asked) {
      String text =
          Sentence.of(
              "The bench cannot feed this step: at {} A the leads alone would lose {} of {}. Use"
                  + " shorter or heavier leads.",
              Figures.three(amps.middle()),
              volts(likely),
              volts(asked));
      double share = likely / (CANNOT_FEED * asked);
      return Optional.of(Caution.giving("lead-drop", "", Verdict.HALT, text, likely, share));
    }
    String text =
        Sentence.of(
            "Of {}, the leads lose about {}: about {} W turn into heat. Use shorter or heavier"
                + " leads.",
            volts(asked),
            volts(likely),
            Figures.three(amps.middle() * likely));
    return Optional.of(Caution.once("lead-drop", "", Verdict.CLEAR, text, likely));
  }

  /** Returns the caution for the thinnest run that the bench fuse does not protect. */
  private Optional<Caution> unprotected(StepQuestion step) {
    double fuse = step.bench().fuseAmps().orElse(0);
    double most = tables.limit("fuse-over-ampacity-percent") / 100;
    return step.bench().leads().stream()
        .min(Comparator.comparingDouble(wire::ampacity))
        .filter(lead -> fuse > most * wire.ampacity(lead))
        .map(
            lead -> {
              String text =
                  Sentence.of(
                      "The bench fuse of {} A does not protect the run \"{}\", good for {} A: in a"
                          + " short the lead burns first. Fit a smaller fuse or a heavier lead.",
                      Figures.three(fuse),
                      lead.label(),
                      Figures.three(wire.ampacity(lead)));
              return Caution.once("bench-fuse", lead.label(), Verdict.HEED, text, fuse);
            });
  }

  /** Returns the volts lost in all lead runs at a current; empty if no leads are entered. */
  Optional<Band> leadVolts(Bench bench, Band amps) {
    return wire.ohms(bench).stream()
        .mapToObj(r -> new Band(amps.low() * r, amps.middle() * r, amps.high() * r))
        .findFirst();
  }

  private static String volts(double volts) {
    return Figures.three(volts) + " V";
  }
}
