package loadwalk.result;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;

/**
 * The power that a sheet states for one load, with the conditions it was reached under.
 *
 * @param conditions those of the run it comes from; of a mean, see {@link Conditions#ofMean}
 * @param marks what a reader must know first, worst first
 * @param runs the ids of the runs that it rests on, the first one first
 * @param channelWatts the power in each load that was read, channel 1 or the one bridged load first
 * @param totalWatts the power in all loads
 * @param spread the lowest and the highest total of runs that disagree
 * @param rating the lower of the channel watts compared with the rating, if there is one
 * @param why why these runs were chosen, in one sentence; empty if there was no choice
 * @param budget the uncertainty budget of the total
 */
public record PublishedPower(
    Conditions conditions,
    List<Mark> marks,
    List<String> runs,
    List<Quantity> channelWatts,
    Quantity totalWatts,
    Optional<Spread> spread,
    Optional<RatingComparison> rating,
    String why,
    List<BudgetLine> budget) {
  /** Rejects missing parts and copies the lists. */
  public PublishedPower {
    Objects.requireNonNull(conditions, "conditions");
    Objects.requireNonNull(totalWatts, "totalWatts");
    Objects.requireNonNull(spread, "spread");
    Objects.requireNonNull(rating, "rating");
    Objects.requireNonNull(why, "why");
    marks = List.copyOf(marks);
    runs = List.copyOf(runs);
    channelWatts = List.copyOf(channelWatts);
    budget = List.copyOf(budget);
    if (runs.isEmpty() || channelWatts.isEmpty()) {
      throw new IllegalArgumentException("a published power rests on at least one run and load");
    }
  }

  /**
   * Runs at one load that disagree.
   *
   * @param low the lowest total
   * @param high the highest total
   */
  public record Spread(Quantity low, Quantity high) {}

  /** Returns how the load was connected. */
  public Mode mode() {
    return conditions.mode();
  }

  /** Returns the nominal load, ohms. */
  public double ohms() {
    return conditions.ohms();
  }

  /** Returns the point at which it was read. */
  public Criterion criterion() {
    return conditions.criterion();
  }

  /** Returns the run that it comes from, or the first of those it is the mean of. */
  public String fromStepId() {
    return runs.get(0);
  }

  /** Returns the power in the first load: that of channel 1, or of the one bridged load. */
  public Quantity watts() {
    return channelWatts.get(0);
  }

  /** Returns the mean of the channels; empty where only one was read. */
  public Optional<Quantity> meanWatts() {
    return channelWatts.stream()
        .reduce(Quantity::plus)
        .filter(sum -> channelWatts.size() > 1)
        .map(sum -> sum.scaledBy(1.0 / channelWatts.size()));
  }

  /**
   * Returns the balance of the channels: watts of channel 2 over those of channel 1; empty where
   * only one was read, or channel 1 gave nothing.
   */
  public Optional<Quantity> balance() {
    return channelWatts.size() > 1 && watts().value() > 0
        ? Optional.of(channelWatts.get(1).dividedBy(watts(), Unit.ONE))
        : Optional.empty();
  }
}
