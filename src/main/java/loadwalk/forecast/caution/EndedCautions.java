package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loadwalk.bench.EndedStep;
import loadwalk.bench.Figures;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Holds a step against the steps of the walk that ended before they were measured.
 *
 * <p>Where the amplifier shut itself off or a fuse opened, a step is halted that asks the same of a
 * channel or more: a load per channel no higher; a supply current that reaches the one read there
 * is judged like that of any other part. An amplifier that gave out is halted at every step that
 * drives it. A supply that ended is counted on for no more than was read there.
 */
final class EndedCautions {
  private static final String GAVE_OUT = "gave-out-before";
  private static final String PROTECTED = "protected-before";
  private static final String FUSE_OPENED = "fuse-opened-before";
  private static final String SUPPLY_ENDED = "supply-ended-before";

  /** How far two loads may differ and still ask the same of a channel, as for a rating. */
  private static final double SAME_LOAD = 1.05;

  /**
   * Part of the volts asked for from which a supply held when the step ended, so that it was the
   * signal source that ended first; as for a rating.
   */
  private static final double HELD = 0.985;

  private EndedCautions() {}

  /** Returns the cautions, at most one of each code, the worst. */
  static List<Caution> of(StepQuestion step) {
    List<Caution> found = new ArrayList<>();
    if (step.driven()) {
      worst(ended(step, Outcome.GAVE_OUT).map(EndedCautions::gaveOut)).ifPresent(found::add);
      worst(asked(step, Outcome.PROTECTED)).ifPresent(found::add);
      worst(asked(step, Outcome.FUSE_OPENED)).ifPresent(found::add);
      worst(
              ended(step, Outcome.NOT_REACHED)
                  .filter(ended -> isUnread(step, ended) && asksTheLoad(step, ended))
                  .map(EndedCautions::unread))
          .ifPresent(found::add);
    }
    return found;
  }

  /** Returns the currents that the amplifier and its fuses bore until a step ended. */
  static List<Stress> stresses(StepQuestion step) {
    return Stream.of(Outcome.PROTECTED, Outcome.FUSE_OPENED)
        .flatMap(outcome -> ended(step, outcome))
        .flatMap(ended -> stress(step, ended).stream())
        .toList();
  }

  /** Returns the least current at which the supplies ended, as read; empty if they never did. */
  static OptionalDouble suppliesBore(StepQuestion step) {
    return ended(step, Outcome.NOT_REACHED)
        .filter(ended -> !isHeld(step, ended))
        .map(ended -> ended.reading(ReadingId.SUPPLY_AMPS))
        .flatMapToDouble(OptionalDouble::stream)
        .filter(amps -> amps > 0)
        .min();
  }

  private static Stream<EndedStep> ended(StepQuestion step, Outcome outcome) {
    return step.evidence().ended().stream().filter(ended -> ended.outcome() == outcome);
  }

  private static Optional<Caution> worst(Stream<Caution> cautions) {
    return cautions.max(
        Comparator.comparing(Caution::gravity).thenComparingDouble(Caution::severity));
  }

  private static Caution gaveOut(EndedStep ended) {
    String text =
        Sentence.of(
            "The amplifier gave out at {}. Repair and test it before you drive it again.",
            ended.target().stepId());
    return new Caution(GAVE_OUT, Verdict.HALT, text, Double.POSITIVE_INFINITY);
  }

  /** Returns the cautions for what made the amplifier shut off or a fuse open, asked again. */
  private static Stream<Caution> asked(StepQuestion step, Outcome outcome) {
    return ended(step, outcome)
        .flatMap(
            ended ->
                asksTheLoad(step, ended)
                    ? Stream.of(load(step, ended))
                    : current(step, ended).stream());
  }

  private static Caution load(StepQuestion step, EndedStep ended) {
    String text =
        Sentence.of(
            "{} Asked again: {} Ω a channel. Find the cause first.",
            told(ended),
            Figures.three(channelOhms(step)));
    return new Caution(code(ended), Verdict.HALT, text, ended.channelOhms() / channelOhms(step));
  }

  private static Optional<Caution> current(StepQuestion step, EndedStep ended) {
    return stress(step, ended)
        .filter(stress -> stress.verdict(step.watchesAmps()) != Verdict.CLEAR)
        .map(
            stress ->
                Caution.giving(
                    stress.code(),
                    ended.target().stepId(),
                    stress.verdict(step.watchesAmps()),
                    Sentence.of(
                        "{} This step draws {}.",
                        told(ended),
                        StepQuestion.words(stress.demand(), "A")),
                    stress.demand().middle(),
                    stress.share()));
  }

  private static Optional<Stress> stress(StepQuestion step, EndedStep ended) {
    double read = ended.reading(ReadingId.SUPPLY_AMPS).orElse(0);
    String part = ended.outcome() == Outcome.PROTECTED ? "the amplifier bore" : "the fuses bore";
    return step.amps()
        .filter(amps -> read > 0)
        .map(amps -> new Stress(code(ended), part, part, amps, Bears.always(read), Unit.AMPERE));
  }

  private static String code(EndedStep ended) {
    return ended.outcome() == Outcome.PROTECTED ? PROTECTED : FUSE_OPENED;
  }

  /** Says what happened: "At stereo-1, 1 Ω a channel, a fuse opened at 62 A." */
  private static String told(EndedStep ended) {
    OptionalDouble amps = ended.reading(ReadingId.SUPPLY_AMPS);
    String step = ended.target().stepId();
    String ohms = Figures.three(ended.channelOhms());
    String what = ended.outcome().clause();
    return amps.isPresent()
        ? Sentence.of(
            "At {}, {} Ω a channel, {} at {} A.",
            step,
            ohms,
            what,
            Figures.three(amps.getAsDouble()))
        : Sentence.of("At {}, {} Ω a channel, {}.", step, ohms, what);
  }

  private static Caution unread(EndedStep ended) {
    String text =
        Sentence.of(
            "At {} {}; nobody read at how many amperes.",
            ended.target().stepId(),
            ended.outcome().clause());
    return new Caution(SUPPLY_ENDED, Verdict.HEED, text, Double.POSITIVE_INFINITY);
  }

  /** Tells whether the supply may have ended a step and nobody read at what current. */
  private static boolean isUnread(StepQuestion step, EndedStep ended) {
    return ended.reading(ReadingId.SUPPLY_AMPS).isEmpty() && !isHeld(step, ended);
  }

  /** Tells whether the supply held its volts, as read, when a step ended. */
  private static boolean isHeld(StepQuestion step, EndedStep ended) {
    OptionalDouble volts = ended.reading(ReadingId.SUPPLY_VOLTS);
    return volts.isPresent()
        && volts.getAsDouble() >= HELD * step.evidence().conditions().supplyVolts();
  }

  private static double channelOhms(StepQuestion step) {
    return step.target().mode().channelOhms(step.target().ohms());
  }

  private static boolean asksTheLoad(StepQuestion step, EndedStep ended) {
    return channelOhms(step) <= SAME_LOAD * ended.channelOhms();
  }
}
