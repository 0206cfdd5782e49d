package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Figures;
import loadwalk.bench.Hold;
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
import loadwalk.text.Sentence;

/** Checks a step's load against the amplifier's minimum load and the resistors it is made of. */
final class LoadCautions {
  /** Allowance for rounding in a file: 0.67 Ω for 2/3 Ω is not below the minimum. */
  private static final double ROUNDING = 0.99;

  /** Allowance for floating-point error in a subtraction: 4.2 Ω is within 5 % of 4 Ω. */
  private static final double FLOATING = 1e-9;

  /**
   * Largest difference between a resistor and the requested load that still counts as the same
   * value, a fraction.
   */
  private static final double SAME_NOMINAL = 0.01;

  private final LoadBank bank;
  private final ResistorDerating derating;
  private final Tables tables;

  LoadCautions(Tables tables, LoadBank bank) {
    this.bank = bank;
    this.tables = tables;
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
    if (least.isPresent() && !(ohms >= ROUNDING * least.getAsDouble())) {
      String text = tooHeavy(mode, ohms, Figures.three(least.getAsDouble()));
      return caution("minimum-load", Verdict.HALT, text, least.getAsDouble() / ohms);
    }
    if (!step.heavy()) {
      return Optional.empty();
    }
    double severity = least.isPresent() ? least.getAsDouble() / ohms : Double.POSITIVE_INFINITY;
    return caution("minimum-load", Verdict.HEED, heavy(mode, ohms, least), severity);
  }

  private static String tooHeavy(Mode mode, double ohms, String least) {
    return mode == Mode.BRIDGED
        ? Sentence.of(
            "{} Ω is below the amplifier's least bridged load of {} Ω: each channel drives {} Ω."
                + " Connect {} Ω or more.",
            Figures.three(ohms),
            least,
            Figures.three(mode.channelOhms(ohms)),
            least)
        : Sentence.of(
            "{} Ω is below the amplifier's least {} load of {} Ω. Connect {} Ω or more.",
            Figures.three(ohms),
            mode.word(),
            least,
            least);
  }

  private static String heavy(Mode mode, double ohms, OptionalDouble least) {
    String load = Figures.three(ohms);
    String channel = Figures.three(mode.channelOhms(ohms));
    if (least.isEmpty()) {
      return mode == Mode.BRIDGED
          ? Sentence.of(
              "A heavy load: {} Ω bridged, so each channel drives {} Ω. The amplifier's least load"
                  + " is not known: look it up.",
              load,
              channel)
          : Sentence.of(
              "A heavy load: each channel drives {} Ω. The amplifier's least load is not known:"
                  + " look it up.",
              channel);
    }
    String allowed = Figures.three(least.getAsDouble());
    return mode == Mode.BRIDGED
        ? Sentence.of(
            "A heavy load: {} Ω bridged, so each channel drives {} Ω. The amplifier allows {} Ω"
                + " bridged.",
            load,
            channel,
            allowed)
        : Sentence.of(
            "A heavy load: each channel drives {} Ω. The amplifier allows {} Ω {}.",
            channel,
            allowed,
            mode.word());
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
      String text =
          Sentence.of(
              mode == Mode.STEREO
                  ? "No wiring of the resistors entered makes two loads of {} Ω within their"
                      + " ratings. What you connect is not checked."
                  : "No wiring of the resistors entered makes {} Ω within their ratings. What you"
                      + " connect is not checked.",
              Figures.three(ohms));
      return caution("load-watts", step.unknownGravity(), text, Double.POSITIVE_INFINITY);
    }
    return hot(step, worst.get());
  }

  /** Returns the hottest resistor as a stress, if the resistors and the watts are known. */
  Optional<Stress> stress(StepQuestion step) {
    Mode mode = step.target().mode();
    double ohms = step.target().ohms();
    Optional<Band> loadWatts = step.driven() ? step.loadWatts() : Optional.empty();
    return loadWatts.flatMap(
        watts ->
            bank.hottest(
                    step.bench(), mode, ohms, watts.high(), Hold.of(step.target().kind(), tables))
                .map(
                    worst -> {
                      double perWatt = watts.high() > 0 ? worst.watts() / watts.high() : 0;
                      Band part =
                          new Band(
                              perWatt * watts.low(),
                              perWatt * watts.middle(),
                              perWatt * watts.high());
                      String what = Sentence.of("load resistor \"{}\"", worst.label());
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
    boolean over = watts.middle() > most * stress.limit();
    String text = warmUp ? warms(stress) : bursts(stress);
    return caution(stress.code(), over ? Verdict.HALT : Verdict.HEED, text, stress.share());
  }

  private static String warms(Stress resistor) {
    return Sentence.of(
        "The {}, rated {} W, takes {} all through the warm-up. Use bigger resistors or less"
            + " output.",
        resistor.what(),
        Figures.three(resistor.limit()),
        StepQuestion.words(resistor.demand(), "W"));
  }

  private String bursts(Stress resistor) {
    double seconds = derating.burstSeconds(resistor.demand().high(), resistor.limit());
    String rated = Figures.three(resistor.limit());
    String takes = StepQuestion.words(resistor.demand(), "W");
    return seconds > 0
        ? Sentence.of(
            "The {}, rated {} W, takes {}. At worst that is a burst of {} s from cold (an"
                + " estimate): read quickly, then let it cool.",
            resistor.what(),
            rated,
            takes,
            Figures.three(seconds))
        : Sentence.of(
            "The {}, rated {} W, takes {}. At worst that is beyond any burst known for such"
                + " resistors: use bigger ones.",
            resistor.what(),
            rated,
            takes);
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
        Sentence.of(
            coldOhms < wanted
                ? "The load measures {} Ω cold; the step asks for {} Ω. It is {} % low, {} % is"
                    + " allowed: check the wiring."
                : "The load measures {} Ω cold; the step asks for {} Ω. It is {} % high, {} % is"
                    + " allowed: check the wiring.",
            Figures.three(coldOhms),
            Figures.three(wanted),
            Figures.three(100 * off / wanted),
            Figures.three(100 * allowed / wanted));
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
