package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.LoadBank;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.Unit;

/** Weighs a step's load against the amplifier's least load and the resistors it is made of. */
final class LoadCautions {
  /** Room for rounding in a file: 0.67 Ω for 2/3 Ω is no load below the minimum. */
  private static final double ROUNDING = 0.99;

  /** Room for the last bits of the subtraction: 4.2 Ω is within 5 % of 4 Ω. */
  private static final double FLOATING = 1e-9;

  /** The part by which a resistor may differ from the load asked for and be of that value. */
  private static final double SAME_NOMINAL = 0.01;

  private final LoadBank bank;
  private final ResistorDerating derating;

  LoadCautions(Tables tables, LoadBank bank) {
    this.bank = bank;
    derating = new ResistorDerating(tables);
  }

  List<Caution> of(StepQuestion step) {
    List<Caution> found = new ArrayList<>();
    if (step.driven()) {
      leastLoad(step).ifPresent(found::add);
      resistors(step).ifPresent(found::add);
    }
    return found;
  }

  private static Optional<Caution> leastLoad(StepQuestion step) {
    Mode mode = step.target().mode();
    double ohms = step.target().ohms();
    OptionalDouble least = step.amplifier().minimumOhms(mode);
    String sees =
        "each channel sees "
            + Figures.three(mode.channelOhms(ohms))
            + " Ω of the "
            + Figures.three(ohms)
            + " Ω "
            + (mode == Mode.BRIDGED ? "bridged" : "load");
    if (least.isPresent() && !(ohms >= ROUNDING * least.getAsDouble())) {
      String text =
          "Below the amplifier's least "
              + mode.word()
              + " load of "
              + Figures.three(least.getAsDouble())
              + " Ω: "
              + sees
              + ".";
      return caution("minimum-load", Verdict.HALT, text, least.getAsDouble() / ohms);
    }
    if (!step.heavy()) {
      return Optional.empty();
    }
    String allows =
        least.isPresent()
            ? "the amplifier allows " + Figures.three(least.getAsDouble()) + " Ω " + mode.word()
            : "the amplifier's least load is not known";
    double severity = least.isPresent() ? least.getAsDouble() / ohms : Double.POSITIVE_INFINITY;
    return caution(
        "minimum-load", Verdict.HEED, "A heavy load: " + sees + "; " + allows + ".", severity);
  }

  private Optional<Caution> resistors(StepQuestion step) {
    Optional<Band> watts = step.loadWatts();
    if (step.bench().loads().isEmpty()) {
      String text = "No load resistors are entered: their heat is not checked.";
      return caution("load-watts", step.unknownGravity(), text, Double.POSITIVE_INFINITY);
    }
    if (watts.isEmpty()) {
      return Optional.empty();
    }
    Mode mode = step.target().mode();
    double ohms = step.target().ohms();
    Optional<Stress> worst = stress(step);
    if (worst.isEmpty()) {
      String made = Figures.three(ohms) + (mode == Mode.STEREO ? " Ω twice" : " Ω");
      String text =
          "No wiring of the resistors entered makes "
              + made
              + " within their ratings; what is connected is not checked.";
      return caution("load-watts", step.unknownGravity(), text, Double.POSITIVE_INFINITY);
    }
    return hot(step, worst.get());
  }

  /** Returns what the load stresses most, where the resistors and the watts are known. */
  Optional<Stress> stress(StepQuestion step) {
    Mode mode = step.target().mode();
    double ohms = step.target().ohms();
    Optional<Band> loadWatts = step.driven() ? step.loadWatts() : Optional.empty();
    return loadWatts.flatMap(
        watts ->
            bank.hottest(step.bench(), mode, ohms, watts.high())
                .map(
                    worst -> {
                      double perWatt = watts.high() > 0 ? worst.watts() / watts.high() : 0;
                      Band part =
                          new Band(
                              perWatt * watts.low(),
                              perWatt * watts.middle(),
                              perWatt * watts.high());
                      String what = "load resistor \"" + worst.label() + "\"";
                      return new Stress("load-watts", what, part, worst.ratedWatts(), Unit.WATT);
                    }));
  }

  private Optional<Caution> hot(StepQuestion step, Stress stress) {
    if (!(stress.share() > derating.continuousShare())) {
      return Optional.empty();
    }
    Band watts = stress.demand();
    boolean warmUp = step.target().kind() == Target.Kind.WARM_UP;
    double most = warmUp ? 1 : derating.largestMultiple();
    double burst = derating.burstSeconds(watts.high(), stress.limit());
    String ends =
        burst > 0
            ? "at worst a burst of " + Figures.three(burst) + " s from cold (an estimate)"
            : "at worst beyond any burst known for such resistors";
    String name =
        stress.what().substring(0, 1).toUpperCase(Locale.ROOT) + stress.what().substring(1);
    String text =
        name
            + " rated "
            + Figures.three(stress.limit())
            + " W takes "
            + StepQuestion.words(watts, "W")
            + "; "
            + (warmUp ? "a warm-up is no burst" : ends)
            + ".";
    boolean over = watts.middle() > most * stress.limit();
    return caution(stress.code(), over ? Verdict.HALT : Verdict.HEED, text, stress.share());
  }

  Optional<Caution> mismatch(Bench bench, Target target, double coldOhms) {
    double wanted = target.ohms();
    if (!(wanted > 0)) {
      return Optional.empty();
    }
    double tolerance =
        bench.loads().stream()
            .filter(r -> Math.abs(r.ohms() - wanted) <= SAME_NOMINAL * wanted)
            .mapToDouble(LoadResistor::tolerancePercent)
            .max()
            .orElse(0);
    double percent = Math.max(StepCautions.DEFAULT_LOAD_TOLERANCE_PERCENT, tolerance);
    double meter =
        bench.meterFor(ReadingId.LOAD_OHMS).map((Meter m) -> m.halfWidth(coldOhms)).orElse(0.0);
    double allowed = wanted * percent / 100 + meter;
    double off = Math.abs(coldOhms - wanted);
    if (off <= allowed * (1 + FLOATING)) {
      return Optional.empty();
    }
    String text =
        "The load measured cold is "
            + Figures.three(coldOhms)
            + " Ω, the step asks "
            + Figures.three(wanted)
            + " Ω: off by "
            + Figures.three(100 * (coldOhms - wanted) / wanted)
            + " % where "
            + Figures.three(100 * allowed / wanted)
            + " % is allowed.";
    double severity = off / allowed;
    return caution(
        "load-mismatch",
        Verdict.HALT,
        text,
        Double.isNaN(severity) ? Double.POSITIVE_INFINITY : severity);
  }

  private static Optional<Caution> caution(
      String code, Verdict gravity, String text, double severity) {
    double told = Double.isNaN(severity) ? Double.POSITIVE_INFINITY : severity;
    return Optional.of(new Caution(code, gravity, text, told));
  }
}
