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
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.LoadBank;
import loadwalk.forecast.Verdict;
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
  private final Tables tables;

  LoadCautions(Tables tables, LoadBank bank) {
    this.bank = bank;
    this.tables = tables;
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
    return least.isEmpty() && step.heavy()
        ? Optional.of(
            Caution.once(
                "minimum-load",
                "",
                Verdict.HEED,
                unknownLeast(mode, ohms),
                heaviness(mode.channelOhms(ohms))))
        : Optional.empty();
  }

  /** Returns a number that grows as the load of a channel gets heavier. */
  private static double heaviness(double channelOhms) {
    return channelOhms > 0 ? 1 / channelOhms : 1;
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

  private static String unknownLeast(Mode mode, double ohms) {
    String channel = Figures.three(mode.channelOhms(ohms));
    return mode == Mode.BRIDGED
        ? Sentence.of(
            "A heavy load: {} Ω bridged, so each channel drives {} Ω. The amplifier's least load"
                + " is not known: look it up.",
            Figures.three(ohms),
            channel)
        : Sentence.of(
            "A heavy load: each channel drives {} Ω. The amplifier's least load is not known:"
                + " look it up.",
            channel);
  }

  private Optional<Caution> resistors(StepQuestion step) {
    if (step.bench().loads().isEmpty() || step.loadWatts().isEmpty()) {
      return Optional.empty();
    }
    Optional<LoadStress> hottest = stress(step);
    return hottest.isPresent() ? hot(step, hottest.get()) : Optional.of(unwired(step));
  }

  private static Caution unwired(StepQuestion step) {
    String ohms = Figures.three(step.target().ohms());
    String text =
        Sentence.of(
            step.target().mode() == Mode.STEREO
                ? "No wiring of the resistors entered makes two loads of {} Ω. What you connect is"
                    + " not checked."
                : "No wiring of the resistors entered makes {} Ω. What you connect is not"
                    + " checked.",
            ohms);
    return Caution.once("load-watts", ohms, step.unknownGravity(), text, 1);
  }

  /** Returns the hottest resistor as a stress, if the resistors and the watts are known. */
  Optional<LoadStress> stress(StepQuestion step) {
    Target target = step.target();
    Hold hold = Hold.of(target.kind(), tables);
    Optional<Band> loadWatts = step.driven() ? step.loadWatts() : Optional.empty();
    return loadWatts
        .filter(watts -> watts.high() > 0)
        .flatMap(
            watts ->
                bank.hottest(step.bench(), target.mode(), target.ohms(), watts.high(), hold)
                    .map(worst -> LoadStress.of(worst, watts, target.ohms())));
  }

  private Optional<Caution> hot(StepQuestion step, LoadStress hottest) {
    Stress stress = hottest.stress();
    Verdict verdict = stress.verdict(true);
    if (verdict == Verdict.CLEAR) {
      return Optional.empty();
    }
    String takes =
        Sentence.of(
            "The {}, rated {} W, takes {}; it bears {} W {}.",
            stress.what(),
            Figures.three(hottest.ratedWatts()),
            StepQuestion.words(stress.demand(), "W"),
            Figures.three(stress.bears().most()),
            Hold.of(step.target().kind(), tables).isContinuous()
                ? "for a warm-up"
                : "for one reading from cold");
    String text =
        verdict == Verdict.HALT
            ? Sentence.of("{} Use bigger resistors or less output.", takes)
            : Sentence.of("{} Stop at {} V.", takes, Figures.three(hottest.stopVolts()));
    return Optional.of(
        Caution.giving(stress.code(), "", verdict, text, stress.demand().middle(), stress.share()));
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
