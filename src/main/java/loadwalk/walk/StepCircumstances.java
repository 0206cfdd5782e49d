package loadwalk.walk;

import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.result.Circumstances;
import loadwalk.result.ReadBy;
import loadwalk.result.ThdKind;
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
        OptionalDouble.empty(),
        ambient(state),
        thdKind(step),
        OptionalDouble.empty(),
        output(step).map(entry -> readBy(step, entry, practice)),
        practice,
        step.latest().values().stream().anyMatch(entry -> entry.stoodBy().isPresent()),
        !step.openDoubts().isEmpty());
  }

  /**
   * Tells whether the last warm-up before a step was done; empty without one, or where no clock ran
   * for it.
   */
  private static Optional<Boolean> warm(WalkState state, PlannedStep planned) {
    Optional<PlannedStep> last =
        state.plan().subList(0, state.plan().indexOf(planned)).stream()
            .filter(p -> p.step().warmUp().isPresent())
            .reduce((first, second) -> second);
    return last.flatMap(warmUp -> ended(state.step(warmUp.id()), warmUp));
  }

  private static Optional<Boolean> ended(StepState step, PlannedStep warmUp) {
    if (!step.status().isOver() || step.reason().isPresent()) {
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

  /** A captured wave gives harmonics over the fundamental; of other readings nobody said it. */
  private static Optional<ThdKind> thdKind(StepState step) {
    return step.latest(ReadingId.THD_PERCENT)
        .flatMap(step::captureOf)
        .map(capture -> ThdKind.THD_F);
  }

  private static Optional<Entry> output(StepState step) {
    return step.latest(ReadingId.OUTPUT_VOLTS).or(() -> step.latest(ReadingId.OUTPUT_WATTS));
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
