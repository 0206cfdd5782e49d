package loadwalk.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/**
 * One step of a walk, with its own id.
 *
 * @param id the step's id, unique in the walk: {@code stereo-4}, {@code warm-up#2}
 * @param step what it does
 */
public record PlannedStep(String id, Step step) {
  /** Returns the steps of a walk through a sequence, in order. */
  public static List<PlannedStep> of(Sequence sequence) {
    Map<String, Integer> counts = new HashMap<>();
    List<PlannedStep> out = new ArrayList<>();
    for (Step step : sequence.steps()) {
      for (Step walked : step.walked(sequence)) {
        out.add(new PlannedStep(numbered(walked.baseId(), counts), walked));
      }
    }
    return List.copyOf(out);
  }

  /**
   * Returns the context of this step in a walk.
   *
   * @param sequence the sequence it belongs to
   * @param plan every step of the walk
   * @param counts which of them a recheck may pick as the heaviest
   */
  public StepContext in(Sequence sequence, List<PlannedStep> plan, Predicate<PlannedStep> counts) {
    return new StepContext(sequence, step.repeats().flatMap(of -> repeated(of, plan, counts)));
  }

  private static Optional<PlannedStep> repeated(
      String of, List<PlannedStep> plan, Predicate<PlannedStep> counts) {
    return of.equals(Recheck.HEAVIEST)
        ? plan.stream()
            .filter(planned -> planned.step.load().isPresent())
            .filter(counts)
            .min(Comparator.comparing(p -> p.step.load().orElseThrow(), Load.HEAVIEST_FIRST))
        : plan.stream().filter(planned -> planned.id.equals(of)).findFirst();
  }

  /** Returns what the step does to the amplifier; empty if it does nothing to it. */
  public Optional<Target> target(StepContext context) {
    return step.target(id, context);
  }

  /** Returns the instruction to the operator, in whole sentences. */
  public String instruction(StepContext context) {
    return step.instruction(context);
  }

  /** Returns what of the instruction still matters while the step runs. */
  public String running(StepContext context) {
    return step.running(context);
  }

  /** Returns the readings that the step asks for; none if it does nothing to the amplifier. */
  public List<ReadingId> readings(StepContext context) {
    return target(context).map(target -> step.readings(target.mode())).orElse(List.of());
  }

  /** Returns the base id, with #2, #3 and so on added from its second use. */
  static String numbered(String baseId, Map<String, Integer> counts) {
    int count = counts.merge(baseId, 1, Integer::sum);
    return count == 1 ? baseId : baseId + "#" + count;
  }
}
