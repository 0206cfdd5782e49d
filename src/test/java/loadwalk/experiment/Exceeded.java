package loadwalk.experiment;

import java.util.Locale;

/**
 * What a step truly asks of one part of the bench over what that part bears.
 *
 * @param part which part
 * @param ratio asked over borne, exceeded above 1
 */
record Exceeded(Part part, double ratio) {
  /** What a step may be too much for. */
  enum Part {
    SUPPLY,
    OWN_FUSES,
    BENCH_FUSE,
    LEAD,
    RESISTOR,
    LEAST_LOAD,
    /** It shuts itself off at this load. */
    AMPLIFIER;

    /** Tells whether the bench says how much it bears; nobody says when an amplifier shuts off. */
    boolean isEntered() {
      return this != AMPLIFIER;
    }
  }

  boolean isReal() {
    return ratio > 1;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s %.2f", part, ratio);
  }
}
