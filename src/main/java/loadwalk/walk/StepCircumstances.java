package loadwalk.walk;

import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Meter;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.bench.ThdKind;
import loadwalk.result.Circumstances;
import loadwalk.result.ReadBy;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** Gathers from a walk how one of its steps was read. */
final class StepCircumstances {
  private StepCircumstances() {}

  static Circumstances of(WalkState state, PlannedStep planned) {
    StepState step = state.step(planned.id());
    boolean practice = state.opened().practiceSeed().isPresent();
    return new Circumstances(
        step.said(),
        warm(state, planned),
        step.output().map(Entry::heldSeconds).orElseGet(OptionalDouble::empty),
        ambient(state),
        thdKind(state, step),
        thdBandwidth(state, step),
        step.output().map(entry -> readBy(step, entry, practice)),
        practice,
        step.latest().values().stream().anyMatch(entry -> entry.stoodBy().isPresent()),
        !step.openDoubts().isEmpty());
  }

  /**
   * Tells whether the last warm-up before a step was done and the amplifier still warm when the
   * step was read; empty without a warm-up, or where no clock ran for it.
   */
  private static Optional<Boolean> warm(WalkState state, PlannedStep planned) {
    return cooled(state.step(planned.id()))
        ? Optional.of(false)
        : state
            .warmUpBefore(planned.id())
            .flatMap(warmUp -> ended(state.step(warmUp.id()), warmUp));
  }

  private static boolean cooled(StepState step) {
    return step.output()
        .map(Entry::cooled)
        .orElseGet(() -> step.latest().values().stream().anyMatch(Entry::cooled));
  }

  private static Optional<Boolean> ended(StepState step, PlannedStep warmUp) {
    boolean measured = step.outcome().equals(Optional.of(Outcome.MEASURED));
    if (!measured || step.reason().isPresent()) {
      return Optional.of(false);
    }
    double minutes = warmUp.step().warmUp().orElseThrow().minutes();
    return step.warmSeconds() >= 60 * minutes ? Optional.of(true) : Optional.empty();
  }

  private static OptionalDouble ambient(WalkState state) {
    OptionalDouble newest = OptionalDouble.empty();
    for (PlannedStep planned : state.plan()) {
      Optional<Entry> entry = state.step(planned.id()).latest(ReadingId.AMBIENT_CELSIUS);
      newest = entry.isPresent() ? OptionalDouble.of(entry.get().value()) : newest;
    }
    return newest;
  }

  /** A captured wave gives harmonics over the fundamental; else the bench's meter says it. */
  private static Optional<ThdKind> thdKind(WalkState state, StepState step) {
    Optional<Entry> thd = step.latest(ReadingId.THD_PERCENT);
    boolean captured = thd.flatMap(step::captureOf).isPresent();
    return captured
        ? Optional.of(ThdKind.THD_F)
        : thd.flatMap(entry -> thdMeter(state)).flatMap(Meter::thdKind);
  }

  /** The analysis of a captured wave counts harmonics 2 to 10. */
  private static OptionalDouble thdBandwidth(WalkState state, StepState step) {
    Optional<Entry> thd = step.latest(ReadingId.THD_PERCENT);
    Optional<Capture> capture = thd.flatMap(step::captureOf);
    return capture.isPresent()
        ? OptionalDouble.of(Capture.HARMONICS * capture.get().hertz())
        : thd.flatMap(entry -> thdMeter(state))
            .map(Meter::bandwidthHertz)
            .orElseGet(OptionalDouble::empty);
  }

  private static Optional<Meter> thdMeter(WalkState state) {
    return state.opened().bench().meterFor(ReadingId.THD_PERCENT);
  }

  private static ReadBy readBy(StepState step, Entry entry, boolean practice) {
    Optional<Capture> capture = step.captureOf(entry);
    if (practice) {
      return ReadBy.PRACTICE;
    }
    if (capture.isPresent()) {
      return ReadBy.CAPTURE;
    }
    return entry.instrument().isPresent() ? ReadBy.METER : ReadBy.HAND;
  }
}
