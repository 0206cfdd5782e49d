package loadwalk.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One step as it is walked, with an id of its own.
 *
 * @param id the step's id, unique in the walk: {@code stereo-4}, {@code warm-up#2}
 * @param step what it does
 * @param recheckOf for a recheck the id of the step measured again, or {@link
 *     Step.Recheck#HEAVIEST}
 */
public record PlannedStep(String id, Step step, Optional<String> recheckOf) {
  /** The part of full power of a warm-up that does not say. */
  public static final double DEFAULT_POWER_FRACTION = 0.5;

  /** The slope at which a heatsink counts as steady where a warm-up does not say, K/min. */
  public static final double DEFAULT_STEADY_CELSIUS_PER_MINUTE = 0.5;

  /**
   * Returns the steps of a sequence as they are walked, in order. A recheck becomes its warm-up,
   * like the sequence's first one but of its own length, and one step for each id it names.
   */
  public static List<PlannedStep> of(Sequence sequence) {
    Map<String, Integer> counts = new HashMap<>();
    List<PlannedStep> out = new ArrayList<>();
    for (Step step : sequence.steps()) {
      if (step instanceof Step.Recheck recheck) {
        if (recheck.afterWarmMinutes() > 0) {
          Step warmUp = warmUp(sequence, recheck.afterWarmMinutes());
          out.add(plain(warmUp, counts));
        }
        for (String target : recheck.of()) {
          String id = numbered(recheck.baseId(), counts);
          out.add(new PlannedStep(id, recheck, Optional.of(target)));
        }
      } else {
        out.add(plain(step, counts));
      }
    }
    return List.copyOf(out);
  }

  private static PlannedStep plain(Step step, Map<String, Integer> counts) {
    return new PlannedStep(numbered(step.baseId(), counts), step, Optional.empty());
  }

  private static Step warmUp(Sequence sequence, double minutes) {
    return sequence.steps().stream()
        .filter(Step.WarmUp.class::isInstance)
        .map(Step.WarmUp.class::cast)
        .findFirst()
        .map(w -> new Step.WarmUp(minutes, w.powerFraction(), w.steadyCelsiusPerMinute()))
        .orElse(
            new Step.WarmUp(minutes, DEFAULT_POWER_FRACTION, DEFAULT_STEADY_CELSIUS_PER_MINUTE));
  }

  /** Returns the base id, with #2 and so on from its second use. */
  static String numbered(String baseId, Map<String, Integer> counts) {
    int count = counts.merge(baseId, 1, Integer::sum);
    return count == 1 ? baseId : baseId + "#" + count;
  }
}
