package loadwalk.forecast.model;

import java.util.List;

/**
 * An output without a limit, for one kind of rails: a posterior over source resistance and error
 * scale.
 */
final class SmoothShape implements OutputShape {
  /** Nodes of the grid of ln of the source resistance. Chosen by hand. */
  private static final int NODES = 21;

  /** Number of times the grid is refined. Chosen by hand. */
  private static final int ROUNDS = 3;

  /** Lower end of the grid, ln of ohms: 4 mΩ. */
  private static final double LOWEST = -5.5;

  /** Upper end of the grid, ln of ohms: 5 Ω. */
  private static final double HIGHEST = 1.6;

  /**
   * Distance of ln of the posterior below its peak up to which a node is kept: 6e-6 of the peak.
   */
  private static final double KEPT = 12;

  /** Common error scales, relative to the usual. Chosen by hand. */
  static final double[] SCALES = {0.75, 1.3, 3, 9};

  /**
   * ln of the prior of each scale; the last is for an amplifier like no other. Set on the
   * experiment.
   */
  static final double[] LOG_SCALE_PRIORS = {
    Math.log(0.55), Math.log(0.42), Math.log(0.029), Math.log(0.001)
  };

  /** Standard deviation of δ per root of an octave of load. Set on the experiment. */
  static final double WALK = 0.008;

  /**
   * Standard deviation of the offset of all bridged readings against stereo, ln volts. Set on the
   * experiment.
   */
  static final double BRIDGE = 0.008;

  /** Load at which the random walk begins, ohms: above any measured load. */
  private static final double WALK_ORIGIN_OHMS = 16;

  /** Fraction of the width within which nodes become one part. Chosen by hand. */
  private static final double MERGED = 0.6;

  private final List<WalkReadings.Point> points;
  private final double kappa;
  private final double scatter;
  private final double[] sourceOhms = new double[NODES];
  private final double[][] residuals = new double[NODES][];
  private final double[][] weights = new double[SCALES.length][NODES];
  private final LevelFit fit;
  private final double[] ohms;

  /**
   * For each point, the first point with the same load, so that the droop of a load is worked out
   * once.
   */
  private final int[] first;

  private double logEvidence;

  SmoothShape(
      RatingPrior prior,
      List<WalkReadings.Point> points,
      double[] logSupply,
      double kappa,
      double scatter) {
    this.points = points;
    this.kappa = kappa;
    this.scatter = scatter;
    int n = points.size();
    ohms = points.stream().mapToDouble(WalkReadings.Point::channelOhms).toArray();
    first = new int[n];
    for (int i = 0; i < n; i++) {
      while (ohms[first[i]] != ohms[i]) {
        first[i]++;
      }
    }
    fit = n == 0 ? null : new LevelFit(covariance());
    if (n > 0) {
      double[] levels = new double[n];
      for (int i = 0; i < n; i++) {
        levels[i] = points.get(i).logVolts() - kappa * logSupply[i];
      }
      closeIn(prior, levels);
    }
  }

  @Override
  public double logEvidence() {
    return logEvidence;
  }

  @Override
  public double scale() {
    double sum = 0;
    for (int s = 0; s < SCALES.length; s++) {
      for (double weight : weights[s]) {
        sum += weight * SCALES[s];
      }
    }
    return sum;
  }

  @Override
  public double slope() {
    return 0;
  }

  @Override
  public Mixture predict(double channelOhms, boolean bridged, double logSupply) {
    int n = points.size();
    double[] covariances = new double[n];
    for (int i = 0; i < n; i++) {
      WalkReadings.Point point = points.get(i);
      covariances[i] = shared(point.channelOhms(), channelOhms, point.bridged() && bridged);
    }
    double variance = shared(channelOhms, channelOhms, bridged) + scatter * scatter;
    LevelFit.Prediction prediction = fit.toward(covariances, variance);
    double deviation = Math.sqrt(prediction.variance());
    double[] means = new double[NODES];
    for (int node = 0; node < NODES; node++) {
      means[node] =
          prediction.mean(residuals[node])
              - Math.log1p(sourceOhms[node] / channelOhms)
              + kappa * logSupply;
    }
    Mixture.Builder builder = new Mixture.Builder();
    for (int s = 0; s < SCALES.length; s++) {
      merge(builder, weights[s], means, SCALES[s] * deviation);
    }
    return builder.build();
  }

  /** Adds the nodes as parts, merging neighbours within a fraction of the width. */
  private static void merge(
      Mixture.Builder builder, double[] weights, double[] means, double width) {
    double total = 0;
    double mean = 0;
    double square = 0;
    for (int node = 0; node < NODES; node++) {
      if (total > 0 && Math.abs(means[node] - mean / total) > MERGED * width) {
        addMerged(builder, total, mean, square, width);
        total = 0;
        mean = 0;
        square = 0;
      }
      total += weights[node];
      mean += weights[node] * means[node];
      square += weights[node] * means[node] * means[node];
    }
    addMerged(builder, total, mean, square, width);
  }

  private static void addMerged(
      Mixture.Builder builder, double total, double mean, double square, double width) {
    if (total > 0) {
      double middle = mean / total;
      double between = Math.max(0, square / total - middle * middle);
      builder.add(total, middle, Math.sqrt(width * width + between));
    }
  }

  private double[][] covariance() {
    int n = points.size();
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        WalkReadings.Point a = points.get(i);
        WalkReadings.Point b = points.get(j);
        covariance[i][j] =
            shared(a.channelOhms(), b.channelOhms(), a.bridged() && b.bridged())
                + (i == j ? scatter * scatter : 0);
      }
    }
    return covariance;
  }

  private static double shared(double ohms, double otherOhms, boolean bothBridged) {
    double octaves =
        Math.max(0, Math.log(WALK_ORIGIN_OHMS / Math.max(ohms, otherOhms)) / Math.log(2));
    return WALK * WALK * octaves + (bothBridged ? BRIDGE * BRIDGE : 0);
  }

  private void closeIn(RatingPrior prior, double[] levels) {
    double low = LOWEST;
    double high = HIGHEST;
    for (int round = 0; round < ROUNDS; round++) {
      double step = (high - low) / (NODES - 1);
      double best = weigh(prior, levels, low, step);
      int first = 0;
      int last = NODES - 1;
      double[] marginal = marginals();
      while (first < NODES - 2 && marginal[first + 1] < best - KEPT) {
        first++;
      }
      while (last > first + 1 && marginal[last - 1] < best - KEPT) {
        last--;
      }
      if (last - first > NODES / 2 || round == ROUNDS - 1) {
        break;
      }
      high = low + last * step;
      low = low + first * step;
    }
    normalise();
  }

  /** Fills the nodes with log weights and returns the best marginal. */
  private double weigh(RatingPrior prior, double[] levels, double low, double step) {
    int n = levels.length;
    double volume = 0.5 * fit.logVolume();
    double[] droop = new double[n];
    double best = Double.NEGATIVE_INFINITY;
    for (int node = 0; node < NODES; node++) {
      double log = low + node * step;
      sourceOhms[node] = Math.exp(log);
      double[] residual = new double[n];
      for (int i = 0; i < n; i++) {
        int same = first[i];
        droop[i] = same < i ? droop[same] : Math.log1p(sourceOhms[node] / ohms[i]);
        residual[i] = levels[i] + droop[i];
      }
      residuals[node] = residual;
      double squares = fit.squares(residual);
      double base = prior.logDensityOfSource(log) + Math.log(step) - volume;
      for (int s = 0; s < SCALES.length; s++) {
        weights[s][node] =
            base
                + LOG_SCALE_PRIORS[s]
                - 0.5 * squares / (SCALES[s] * SCALES[s])
                - (n - 1) * Math.log(SCALES[s]);
        best = Math.max(best, weights[s][node]);
      }
    }
    return best;
  }

  private double[] marginals() {
    double[] marginal = weights[0].clone();
    for (int s = 1; s < SCALES.length; s++) {
      for (int node = 0; node < NODES; node++) {
        marginal[node] = Math.max(marginal[node], weights[s][node]);
      }
    }
    return marginal;
  }

  private void normalise() {
    double best = Double.NEGATIVE_INFINITY;
    for (double[] row : weights) {
      for (double log : row) {
        best = Math.max(best, log);
      }
    }
    double total = 0;
    for (double[] row : weights) {
      for (int node = 0; node < NODES; node++) {
        row[node] = Math.exp(row[node] - best);
        total += row[node];
      }
    }
    for (double[] row : weights) {
      for (int node = 0; node < NODES; node++) {
        row[node] /= total;
      }
    }
    logEvidence = best + Math.log(total);
  }
}
