package loadwalk.walk;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.Target;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/**
 * Decides whether the current step may start; every refusal says why.
 *
 * <p>A heed step starts only when the operator has typed the load that is really connected. A halt
 * must also have been lifted with a typed reason. An open doubt on another step holds every step
 * that is bridged or not clear.
 */
public final class Gate {
  /**
   * The largest difference between the typed load and the step's, a fraction; a slip is a factor of
   * 2 or more.
   */
  private static final double ARM_TOLERANCE = 0.1;

  private static final double ROUNDING = 1e-9;

  private Gate() {}

  static Optional<String> refusal(WalkState state, StartOverride override) {
    Optional<PlannedStep> current = state.current();
    if (current.isEmpty()) {
      return Optional.of("Every step is done.");
    }
    StepState step = state.step(current.get().id());
    if (step.status() == Status.RUNNING) {
      return Optional.of(Sentence.of("{} is already running.", current.get().id()));
    }
    if (step.status() != Status.BRIEFED || step.brief().isEmpty()) {
      return Optional.of(Sentence.of("{} has no brief yet.", current.get().id()));
    }
    return haltRefusal(step)
        .or(() -> doubtRefusal(state, current.get(), step).filter(why -> holds(override)))
        .or(() -> armRefusal(state, current.get(), step));
  }

  private static boolean holds(StartOverride override) {
    return override != StartOverride.REHEARSED;
  }

  private static Optional<String> haltRefusal(StepState step) {
    Forecast brief = step.brief().orElseThrow();
    if (brief.verdict() != Verdict.HALT || step.liftReason().isPresent()) {
      return Optional.empty();
    }
    return Optional.of("Halt: do not connect this. Only a typed reason lifts it.");
  }

  private static Optional<String> doubtRefusal(
      WalkState state, PlannedStep planned, StepState step) {
    boolean bridged = Targets.of(state, planned).filter(t -> t.mode() == Mode.BRIDGED).isPresent();
    if (!bridged && step.brief().orElseThrow().verdict() == Verdict.CLEAR) {
      return Optional.empty();
    }
    List<WalkState.OpenDoubt> open =
        state.openDoubts().stream().filter(d -> !d.stepId().equals(planned.id())).toList();
    return open.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Sentence.of(
                "Held: answer the doubt on {}, {}, first.",
                open.get(0).stepId(),
                open.get(0).reading().label()));
  }

  private static Optional<String> armRefusal(WalkState state, PlannedStep planned, StepState step) {
    return needsArming(state, planned) && step.armedOhms().isEmpty()
        ? Optional.of("Type the load that is really connected, in ohms.")
        : Optional.empty();
  }

  /** Tells whether the current step waits at a halt that nobody has lifted. */
  public static boolean isHalted(WalkState state) {
    return state
        .current()
        .map(p -> state.step(p.id()))
        .filter(s -> s.status() == Status.BRIEFED)
        .flatMap(Gate::haltRefusal)
        .isPresent();
  }

  /** Tells whether a step must be armed: it loads the amplifier and its brief is not clear. */
  public static boolean needsArming(WalkState state, PlannedStep planned) {
    boolean heed =
        state.step(planned.id()).brief().filter(b -> b.verdict() != Verdict.CLEAR).isPresent();
    return heed && Targets.of(state, planned).filter(Gate::loads).isPresent();
  }

  static boolean loads(Target target) {
    return target.kind().drives();
  }

  /** Returns why a typed load does not arm a step; empty if it does. */
  static Optional<String> armProblem(Target target, double typedOhms) {
    double off = Math.abs(typedOhms / target.ohms() - 1);
    if (off <= ARM_TOLERANCE + ROUNDING) {
      return Optional.empty();
    }
    return Optional.of(
        Sentence.of(
            "The step needs {} {}, but you typed {}. Check the wiring before you switch on.",
            target.mode().word(),
            Printer.UTF8.exact(target.ohms(), Unit.OHM),
            Printer.UTF8.exact(typedOhms, Unit.OHM)));
  }
}
