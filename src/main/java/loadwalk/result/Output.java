package loadwalk.result;

import java.util.List;
import java.util.Optional;
import loadwalk.quantity.Quantity;

/**
 * The output of one step.
 *
 * @param atLimit whether it was worked out at the limit from pairs of volts and THD near it
 * @param volts RMS volts across channel 1's load, or the one bridged load
 * @param watts the power in that load
 * @param otherWatts the power in the other channel's load, if its volts were read
 * @param totalWatts the power in all loads
 * @param loadOhms the load of channel 1 as the power counts it
 * @param otherOhms the load of the other channel, if it counts in the total
 * @param budget the uncertainty budget of the total
 */
record Output(
    boolean atLimit,
    Optional<Quantity> volts,
    Optional<Quantity> watts,
    Optional<Quantity> otherWatts,
    Optional<Quantity> totalWatts,
    Optional<Quantity> loadOhms,
    Optional<Quantity> otherOhms,
    List<BudgetLine> budget) {
  /** What a step without a load gives. */
  static final Output NONE =
      new Output(
          false,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of());
}
