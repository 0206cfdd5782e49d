package loadwalk.walk.fact;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;
import loadwalk.result.Criterion;

/**
 * One value that the operator entered for a reading; later values are added and never overwrite it.
 *
 * @param text what was typed
 * @param value the value in SI units, finite
 * @param resolution one step of the last digit typed, in the reading's unit
 * @param doubts what contradicted it when it was entered
 * @param stoodBy the operator's reason for standing by it, if given
 * @param point the point of reading that the operator named in answer to a doubt, if he did
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
    Optional<Criterion> point,
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
    return !doubts.isEmpty() && stoodBy.isEmpty() && point.isEmpty();
  }

  Entry doubtedBy(List<Doubt> contradictions) {
    return with(contradictions, Optional.empty(), Optional.empty());
  }

  Entry standingBy(String reason) {
    return with(doubts, Optional.of(reason), point);
  }

  /** Returns the entry with the point at which it was read, where its doubt asks for that. */
  Entry readAt(Criterion said) {
    boolean asked = doubts.stream().anyMatch(d -> d.slip() == Slip.THD_OFF_LIMIT);
    return asked && isOpen() ? with(doubts, stoodBy, Optional.of(said)) : this;
  }

  private Entry with(
      List<Doubt> contradictions, Optional<String> reason, Optional<Criterion> said) {
    return new Entry(
        text,
        value,
        resolution,
        contradictions,
        reason,
        said,
        order,
        warmSeconds,
        instrument,
        heldSeconds,
        cooled);
  }
}
