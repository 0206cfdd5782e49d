package loadwalk.plan;

import java.util.List;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Verdict;

/**
 * A sequence planned on a bench before anything is connected.
 *
 * @param sequence the sequence's name
 * @param evidence amplifier, bench, conditions and what has been measured so far
 * @param steps the steps that ask something of the bench, in order
 * @param needs what the bench lacks for the whole sequence, one sentence each
 */
public record BenchPlan(
    String sequence, Evidence evidence, List<StepPlan> steps, List<String> needs) {
  /** The format of the plan in JSON. */
  public static final String FORMAT = "loadwalk-plan/1";

  /** Copies the lists. */
  public BenchPlan {
    steps = List.copyOf(steps);
    needs = List.copyOf(needs);
  }

  /** Returns the gravest verdict of all steps. */
  public Verdict verdict() {
    return steps.stream()
        .map(step -> step.forecast().verdict())
        .reduce(Verdict.CLEAR, Verdict::graver);
  }
}
