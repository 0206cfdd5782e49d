package loadwalk.forecast;

import loadwalk.bench.ReadingId;

/** Tells with how many decimals a reading is typed in a walk, from the finest seen. */
final class EnteredDecimals {
  private static final int MOST = 4;

  private EnteredDecimals() {}

  /** Returns the most decimals among the entry and earlier readings of its kind. */
  static int of(Evidence evidence, ReadingId id, double entered) {
    int decimals = TypedDigits.decimals(entered);
    for (Observation observation : evidence.observations()) {
      Double value = observation.readings().get(id);
      if (value != null) {
        decimals = Math.max(decimals, TypedDigits.decimals(value));
      }
    }
    return Math.min(MOST, decimals);
  }
}
