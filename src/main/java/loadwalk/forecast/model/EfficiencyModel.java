package loadwalk.forecast.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import loadwalk.numeric.PositiveMatrix;

/**
 * Predicts the supply current above idle from the output, through the efficiency at the limit.
 *
 * <p>η = 2 v²/x over Vs (I − I idle). Its logarithm is a random walk from load to load, starting
 * from the prior of the amplifier's class, plus scatter. Everything is normal, so the posterior is
 * exact for each of a few common error scales, which are mixed by their evidence. If the load was
 * measured before, that measurement decides. If no amperes are read at all, the class prior applies
 * at the greatest load measured. At other loads the efficiency changes with the volts as {@link
 * EfficiencyFall} describes.
 */
public final class EfficiencyModel {
  /** Standard deviation of ln η between readings at one load. Set on the experiment. */
  static final double SCATTER = 0.016;

  /** Standard deviation of ln of the amperes alone: meters and drift. Set on the experiment. */
  static final double AMPS_SCATTER = 0.0115;

  /** Standard deviation of ln η per root of an octave of load. Set on the experiment. */
  static final double WALK = 0.02;

  /**
   * Standard deviation of a step of ln η per fall of ln v: a limit changes the relation between
   * current and output. Set on the experiment.
   */
  static final double STEP_PER_FALL = 0.5;

  /** Common error scales, relative to the usual. Chosen by hand. */
  static final double[] SCALES = {0.8, 1.5, 4, 12};

  /** Prior of each scale; the last is for an amplifier like no other. Set on the experiment. */
  static final double[] SCALE_PRIORS = {0.60, 0.37, 0.029, 0.001};

  /** Smallest variance of ln η, against rounding. */
  private static final double LEAST_VARIANCE = 1e-8;

  /** Loads closer than this, octaves, count as one load: 3.5 %. */
  private static final double LEAST_OCTAVES = 0.05;

  /** Ratio of loads from which a fall of the volts between them shows its cause. Chosen by hand. */
  private static final double APART = 1.2;

  private final ClassPrior prior;
  private final int size;

  /**
   * ln of the channel volts at the greatest load measured, with or without amperes; NaN if none.
   */
  private final double lightest;

  private final double lightestOhms;

  private final double[] ohms;
  private final double[] logVolts;
  private final double[] cumulative;
  private final double[] scatter;

  /** Deviation of ln η of each reading from the class prior. */
  private final double[] residuals;

  private final EfficiencyFall fall;
  private final PositiveMatrix[] matrices = new PositiveMatrix[SCALES.length];
  private final double[][] pulls = new double[SCALES.length][];
  private final double[] shares = new double[SCALES.length];

  /**
   * Fits the readings of a walk.
   *
   * @param supply the supply volts at a current, amperes, for readings without them
   */
  EfficiencyModel(
      ClassPrior prior, IdleModel idle, List<WalkReadings.Point> all, DoubleUnaryOperator supply) {
    this.prior = prior;
    Optional<WalkReadings.Point> greatest =
        all.stream().max(Comparator.comparingDouble(WalkReadings.Point::channelOhms));
    lightest = greatest.map(WalkReadings.Point::logVolts).orElse(Double.NaN);
    lightestOhms = greatest.map(WalkReadings.Point::channelOhms).orElse(Double.NaN);
    List<WalkReadings.Point> points =
        all.stream()
            .filter(p -> p.supplyAmps() > 0)
            .sorted(Comparator.comparingDouble(WalkReadings.Point::channelOhms).reversed())
            .toList();
    size = points.size();
    ohms = new double[size];
    logVolts = new double[size];
    cumulative = new double[size];
    scatter = new double[size];
    residuals = new double[size];
    for (int i = 0; i < size; i++) {
      WalkReadings.Point point = points.get(i);
      double volts =
          Double.isNaN(point.supplyVolts())
              ? supply.applyAsDouble(point.supplyAmps())
              : point.supplyVolts();
      ohms[i] = point.channelOhms();
      logVolts[i] = point.logVolts();
      cumulative[i] = i == 0 ? 0 : cumulative[i - 1] + step(i - 1, i);
      scatter[i] = Math.hypot(SCATTER, idle.relativeError(point.supplyAmps()));
      residuals[i] =
          logOutput(point.logVolts(), point.channelOhms())
              - Math.log(volts)
              - idle.logAbove(point.supplyAmps())
              - prior.mean();
    }
    weigh();
    fall = lastFall();
  }

  /** Returns ln of the watts of both channels from ln of one channel's volts. */
  static double logOutput(double logChannelVolts, double channelOhms) {
    return Math.log(2) + 2 * logChannelVolts - Math.log(channelOhms);
  }

  /** Returns the prediction of ln η at a load, as a function of the volts. */
  EfficiencyAtLoad at(double channelOhms) {
    int near = nearest(channelOhms);
    boolean same = near >= 0 && Math.abs(channelOhms / ohms[near] - 1) < LimitOnset.SAME_LOAD;
    if (same) {
      return again(near);
    }
    double anchor = near < 0 ? lightest : logVolts[near];
    double anchorOhms = near < 0 ? lightestOhms : ohms[near];
    boolean free = Double.isNaN(anchor);
    EfficiencyAtLoad.Part[] parts = new EfficiencyAtLoad.Part[SCALES.length];
    double position = position(near, channelOhms);
    double spread = prior.spread() * prior.spread();
    for (int s = 0; s < SCALES.length; s++) {
      double mean = prior.mean();
      double[] covariances = new double[size];
      for (int i = 0; i < size; i++) {
        covariances[i] = spread + Math.min(cumulative[i], Math.min(position, cumulative[near]));
        mean += covariances[i] * pulls[s][i];
      }
      double scale = SCALES[s] * SCALES[s];
      double variance =
          Math.max(LEAST_VARIANCE, spread + position - explained(s, covariances))
              + scale * SCATTER * SCATTER;
      parts[s] = new EfficiencyAtLoad.Part(shares[s], mean, variance);
    }
    return free
        ? new EfficiencyAtLoad(parts, 0, 0, EfficiencyAtLoad.Ways.always(0))
        : new EfficiencyAtLoad(parts, anchor, Math.log(channelOhms / anchorOhms), fall);
  }

  /**
   * Returns the prediction at a load measured before: it draws the same current again. The scatter
   * of the volts does not matter, because it is in efficiency and volts alike and cancels (β = 2).
   */
  private EfficiencyAtLoad again(int near) {
    double volts = 0;
    double mean = 0;
    int count = 0;
    for (int i = 0; i < size; i++) {
      if (Math.abs(ohms[i] / ohms[near] - 1) < LimitOnset.SAME_LOAD) {
        volts += logVolts[i];
        mean += prior.mean() + residuals[i];
        count++;
      }
    }
    EfficiencyAtLoad.Part[] parts = new EfficiencyAtLoad.Part[SCALES.length];
    for (int s = 0; s < SCALES.length; s++) {
      double scatter = SCALES[s] * AMPS_SCATTER;
      double variance = scatter * scatter * (1 + 1.0 / count);
      parts[s] = new EfficiencyAtLoad.Part(shares[s], mean / count, variance);
    }
    return new EfficiencyAtLoad(parts, volts / count, 0, EfficiencyAtLoad.Ways.always(2));
  }

  private int nearest(double channelOhms) {
    int near = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < size; i++) {
      double distance = Math.abs(Math.log(ohms[i] / channelOhms));
      if (distance < least) {
        least = distance;
        near = i;
      }
    }
    return near;
  }

  /** Returns the variance of the random walk at a load, from the nearest load measured. */
  private double position(int near, double channelOhms) {
    if (near < 0) {
      return 0;
    }
    double octaves = Math.abs(Math.log(ohms[near] / channelOhms)) / Math.log(2);
    return cumulative[near] + WALK * WALK * octaves;
  }

  private double step(int from, int to) {
    double octaves = Math.log(ohms[from] / ohms[to]) / Math.log(2);
    double fall = octaves < LEAST_OCTAVES ? 0 : STEP_PER_FALL * (logVolts[to] - logVolts[from]);
    return WALK * WALK * octaves + fall * fall;
  }

  /** Returns how the efficiency changed at the last fall of the volts. */
  private EfficiencyFall lastFall() {
    for (int i = size - 1; i > 0; i--) {
      double fall = logVolts[i] - logVolts[i - 1];
      if (ohms[i - 1] / ohms[i] > APART && fall < 0) {
        return new EfficiencyFall(
            prior.switching(),
            Math.log(ohms[i] / ohms[i - 1]),
            fall,
            residuals[i] - residuals[i - 1]);
      }
    }
    return new EfficiencyFall(prior.switching());
  }

  private double explained(int part, double[] covariances) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      double[] row = matrices[part].inverse()[i];
      for (int j = 0; j < size; j++) {
        sum += covariances[i] * row[j] * covariances[j];
      }
    }
    return sum;
  }

  private void weigh() {
    double[] logs = new double[SCALES.length];
    double best = Double.NEGATIVE_INFINITY;
    for (int s = 0; s < SCALES.length; s++) {
      matrices[s] = PositiveMatrix.of(covariance(SCALES[s] * SCALES[s]), 0);
      pulls[s] = new double[size];
      double squares = 0;
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          pulls[s][i] += matrices[s].inverse()[i][j] * residuals[j];
        }
        squares += pulls[s][i] * residuals[i];
      }
      logs[s] = Math.log(SCALE_PRIORS[s]) - 0.5 * squares - 0.5 * matrices[s].logDeterminant();
      best = Math.max(best, logs[s]);
    }
    double total = 0;
    for (int s = 0; s < SCALES.length; s++) {
      shares[s] = Math.exp(logs[s] - best);
      total += shares[s];
    }
    for (int s = 0; s < SCALES.length; s++) {
      shares[s] /= total;
    }
  }

  private double[][] covariance(double scale) {
    double[][] covariance = new double[size][size];
    double spread = prior.spread() * prior.spread();
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        covariance[i][j] =
            spread
                + Math.min(cumulative[i], cumulative[j])
                + (i == j ? scale * scatter[i] * scatter[i] : 0);
      }
    }
    return covariance;
  }
}
