package loadwalk.forecast.model;

/**
 * The fall of the efficiency with the volts, from a measured load to a heavier one: η ∝ v^β.
 *
 * <p>How fast the volts fall shows the cause. With sagging rails, or a converter at its power
 * limit, the losses follow the output: β ≈ ¼, and the volts fall at most with the square root of
 * the load. With resistance in the output stage or a current limit, class B draws the same current
 * as before: β ≈ 1; under a current limit the volts fall in proportion to the load. A switching
 * stage returns the energy that it does not deliver: β ≈ 0, apart from the heat in its own
 * resistance. So the share of each β depends on the slope of ln v over ln x. (Energy balance of
 * each stage; the shares and spreads are common practice, no source.) A fall seen before at a
 * similar slope is likely to have the same cause.
 */
final class EfficiencyFall implements EfficiencyAtLoad.Ways {
  /**
   * Slopes of ln v over ln x at which the shares are given, with linear interpolation between them.
   * Chosen by hand.
   */
  private static final double[] SLOPES = {0.35, 0.55, 0.70, 0.85};

  /**
   * β of a switching stage, sagging rails, several causes at once, resistance or current limit.
   * Energy balance of each stage, rounded; checked by the experiment.
   */
  private static final double[] BETAS = {0.07, 0.25, 0.55, 0.95};

  /** Standard deviation of each β. Set on the experiment. */
  private static final double[] SPREADS = {0.07, 0.08, 0.2, 0.025};

  /**
   * Shares of each β by slope if the supply current follows the load current: classes A to H. Set
   * on the experiment.
   */
  private static final double[][] LINEAR = {
    {0.03, 0.02, 0.02, 0.02},
    {0.45, 0.15, 0.03, 0.02},
    {0.10, 0.45, 0.47, 0.08},
    {0.42, 0.38, 0.48, 0.88}
  };

  /** The same for a switching stage. Set on the experiment. */
  private static final double[][] SWITCHING = {
    {0.41, 0.60, 0.80, 0.82},
    {0.22, 0.30, 0.15, 0.15},
    {0.12, 0.05, 0.03, 0.02},
    {0.25, 0.05, 0.02, 0.01}
  };

  /**
   * Slopes for the last β: if the volts fall slowly the supply sags too, which lowers β a little.
   * Set on the experiment.
   */
  private static final double[] LAST_SLOPES = {0.1, 0.4, 0.85};

  /** The last β at these slopes. Set on the experiment. */
  private static final double[] LAST_BETAS = {0.9, 0.95, 1};

  /** Fall of ln v from which β is derived; a smaller fall is scatter. Set on the experiment. */
  private static final double LEAST_FALL = 0.03;

  /** Standard deviation of the change of ln η between two readings. Set on the experiment. */
  static final double FALL_SCATTER = 0.024;

  /** Smallest share of each cause, so that no single reading rules one out. Chosen by hand. */
  private static final double LEAST_SHARE = 1e-6;

  /**
   * Probability that falls at similar slopes have the same cause, in addition to {@link
   * #SAME_CAUSE_ANYWAY}. Set on the experiment.
   */
  private static final double SAME_CAUSE = 0.72;

  /** The same at any slope. Set on the experiment. */
  private static final double SAME_CAUSE_ANYWAY = 0.2;

  /**
   * Standard deviation of the difference between slopes that count as similar. Set on the
   * experiment.
   */
  private static final double LIKE_SLOPES = 0.3;

  private final double switching;
  private final double seenSlope;
  private final double[] seenShares;

  /**
   * Starts from the last fall of the volts.
   *
   * @param switching the probability that the output stage is switching
   * @param logLoads ln of the ratio of the heavier load to the lighter, below 0
   * @param fall the change of ln v, below 0 for a fall; NaN if none was seen
   * @param change the change of ln η
   */
  EfficiencyFall(double switching, double logLoads, double fall, double change) {
    this.switching = switching;
    seenSlope = fall / logLoads;
    seenShares = fall < -LEAST_FALL ? seen(change / fall, FALL_SCATTER / -fall) : null;
  }

  /** Starts with no fall seen yet. */
  EfficiencyFall(double switching) {
    this(switching, Double.NaN, Double.NaN, Double.NaN);
  }

  @Override
  public EfficiencyAtLoad.Way[] at(double slope) {
    double kept = seenShares == null ? 0 : SAME_CAUSE_ANYWAY + SAME_CAUSE * likeness(slope);
    EfficiencyAtLoad.Way[] ways = new EfficiencyAtLoad.Way[BETAS.length];
    for (int i = 0; i < ways.length; i++) {
      double seen = kept > 0 ? seenShares[i] : 0;
      ways[i] =
          new EfficiencyAtLoad.Way(
              (1 - kept) * share(i, slope) + kept * seen, beta(i, slope), SPREADS[i]);
    }
    return ways;
  }

  private double likeness(double slope) {
    double z = (slope - seenSlope) / LIKE_SLOPES;
    return Math.exp(-0.5 * z * z);
  }

  /** Returns the shares given an observed β, by Bayes' rule. */
  private double[] seen(double beta, double noise) {
    double[] shares = new double[BETAS.length];
    double total = 0;
    for (int i = 0; i < shares.length; i++) {
      double spread = Math.hypot(SPREADS[i], noise);
      double z = (beta - beta(i, seenSlope)) / spread;
      shares[i] = share(i, seenSlope) * Normal.density(z) / spread + LEAST_SHARE;
      total += shares[i];
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= total;
    }
    return shares;
  }

  private double share(int way, double slope) {
    return (1 - switching) * between(SLOPES, LINEAR[way], slope)
        + switching * between(SLOPES, SWITCHING[way], slope);
  }

  private static double beta(int way, double slope) {
    return way == BETAS.length - 1 ? between(LAST_SLOPES, LAST_BETAS, slope) : BETAS[way];
  }

  private static double between(double[] places, double[] values, double at) {
    int next = 1;
    while (next < places.length - 1 && at > places[next]) {
      next++;
    }
    double part = (at - places[next - 1]) / (places[next] - places[next - 1]);
    double inside = Math.min(1, Math.max(0, part));
    return values[next - 1] + inside * (values[next] - values[next - 1]);
  }
}
