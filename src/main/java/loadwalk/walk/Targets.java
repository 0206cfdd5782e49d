package loadwalk.walk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loadwalk.bench.EndedStep;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * Prepares the steps of a walk for the forecast: what each step asks, and what has been measured.
 */
public final class Targets {
  /** Volts at 1 % THD over volts at the onset of clipping, hard clipper (rms 0.723708/0.707107). */
  static final double ONE_PERCENT_OVER_ONSET = 1.02348;

  private Targets() {}

  /** Returns what a step does to the amplifier; empty if it does nothing to it. */
  public static Optional<Target> of(WalkState state, PlannedStep planned) {
    return planned.target(state.context(planned));
  }

  /** Tells whether a step reads an output at the limit of the walk. */
  public static boolean isAtALimit(WalkState state, PlannedStep planned) {
    return of(state, planned).filter(t -> t.kind() == Target.Kind.LOADED).isPresent();
  }

  /** Tells whether a step is the first at a limit and nobody said how the controls are set. */
  public static boolean asksForControls(WalkState state, PlannedStep planned) {
    return state.controls().isEmpty()
        && state.plan().stream()
            .filter(p -> isAtALimit(state, p))
            .findFirst()
            .filter(planned::equals)
            .isPresent();
  }

  /** Tells whether an output was read of which nobody knows at what point. */
  public static boolean isWithoutPoint(WalkState state, PlannedStep planned) {
    StepState step = state.step(planned.id());
    double limit = state.opened().sequence().limitThdPercent();
    return isAtALimit(state, planned)
        && step.output().isPresent()
        && step.ended().isEmpty()
        && step.pairs().isEmpty()
        && step.criterion(limit) == Criterion.NOT_KNOWN;
  }

  /**
   * Returns everything known before a step: the undoubted readings of the steps before it. If an
   * open doubt points to an earlier step, that step is left out along with the doubted reading,
   * since either may be wrong.
   */
  public static Evidence evidenceBefore(WalkState state, String stepId) {
    Set<String> blamed = blamedBefore(state, stepId);
    double limit = state.opened().sequence().limitThdPercent();
    List<Observation> observations = new ArrayList<>();
    for (PlannedStep planned : state.plan()) {
      boolean own = planned.id().equals(stepId);
      Optional<Target> target = of(state, planned);
      Map<ReadingId, Double> known =
          own
              ? coldLoad(state.step(stepId))
              : blamed.contains(planned.id()) ? Map.of() : trusted(state.step(planned.id()), limit);
      if (target.isPresent() && !known.isEmpty()) {
        observations.add(new Observation(target.get(), known));
      }
      if (own) {
        break;
      }
    }
    Sequence sequence = state.opened().sequence();
    return new Evidence(
        state.opened().amplifier(),
        state.opened().bench(),
        new Evidence.Conditions(
            sequence.toneHertz(), sequence.limitThdPercent(), sequence.supplyVolts()),
        observations,
        ended(state, state.plan().stream().takeWhile(p -> !p.id().equals(stepId)).toList()),
        WarmHistory.before(state, stepId));
  }

  /** Returns every step that drove a load and ended before it was measured, oldest first. */
  public static List<EndedStep> ended(WalkState state) {
    return ended(state, state.plan());
  }

  private static List<EndedStep> ended(WalkState state, List<PlannedStep> among) {
    List<EndedStep> all = new ArrayList<>();
    for (PlannedStep planned : among) {
      StepState step = state.step(planned.id());
      Optional<Target> target = of(state, planned);
      Map<ReadingId, Double> last = new EnumMap<>(ReadingId.class);
      step.latest().forEach((id, entry) -> last.put(id, entry.value()));
      target.ifPresent(
          t -> {
            step.endedBefore().forEach(outcome -> all.add(new EndedStep(t, outcome, Map.of())));
            step.ended().ifPresent(outcome -> all.add(new EndedStep(t, outcome, last)));
          });
    }
    return all;
  }

  private static Set<String> blamedBefore(WalkState state, String stepId) {
    Set<String> blamed = new HashSet<>();
    for (PlannedStep planned : state.plan()) {
      if (planned.id().equals(stepId)) {
        break;
      }
      StepState step = state.step(planned.id());
      for (ReadingId id : step.openDoubts()) {
        step.latest(id).stream()
            .flatMap(entry -> entry.doubts().stream())
            .forEach(doubt -> doubt.earlierStep().ifPresent(blamed::add));
      }
    }
    return blamed;
  }

  private static Map<ReadingId, Double> coldLoad(StepState step) {
    return step.latest(ReadingId.LOAD_OHMS)
        .map(e -> Map.of(ReadingId.LOAD_OHMS, e.value()))
        .orElse(Map.of());
  }

  private static Map<ReadingId, Double> trusted(StepState step, double limit) {
    Map<ReadingId, Double> known = new EnumMap<>(ReadingId.class);
    Criterion criterion = step.criterion(limit);
    boolean off = criterion == Criterion.BELOW_LIMIT || criterion == Criterion.ABOVE_LIMIT;
    if (step.status() == StepState.Status.SKIPPED || step.ended().isPresent() || off) {
      return known;
    }
    boolean onset = criterion == Criterion.CLIPPING_ONSET;
    step.latest()
        .forEach(
            (id, entry) -> {
              if (!entry.isOpen()) {
                known.put(id, onset ? atLimit(id, entry.value()) : entry.value());
              }
            });
    return known;
  }

  private static double atLimit(ReadingId id, double value) {
    if (id == ReadingId.OUTPUT_VOLTS || id == ReadingId.OTHER_OUTPUT_VOLTS) {
      return value * ONE_PERCENT_OVER_ONSET;
    }
    return id == ReadingId.OUTPUT_WATTS
        ? value * ONE_PERCENT_OVER_ONSET * ONE_PERCENT_OVER_ONSET
        : value;
  }
}
