package loadwalk.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.Step;

/** Shows the steps of a walk to the forecast: what each asks, and what has been measured. */
public final class Targets {
  /** Volts at 1 % THD over volts at the onset of clipping, hard clipper (rms 0.723708/0.707107). */
  static final double ONE_PERCENT_OVER_ONSET = 1.02348;

  private Targets() {}

  /** Returns what a step asks, or nothing where no load or supply current is involved. */
  public static Optional<Target> of(WalkState state, PlannedStep planned) {
    String id = planned.id();
    Step step = planned.step();
    if (step instanceof Step.Measure measure) {
      return Optional.of(Target.loaded(id, measure.mode(), measure.ohms()));
    }
    if (step instanceof Step.Recheck) {
      return recheckOf(state, planned)
          .flatMap(state::planned)
          .map(PlannedStep::step)
          .filter(Step.Measure.class::isInstance)
          .map(Step.Measure.class::cast)
          .map(m -> Target.loaded(id, m.mode(), m.ohms()));
    }
    if (step instanceof Step.WarmUp warm) {
      return firstLoad(state.opened().sequence())
          .map(m -> new Target(id, Target.Kind.WARM_UP, m.mode(), m.ohms(), warm.powerFraction()));
    }
    if (step instanceof Step.OpenLoad) {
      return firstLoad(state.opened().sequence())
          .map(m -> new Target(id, Target.Kind.OPEN_LOAD, m.mode(), m.ohms(), 1));
    }
    return step instanceof Step.Idle ? Optional.of(Target.idle(id)) : Optional.empty();
  }

  /** Returns the step that a recheck measures again; the heaviest is told from what was done. */
  public static Optional<String> recheckOf(WalkState state, PlannedStep planned) {
    return planned
        .recheckOf()
        .flatMap(of -> Step.Recheck.HEAVIEST.equals(of) ? heaviest(state) : Optional.of(of));
  }

  /** Returns the load of the warm-up: the first load of the sequence. */
  public static Optional<Step.Measure> firstLoad(Sequence sequence) {
    return sequence.steps().stream()
        .filter(Step.Measure.class::isInstance)
        .map(Step.Measure.class::cast)
        .findFirst();
  }

  private static Optional<String> heaviest(WalkState state) {
    return state.plan().stream()
        .filter(p -> p.step() instanceof Step.Measure)
        .filter(p -> state.step(p.id()).status() == StepState.Status.DONE)
        .min(
            Comparator.comparingDouble(Targets::channelOhms)
                .thenComparing(p -> ((Step.Measure) p.step()).mode() == Mode.STEREO))
        .map(PlannedStep::id);
  }

  private static double channelOhms(PlannedStep planned) {
    Step.Measure measure = (Step.Measure) planned.step();
    return measure.mode().channelOhms(measure.ohms());
  }

  /**
   * Returns all that is known before a step: undoubted readings of the steps before it. A step that
   * an open doubt among these points to is left out with the reading doubted, as either may be off.
   */
  public static Evidence evidenceBefore(WalkState state, String stepId) {
    Set<String> blamed = blamedBefore(state, stepId);
    List<Observation> observations = new ArrayList<>();
    for (PlannedStep planned : state.plan()) {
      boolean own = planned.id().equals(stepId);
      Optional<Target> target = of(state, planned);
      Map<ReadingId, Double> known =
          own
              ? coldLoad(state.step(stepId))
              : blamed.contains(planned.id()) ? Map.of() : trusted(state.step(planned.id()));
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
        observations);
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

  private static Map<ReadingId, Double> trusted(StepState step) {
    Map<ReadingId, Double> known = new EnumMap<>(ReadingId.class);
    if (step.status() == StepState.Status.SKIPPED || step.criterion() == Criterion.BELOW_LIMIT) {
      return known;
    }
    boolean onset = step.criterion() == Criterion.CLIPPING_ONSET;
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
