package loadwalk.forecast.model;

import java.util.List;

/**
 * An output with a limit of given slope below a load: E and r above it, a line of ln v over ln x
 * below.
 *
 * <p>The knee of a real limit is soft and a converter at its power limit is between the slopes, so
 * the line may wander by a few percent per octave.
 */
final class LimitedShape implements OutputShape {
  /**
   * Standard deviation of ln v about the line per root of an octave of load: the knee is soft. Set
   * on the experiment.
   */
  static final double WALK = 0.04;

  /**
   * Standard deviation of the offset of all bridged readings against stereo, ln volts. Set on the
   * experiment.
   */
  static final double BRIDGE = 0.008;

  /** Common error scales, relative to the usual. Chosen by hand. */
  static final double[] SCALES = {0.75, 1.3, 3};

  /** Prior of each scale. Set on the experiment. */
  static final double[] SCALE_PRIORS = {0.5, 0.4, 0.1};

  /** Smallest width of the gap in which the line may begin, ln volts. Chosen by hand. */
  static final double LEAST_GAP = 0.02;

  /** Standard deviation of the edges of that gap, ln volts. Chosen by hand. */
  static final double GAP_EDGE = 0.03;

  /** Load at which the random walk begins, ohms: above any measured load. */
  private static final double WALK_ORIGIN_OHMS = 16;

  /**
   * Weight of the line between the last load above the limit and the first below: either part may
   * apply.
   */
  private static final double LOWER_IN_GAP = 0.5;

  private final SmoothShape above;
  private final List<WalkReadings.Point> points;
  private final double mostOhms;
  private final double leastOhmsAbove;
  private final double slope;
  private final double scatter;
  private final LevelFit fit;
  private final double[] residuals;
  private final double[] shares = new double[SCALES.length];
  private final double logEvidence;

  /** Fits a line through all readings: the limit is active at every load measured. */
  LimitedShape(List<WalkReadings.Point> points, double slope, double scatter) {
    this(null, Double.POSITIVE_INFINITY, points, slope, scatter);
  }

  /**
   * Fits the lower part.
   *
   * @param above the fit of the readings above the limit
   * @param leastOhmsAbove the least load among those above, ohms
   * @param points the readings below
   * @param slope the slope of ln v over ln x below
   * @param scatter the standard deviation of ln of a volts reading
   */
  LimitedShape(
      SmoothShape above,
      double leastOhmsAbove,
      List<WalkReadings.Point> points,
      double slope,
      double scatter) {
    this.above = above;
    this.leastOhmsAbove = leastOhmsAbove;
    this.points = points;
    this.slope = slope;
    this.scatter = scatter;
    int n = points.size();
    double most = 0;
    double[][] covariance = new double[n][n];
    residuals = new double[n];
    for (int i = 0; i < n; i++) {
      WalkReadings.Point a = points.get(i);
      most = Math.max(most, a.channelOhms());
      residuals[i] = a.logVolts() - slope * Math.log(a.channelOhms());
      for (int j = 0; j < n; j++) {
        WalkReadings.Point b = points.get(j);
        covariance[i][j] =
            shared(a.channelOhms(), b.channelOhms(), a.bridged() && b.bridged())
                + (i == j ? scatter * scatter : 0);
      }
    }
    mostOhms = most;
    fit = new LevelFit(covariance);
    logEvidence =
        above == null
            ? weigh(n) - 0.5 * Math.log(2 * Math.PI)
            : above.logEvidence() + weigh(n) + onset();
  }

  @Override
  public double logEvidence() {
    return logEvidence;
  }

  @Override
  public double scale() {
    return above == null ? 1 : above.scale();
  }

  @Override
  public double slope() {
    return slope;
  }

  @Override
  public Mixture predict(double channelOhms, boolean bridged, double logSupply) {
    if (above != null && channelOhms > (1 - LimitOnset.SAME_LOAD) * leastOhmsAbove) {
      return above.predict(channelOhms, bridged, logSupply);
    }
    Mixture.Builder builder = new Mixture.Builder();
    double lower =
        above == null || channelOhms < (1 + LimitOnset.SAME_LOAD) * mostOhms ? 1 : LOWER_IN_GAP;
    addBelow(builder, lower, channelOhms, bridged);
    if (lower < 1) {
      above.predict(channelOhms, bridged, logSupply).addTo(builder, 1 - lower);
    }
    return builder.build();
  }

  private void addBelow(Mixture.Builder builder, double weight, double ohms, boolean bridged) {
    int n = points.size();
    double[] covariances = new double[n];
    for (int i = 0; i < n; i++) {
      WalkReadings.Point point = points.get(i);
      covariances[i] = shared(point.channelOhms(), ohms, point.bridged() && bridged);
    }
    LevelFit.Prediction prediction =
        fit.toward(covariances, shared(ohms, ohms, bridged) + scatter * scatter);
    double mean = prediction.mean(residuals) + slope * Math.log(ohms);
    double deviation = Math.sqrt(prediction.variance());
    for (int s = 0; s < SCALES.length; s++) {
      builder.add(weight * shares[s], mean, SCALES[s] * deviation);
    }
  }

  private double weigh(int n) {
    double squares = fit.squares(residuals);
    double total = 0;
    double base = -0.5 * fit.logVolume() + 0.5 * Math.log(2 * Math.PI);
    for (int s = 0; s < SCALES.length; s++) {
      double scale = SCALES[s];
      shares[s] =
          SCALE_PRIORS[s] * Math.exp(-0.5 * squares / (scale * scale)) / Math.pow(scale, n - 1);
      total += shares[s];
    }
    if (!(total > 0)) {
      shares[SCALES.length - 1] = 1;
      return Double.NEGATIVE_INFINITY;
    }
    for (int s = 0; s < SCALES.length; s++) {
      shares[s] /= total;
    }
    return base + Math.log(total);
  }

  /** Returns ln of the density of the start of the line, which is even within the gap. */
  private double onset() {
    double room = slope * Math.log(leastOhmsAbove / mostOhms);
    double begin = fit.level(residuals) + slope * Math.log(mostOhms);
    double top = above.predict(mostOhms, false, 0).mean();
    double bottom = above.predict(leastOhmsAbove, false, 0).mean() - room;
    double width = Math.max(LEAST_GAP, top - bottom);
    double beyond = Math.max(0, Math.max(begin - top, bottom - begin));
    return -Math.log(width) - 0.5 * Math.pow(beyond / GAP_EDGE, 2);
  }

  private static double shared(double ohms, double otherOhms, boolean bothBridged) {
    double octaves =
        Math.max(0, Math.log(WALK_ORIGIN_OHMS / Math.max(ohms, otherOhms)) / Math.log(2));
    return WALK * WALK * octaves + (bothBridged ? BRIDGE * BRIDGE : 0);
  }
}
