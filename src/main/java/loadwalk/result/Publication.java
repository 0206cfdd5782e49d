package loadwalk.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loadwalk.bench.Mode;
import loadwalk.quantity.Quantity;
import loadwalk.text.Sentence;

/**
 * Chooses the power that a sheet states for each load.
 *
 * <p>A value at the stated limit takes precedence, then one at the onset of clipping, then one
 * below both; criteria are never mixed. Among runs at the same criterion, the first is published if
 * all agree, otherwise the lowest.
 */
final class Publication {
  private Publication() {}

  /** Returns the published power by the id of the first step at each load. */
  static Map<String, PublishedPower> of(List<StepResult> steps) {
    Map<String, PublishedPower> published = new LinkedHashMap<>();
    List<StepResult> left = new ArrayList<>(steps.stream().filter(StepResult::isMeasured).toList());
    while (!left.isEmpty()) {
      StepResult first = left.get(0);
      List<StepResult> runs = left.stream().filter(first::sameLoad).toList();
      left.removeIf(first::sameLoad);
      published.put(first.stepId(), choose(runs));
    }
    return published;
  }

  private static PublishedPower choose(List<StepResult> runs) {
    Criterion best =
        runs.stream().map(StepResult::criterion).min(Comparator.naturalOrder()).orElseThrow();
    List<StepResult> same = runs.stream().filter(r -> r.criterion() == best).toList();
    boolean mixed = same.size() < runs.size();
    StepResult first = same.get(0);
    if (same.size() == 1) {
      String why =
          mixed
              ? Sentence.of(
                  "the only run read {}; runs at another criterion do not count", best.text())
              : "";
      return power(first, why);
    }
    if (best == Criterion.BELOW_LIMIT) {
      String why = Sentence.of("the first of {} runs, all read {}", same.size(), best.text());
      return power(first, why);
    }
    if (allAgree(same)) {
      String why =
          Sentence.of(
              mixed
                  ? "the first of {} runs that agree; runs at another criterion do not count"
                  : "the first of {} runs that agree",
              same.size());
      return power(first, why);
    }
    StepResult lowest =
        same.stream()
            .min(Comparator.comparingDouble(r -> r.totalWatts().orElseThrow().value()))
            .orElseThrow();
    String why =
        Sentence.of(
            mixed
                ? "the lowest of {} runs that disagree; runs at another criterion do not count"
                : "the lowest of {} runs that disagree",
            same.size());
    return power(lowest, why);
  }

  private static boolean allAgree(List<StepResult> runs) {
    for (int i = 0; i < runs.size(); i++) {
      for (int j = i + 1; j < runs.size(); j++) {
        if (RecheckComparison.of(runs.get(i), runs.get(j)).outcome()
            != RecheckAgreement.Outcome.AGREES) {
          return false;
        }
      }
    }
    return true;
  }

  private static PublishedPower power(StepResult run, String why) {
    Quantity total = run.totalWatts().orElseThrow();
    boolean both = run.mode() == Mode.STEREO && run.otherWatts().isPresent();
    Quantity perLoad = both ? total.scaledBy(1.0 / Mode.STEREO.loads()) : run.watts().orElseThrow();
    return new PublishedPower(
        run.mode(), run.ohms(), run.stepId(), total, perLoad, run.criterion(), why);
  }
}
