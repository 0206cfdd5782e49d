package loadwalk.walk.fact;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;

/**
 * One value that the operator entered for a reading; later values are added and never overwrite it.
 *
 * @param text what was typed
 * @param value the value in SI units, finite
 * @param resolution one step of the last digit typed, in the reading's unit
 * @param doubts what contradicted it when it was entered
 * @param stoodBy the operator's reason for standing by it, if given
 * @param order its number among the entries of the step, from 1
 * @param warmSeconds the warm-up clock when it was entered, seconds
 * @param instrument what it was read from, if it came from a meter directly
 * @param heldSeconds how long the step had run when it was read, seconds; empty where no clock ran
 * @param cooled whether the amplifier counted as cold when it was read
 */
public record Entry(
    String text,
    double value,
    double resolution,
    List<Doubt> doubts,
    Optional<String> stoodBy,
    int order,
    double warmSeconds,
    Optional<Instrument> instrument,
    OptionalDouble heldSeconds,
    boolean cooled) {
  /** Copies the doubts. */
  public Entry {
    doubts = List.copyOf(doubts);
  }

  /** Tells whether a doubt on this value has no answer yet. */
  public boolean isOpen() {
    return !doubts.isEmpty() && stoodBy.isEmpty();
  }

  Entry doubtedBy(List<Doubt> contradictions) {
    return with(contradictions, Optional.empty());
  }

  Entry standingBy(String reason) {
    return with(doubts, Optional.of(reason));
  }

  /** Returns the entry without the doubt that asks for the point at which it was read. */
  Entry withItsPointSaid() {
    List<Doubt> others = doubts.stream().filter(d -> d.slip() != Slip.THD_OFF_LIMIT).toList();
    return with(others, stoodBy);
  }

  private Entry with(List<Doubt> contradictions, Optional<String> reason) {
    return new Entry(
        text,
        value,
        resolution,
        contradictions,
        reason,
        order,
        warmSeconds,
        instrument,
        heldSeconds,
        cooled);
  }
}
