package loadwalk.result;

import java.util.Objects;
import loadwalk.bench.Mode;
import loadwalk.quantity.Quantity;

/**
 * The power a sheet states for one load.
 *
 * @param mode how the load was connected
 * @param ohms the nominal load, ohms
 * @param fromStepId the run it comes from: the first one or a recheck
 * @param totalWatts the power in all loads
 * @param perLoad the power in one load: the mean of the channels in stereo
 * @param criterion the point at which it was read
 * @param why why this run was chosen, in one sentence; empty if there was no choice
 */
public record PublishedPower(
    Mode mode,
    double ohms,
    String fromStepId,
    Quantity totalWatts,
    Quantity perLoad,
    Criterion criterion,
    String why) {
  /** Rejects missing parts. */
  public PublishedPower {
    Objects.requireNonNull(mode, "mode");
    Objects.requireNonNull(fromStepId, "fromStepId");
    Objects.requireNonNull(totalWatts, "totalWatts");
    Objects.requireNonNull(perLoad, "perLoad");
    Objects.requireNonNull(criterion, "criterion");
    Objects.requireNonNull(why, "why");
  }
}
