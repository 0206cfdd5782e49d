package loadwalk.forecast.model;

/**
 * Allows for limits that set in below the least load measured so far.
 *
 * <p>Under a current limit the volts fall in proportion to the load (slope 1 of ln v over ln x);
 * with a converter at its power limit they fall with its square root (slope ½, a little more
 * because the supply sags too). The load at which a limit sets in is unknown, so the volts are
 * spread evenly from their value without a limit down to their value if the limit sets in at once.
 * Halving the load never raises the volts, and a current limit is the steepest fall there is.
 */
final class LimitOnset {
  /**
   * Largest difference between two loads that count as the same, a fraction: wiring and tolerance
   * of resistors. Chosen by hand.
   */
  static final double SAME_LOAD = 0.03;

  /** Chance per octave of load that a limit sets in, at rated loads. Set on the experiment. */
  private static final double RATE_ABOVE = 0.018;

  /** The same below the least rated load. Set on the experiment. */
  private static final double RATE_BELOW = 0.23;

  /**
   * Load per channel, ohms, below which {@link #RATE_LOW} is added whatever the ratings: car
   * amplifiers are built for 2 to 4 Ω per channel (common practice, no source).
   */
  private static final double LOW_OHMS = 2;

  /** Rate added per octave below {@link #LOW_OHMS}. Set on the experiment. */
  private static final double RATE_LOW = 0.42;

  /**
   * Chance that a limit seen at the greatest load measured is gone above it. Set on the experiment.
   */
  static final double RELEASED = 0.15;

  /**
   * Slopes of ln v over ln x below a limit: converter at its power limit, current limit, foldback.
   * The first is a little above ½ because the supply sags too. Set on the experiment.
   */
  static final double[] SLOPES = {0.54, 1, 1.35};

  /** Share of each. Set on the experiment. */
  static final double[] SLOPE_WEIGHTS = {0.6, 0.39, 0.01};

  /** Smallest extra slope of a further limit over the one already active. Chosen by hand. */
  static final double LEAST_STEEPER = 0.05;

  /** Number of normals that make up an even spread. Chosen by hand. */
  static final int STRATA = 7;

  /**
   * Standard deviation of each of these, as a fraction of its width: they overlap to an even
   * density.
   */
  static final double STRATUM_DEVIATION = 0.35;

  /**
   * Smallest standard deviation of each, ln volts: the knee is soft and the meter scatters. Set on
   * the experiment.
   */
  static final double SOFTNESS = 0.012;

  private final double leastRatedOhms;

  /**
   * Creates the rule for one amplifier.
   *
   * @param leastRatedOhms the least rated load of a channel, ohms
   */
  LimitOnset(double leastRatedOhms) {
    this.leastRatedOhms = leastRatedOhms;
  }

  /**
   * The range of loads measured.
   *
   * @param leastOhms the least load, ohms
   * @param mostOhms the greatest load, ohms
   * @param logVolts ln of the channel volts at the nearer of the two
   */
  record Reach(double leastOhms, double mostOhms, double logVolts) {}

  /** Returns the probability that a limit sets in between two loads of a channel, ohms. */
  double probability(double ohms, double fromOhms) {
    if (!(ohms < fromOhms * (1 - SAME_LOAD))) {
      return 0;
    }
    double below = octaves(Math.min(fromOhms, leastRatedOhms * (1 - SAME_LOAD)), ohms);
    double above = octaves(fromOhms, ohms) - below;
    double low = octaves(Math.min(fromOhms, LOW_OHMS), ohms);
    return 1 - Math.exp(-RATE_BELOW * below - RATE_ABOVE * above - RATE_LOW * low);
  }

  /**
   * Adds a prediction to a builder, with the chance of a steeper limit if it extrapolates.
   *
   * @param slope the slope of the limit already active, 0 if none is
   */
  void extend(
      Mixture.Builder builder, double share, Mixture told, double ohms, Reach reach, double slope) {
    double limited = probability(ohms, reach.leastOhms());
    double released = ohms > reach.mostOhms() * (1 + SAME_LOAD) ? RELEASED : 0;
    double edge = limited > 0 ? reach.leastOhms() : reach.mostOhms();
    double whole = Math.log(ohms / edge);
    double total = 0;
    for (int i = 0; i < SLOPES.length && limited + released > 0; i++) {
      if (SLOPES[i] > slope + LEAST_STEEPER) {
        double weight = share * (limited + released) * SLOPE_WEIGHTS[i];
        spread(builder, weight, told, reach.logVolts() + SLOPES[i] * whole);
        total += weight;
      }
    }
    told.addTo(builder, share - total);
  }

  /** Adds weight spread evenly from the smooth prediction to the furthest value. */
  private static void spread(
      Mixture.Builder builder, double weight, Mixture smooth, double furthest) {
    double mean = smooth.mean();
    double stratum = (furthest - mean) / STRATA;
    double deviation = Math.hypot(STRATUM_DEVIATION * stratum, SOFTNESS);
    for (int i = 0; i < STRATA; i++) {
      builder.add(weight / STRATA, mean + (i + 0.5) * stratum, deviation);
    }
  }

  private static double octaves(double from, double to) {
    return Math.max(0, Math.log(from / to) / Math.log(2));
  }
}
