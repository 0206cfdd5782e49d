package loadwalk.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loadwalk.quantity.Quantity;

/**
 * Finds the runs of a walk that should have given the same volts: one load, one stated point, the
 * same marks, none of them a reason not to rank.
 */
final class RunPairs {
  private RunPairs() {}

  /**
   * Returns the pairs in the order of the steps: one fewer than there are runs alike.
   *
   * @param steps those whose output was set by hand
   */
  static List<Repeatability.Pair> of(List<StepResult> steps) {
    Map<StepResult, List<StepResult>> alike = new LinkedHashMap<>();
    for (StepResult step : steps) {
      if (counts(step)) {
        StepResult first =
            alike.keySet().stream().filter(other -> areAlike(other, step)).findFirst().orElse(step);
        alike.computeIfAbsent(first, key -> new ArrayList<>()).add(step);
      }
    }
    List<Repeatability.Pair> pairs = new ArrayList<>();
    alike.values().forEach(runs -> addPairs(pairs, runs));
    return pairs;
  }

  private static boolean counts(StepResult step) {
    return step.isMeasured() && step.criterion().isStated() && step.isRanked();
  }

  private static boolean areAlike(StepResult one, StepResult other) {
    return one.sameLoad(other)
        && one.conditions().isLike(other.conditions())
        && one.marks().equals(other.marks());
  }

  /**
   * Adds what each further run differs by from the mean of those before it, scaled to the
   * difference of two: (x − mean of k)·√(2k/(k + 1)). These are independent and scatter alike
   * (Helmert's contrasts).
   */
  private static void addPairs(List<Repeatability.Pair> pairs, List<StepResult> runs) {
    for (int k = 1; k < runs.size(); k++) {
      Quantity before = volts(runs.get(0));
      for (int i = 1; i < k; i++) {
        before = before.plus(volts(runs.get(i)));
      }
      Quantity mean = before.scaledBy(1.0 / k);
      Quantity apart = volts(runs.get(k)).minus(mean).scaledBy(Math.sqrt(2.0 * k / (k + 1)));
      if (mean.value() > ReadingUncertainty.LEAST) {
        pairs.add(new Repeatability.Pair(apart.value() / mean.value(), apart.u() / mean.value()));
      }
    }
  }

  /** Returns the volts without the scatter of setting, which is what is looked for. */
  private static Quantity volts(StepResult step) {
    return step.outputVolts().orElseThrow().without(Repeatability.source(step.stepId()));
  }
}
