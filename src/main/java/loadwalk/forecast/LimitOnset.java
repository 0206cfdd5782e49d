package loadwalk.forecast;

/**
 * Allows for limits that set in below the loads measured so far.
 *
 * <p>A current limit takes the volts down with the load (slope 1 of ln v over ln x), a converter at
 * the end of its power takes them down with its root (slope ½). Where in the octaves ahead it sets
 * in is unknown, so the extra drop is spread evenly between none and the whole. Halving the load
 * never raises the volts, and a current limit is the steepest fall there is.
 */
final class LimitOnset {
  private static final double RATE_ABOVE = 0.06;
  private static final double RATE_BELOW = 0.22;
  private static final double[] SLOPES = {0.5, 1};
  private static final int STRATA = 5;

  private final double leastRatedOhms;

  /**
   * Makes a rule.
   *
   * @param leastRatedOhms the least load a channel is meant for, ohms
   */
  LimitOnset(double leastRatedOhms) {
    this.leastRatedOhms = leastRatedOhms;
  }

  /** Returns the probability that a limit sets in between two loads of a channel, ohms. */
  double probability(double ohms, double fromOhms) {
    if (!(ohms < fromOhms * 0.97)) {
      return 0;
    }
    double below = octaves(Math.min(fromOhms, leastRatedOhms * 0.97), ohms);
    double above = octaves(fromOhms, ohms) - below;
    return 1 - Math.exp(-RATE_BELOW * below - RATE_ABOVE * above);
  }

  /** Adds a smooth prediction to a builder, with the chance of a limit where it extrapolates. */
  void extend(
      Mixture.Builder builder,
      double share,
      Mixture smooth,
      double ohms,
      double leastOhms,
      double mostOhms) {
    double limited = probability(ohms, leastOhms);
    double released = ohms > mostOhms * 1.03 ? 0.15 : 0;
    smooth.addTo(builder, share * (1 - limited - released));
    if (limited > 0) {
      spread(builder, share * limited, smooth, -Math.log(leastOhms / ohms));
    } else if (released > 0) {
      spread(builder, share * released, smooth, Math.log(ohms / mostOhms));
    }
  }

  private static void spread(Mixture.Builder builder, double weight, Mixture smooth, double whole) {
    double mean = smooth.mean();
    double deviation = smooth.deviation();
    for (double slope : SLOPES) {
      double stratum = slope * whole / STRATA;
      for (int i = 0; i < STRATA; i++) {
        builder.add(
            weight / (SLOPES.length * STRATA),
            mean + (i + 0.5) * stratum,
            Math.hypot(deviation, 0.35 * stratum));
      }
    }
  }

  private static double octaves(double from, double to) {
    return Math.max(0, Math.log(from / to) / Math.log(2));
  }
}
