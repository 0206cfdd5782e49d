package loadwalk.forecast.doubt;

import loadwalk.bench.ReadingId;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;

/** Tells with how many decimals a reading is typed in a walk, from the finest digits seen. */
final class EnteredDecimals {
  /** The fewest digits that an entry is taken to have. Chosen by hand. */
  private static final int FEWEST_DIGITS = 3;

  /** The most digits that somebody types. Chosen by hand. */
  private static final int MOST_DIGITS = 5;

  /** The most decimals that somebody types. Chosen by hand. */
  private static final int MOST_DECIMALS = 4;

  private EnteredDecimals() {}

  /** Returns the decimals that give an entry as many digits as the others of its kind have. */
  static int of(Evidence evidence, ReadingId id, double entered) {
    int digits = Math.max(FEWEST_DIGITS, TypedDigits.significant(entered));
    for (Observation observation : evidence.observations()) {
      Double value = observation.readings().get(id);
      if (value != null) {
        digits = Math.max(digits, TypedDigits.significant(value));
      }
    }
    if (!(entered > 0)) {
      return 1;
    }
    int places = Math.min(MOST_DIGITS, digits) - 1 - (int) Math.floor(Math.log10(entered));
    return Math.max(TypedDigits.decimals(entered), Math.min(MOST_DECIMALS, Math.max(0, places)));
  }
}
