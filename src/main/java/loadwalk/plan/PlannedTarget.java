package loadwalk.plan;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.Target;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.Step;

/** Tells what the steps of a sequence will ask before any of them is walked. */
final class PlannedTarget {
  private PlannedTarget() {}

  /** Returns the targets in order; notes and music ask nothing of the bench. */
  static List<Target> of(Sequence sequence) {
    Map<String, Step.Measure> measures = new HashMap<>();
    List<PlannedStep> steps = PlannedStep.of(sequence);
    for (PlannedStep planned : steps) {
      if (planned.step() instanceof Step.Measure measure) {
        measures.put(planned.id(), measure);
      }
    }
    return steps.stream()
        .map(planned -> target(sequence, planned, measures).orElse(null))
        .filter(Objects::nonNull)
        .toList();
  }

  private static Optional<Target> target(
      Sequence sequence, PlannedStep planned, Map<String, Step.Measure> measures) {
    String id = planned.id();
    Step step = planned.step();
    if (step instanceof Step.Measure m) {
      return Optional.of(Target.loaded(id, m.mode(), m.ohms()));
    }
    if (step instanceof Step.Idle) {
      return Optional.of(Target.idle(id));
    }
    if (step instanceof Step.WarmUp warm) {
      return firstLoad(sequence)
          .map(m -> new Target(id, Target.Kind.WARM_UP, m.mode(), m.ohms(), warm.powerFraction()));
    }
    if (step instanceof Step.OpenLoad) {
      return firstLoad(sequence)
          .map(m -> new Target(id, Target.Kind.OPEN_LOAD, m.mode(), m.ohms(), 1));
    }
    return planned
        .recheckOf()
        .flatMap(
            of ->
                of.equals(Step.Recheck.HEAVIEST)
                    ? heaviest(sequence)
                    : Optional.ofNullable(measures.get(of)))
        .map(m -> Target.loaded(id, m.mode(), m.ohms()));
  }

  private static Optional<Step.Measure> firstLoad(Sequence sequence) {
    return sequence.steps().stream()
        .filter(Step.Measure.class::isInstance)
        .map(Step.Measure.class::cast)
        .findFirst();
  }

  /** Before the walk the heaviest step is taken to be the heaviest of the sequence. */
  private static Optional<Step.Measure> heaviest(Sequence sequence) {
    return sequence.steps().stream()
        .filter(Step.Measure.class::isInstance)
        .map(Step.Measure.class::cast)
        .min(
            Comparator.comparingDouble((Step.Measure m) -> m.mode().channelOhms(m.ohms()))
                .thenComparing(m -> m.mode() == Mode.STEREO));
  }
}
