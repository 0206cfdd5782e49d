package loadwalk.experiment;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Predicate;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;

/**
 * Counts when slips were caught, at their entry or by a doubt of a later, honest one.
 *
 * <p>Every step of the ladder but the first is heavy, so the question is not whether a heavy step
 * was started but whether the heaviest was: half an ohm, bridged.
 */
final class Later {
  private final Map<Slip, Map<Catch, Integer>> caught = new EnumMap<>(Slip.class);
  final Tally pointsBack = new Tally();
  final Tally rightStep = new Tally();
  final Tally rightSlip = new Tally();

  /** When a slip was caught. */
  enum Catch {
    AT_ENTRY("seen at once"),
    /** By the first reading after it, the half-ohm step not yet started. */
    NEXT_READING("seen by the next reading"),
    /** Later, but before the half-ohm step is started. */
    IN_TIME("seen before half an ohm"),
    TOO_LATE("seen at half an ohm or after"),
    NEVER("never seen");

    final String words;

    Catch(String words) {
      this.words = words;
    }
  }

  void add(Slip slip, Catch when) {
    caught.computeIfAbsent(slip, s -> new EnumMap<>(Catch.class)).merge(when, 1, Integer::sum);
  }

  /** Counts where the first doubt after a slip points. */
  void point(Slip slip, String step, Doubt doubt) {
    boolean right = doubt.earlierStep().filter(step::equals).isPresent();
    pointsBack.add(doubt.earlierStep().isPresent());
    if (doubt.earlierStep().isPresent()) {
      rightStep.add(right);
    }
    if (right) {
      rightSlip.add(doubt.slip() == slip);
    }
  }

  /** Returns how many of the slips that count were caught at a moment or before it. */
  Tally by(Catch latest, Predicate<Slip> counts) {
    Tally sum = new Tally();
    caught.forEach(
        (slip, whens) ->
            whens.forEach(
                (when, times) -> {
                  for (int i = 0; i < times && counts.test(slip); i++) {
                    sum.add(when.compareTo(latest) <= 0);
                  }
                }));
    return sum;
  }
}
