package loadwalk.result;

import java.util.Optional;
import loadwalk.bench.Amplifier;
import loadwalk.quantity.Quantity;

/**
 * Compares powers with the ratings of an amplifier.
 *
 * @param amplifier the amplifier
 * @param asked what the walk's sequence asks for
 */
record Ratings(Amplifier amplifier, Asked asked) {
  /**
   * Compares the power in one load with the rating of that load; empty where there is none.
   *
   * @param conditions those that the power was reached under
   * @param watts the power in the load
   * @param load the load that the power was computed with, ohms
   * @param supplyVolts the volts read at the amplifier's terminals
   */
  Optional<RatingComparison> of(
      Conditions conditions, Quantity watts, Quantity load, Optional<Quantity> supplyVolts) {
    RatingJudge judge =
        new RatingJudge(conditions, asked, load, supplyVolts, amplifier.regulated());
    return amplifier
        .rating(conditions.mode(), conditions.ohms())
        .map(rated -> judge.compare(rated, watts));
  }
}
