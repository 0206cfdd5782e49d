package loadwalk.forecast.doubt;

import loadwalk.bench.ReadingId;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;

/** Works out how many decimals a reading is typed with, from the finest digits in the walk. */
final class EnteredDecimals {
  /** Fewest digits assumed for an entry. Chosen by hand. */
  private static final int FEWEST_DIGITS = 3;

  /** Most digits that anybody types. Chosen by hand. */
  private static final int MOST_DIGITS = 5;

  /** Most decimals that anybody types. Chosen by hand. */
  private static final int MOST_DECIMALS = 4;

  private EnteredDecimals() {}

  /** Returns the number of decimals that gives an entry as many digits as others of its kind. */
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
