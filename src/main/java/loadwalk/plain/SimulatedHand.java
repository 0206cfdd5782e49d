package loadwalk.plain;

import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Verdict;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.Gate;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Steadiness;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.rehearse.PracticeAnswers;

/**
 * A simulated operator who never slips and walks the practice amplifier to the end.
 *
 * @param bench the bench that supplies the readings
 */
public record SimulatedHand(PracticeAnswers bench) {
  private static final String LIFTED = "practice bench: nothing real can be hurt here";
  private static final String STANDS = "practice bench: the meter shows this";
  private static final double TEMPERATURE_EVERY_SECONDS = 60;

  /** Returns the next intent; empty while a warm-up only needs time, or when all is done. */
  public Optional<Intent> next(Model model) {
    WalkState state = model.state();
    Optional<PlannedStep> current = state.current();
    if (current.isEmpty() || model.isWriting()) {
      return Optional.empty();
    }
    PlannedStep planned = current.get();
    StepState step = state.step(planned.id());
    if (step.status() == Status.BRIEFED) {
      return Optional.of(start(state, planned, step));
    }
    return step.status() == Status.RUNNING ? run(model, planned, step) : Optional.empty();
  }

  private static Intent start(WalkState state, PlannedStep planned, StepState step) {
    boolean halted =
        step.brief().filter(b -> b.verdict() == Verdict.HALT).isPresent()
            && step.liftReason().isEmpty();
    if (halted) {
      return new Intent.LiftHalt(LIFTED);
    }
    if (planned.step().isConfirmed()) {
      return new Intent.Finish();
    }
    Optional<Target> target = Targets.of(state, planned);
    return Gate.needsArming(state, planned) && target.isPresent()
        ? new Intent.Arm(String.valueOf(target.get().ohms()))
        : new Intent.Begin();
  }

  private Optional<Intent> run(Model model, PlannedStep planned, StepState step) {
    if (!step.openDoubts().isEmpty()) {
      ReadingId doubted = step.openDoubts().get(0);
      return Optional.of(new Intent.StandBy(planned.id(), doubted, STANDS));
    }
    if (planned.step().warmUp().isPresent()) {
      return warm(model, planned, step);
    }
    Map<ReadingId, String> shown = bench.of(model.state(), model.clock().warmSeconds());
    Map<ReadingId, String> missing = PracticeAnswers.missing(shown, step);
    return Optional.of(
        missing.isEmpty() ? new Intent.Finish() : new Intent.EnterAll(planned.id(), missing));
  }

  private Optional<Intent> warm(Model model, PlannedStep planned, StepState step) {
    double warm = model.clock().warmSeconds();
    double last = step.latest(ReadingId.SINK_CELSIUS).map(Entry::warmSeconds).orElse(-1e9);
    if (warm - last >= TEMPERATURE_EVERY_SECONDS) {
      return Optional.of(new Intent.EnterAll(planned.id(), bench.of(model.state(), warm)));
    }
    boolean steady = Steadiness.of(model.state(), planned, warm).isSteady();
    return steady ? Optional.of(new Intent.Finish()) : Optional.empty();
  }
}
