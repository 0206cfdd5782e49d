package loadwalk.walk.fact;

import java.util.List;
import java.util.Optional;
import loadwalk.forecast.Doubt;

/**
 * One value an operator entered for a reading; later ones stand beside it, never over it.
 *
 * @param text what was typed
 * @param value the value in SI units, finite
 * @param resolution one step of the last digit typed, in the reading's unit
 * @param doubts what contradicted it when it was entered
 * @param stoodBy the operator's reason for insisting, where given
 * @param order the count of entries in the step up to this one, from 1
 * @param warmSeconds the warm-up clock when it was entered, seconds
 * @param instrument what it was read from, where a meter itself was asked
 */
public record Entry(
    String text,
    double value,
    double resolution,
    List<Doubt> doubts,
    Optional<String> stoodBy,
    int order,
    double warmSeconds,
    Optional<Instrument> instrument) {
  /** Copies the doubts. */
  public Entry {
    doubts = List.copyOf(doubts);
  }

  /** Tells whether a doubt on this value waits for its answer. */
  public boolean isOpen() {
    return !doubts.isEmpty() && stoodBy.isEmpty();
  }

  Entry doubtedBy(List<Doubt> contradictions) {
    return new Entry(
        text, value, resolution, contradictions, Optional.empty(), order, warmSeconds, instrument);
  }

  Entry standingBy(String reason) {
    return new Entry(
        text, value, resolution, doubts, Optional.of(reason), order, warmSeconds, instrument);
  }
}
