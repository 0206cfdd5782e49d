package loadwalk.forecast.model;

import java.util.ArrayList;
import java.util.List;

/**
 * Predicts the volts of one channel at the limit for every load, from ratings and readings.
 *
 * <p>The model describes one channel into the load it drives, so a stereo reading forecasts the
 * bridged one into twice the load, and the reverse. Model of a reading:
 *
 * <pre>ln v = ln E − ln(1 + r/x) + κ ln(Vs/V0) + δ(x) + bridge offset + scatter</pre>
 *
 * with x the load of the channel, κ = 1 for rails that follow the supply and 0 for regulated ones,
 * and δ a random walk over octaves of load for everything that E and r do not describe. Given r, κ
 * and a common error scale, everything is linear and normal, so ln E and δ are integrated in closed
 * form. r runs over a grid that is refined around its posterior, κ over two values, and the scale
 * over four, which makes the tails heavy and lets the band widen by itself when readings contradict
 * the model. A limit may have set in ({@link LimitedShape}) or may set in below the least load
 * measured so far ({@link LimitOnset}).
 */
public final class OutputModel {
  /**
   * Change of ln of the supply volts from which readings show whether the rails follow. Set on the
   * experiment.
   */
  private static final double LEAST_VARIATION = 0.004;

  /**
   * Slopes of ln v over ln x of a limit among the loads measured: converter at its power limit,
   * between, current limit. Set on the experiment.
   */
  static final double[] LIMIT_SLOPES = {0.54, 0.75, 1};

  /** Share of each. Set on the experiment. */
  static final double[] LIMIT_SHARES = {0.6, 0.05, 0.35};

  /** Chance that a limit is active at every load measured. Set on the experiment. */
  static final double LIMITED_ALL_ALONG = 0.05;

  /**
   * Difference of ln of the supply volts from those expected below which the output is left
   * unchanged. Chosen by hand.
   */
  private static final double LEAST_OFF = 0.02;

  /** Share below which a shape is left out. Chosen by hand. */
  private static final double LEAST_SHARE = 1e-5;

  /** Ratio of loads up to which a reading belongs to the lower part of a limit. Chosen by hand. */
  private static final double ONE_LOAD = 1.1;

  /** Share of unlimited shapes from which they show the kind of rails. Chosen by hand. */
  private static final double TELLING = 0.5;

  /** Share of regulated rails that hold their volts whatever the supply does. Chosen by hand. */
  private static final double FIRM = 0.7;

  /** Share that follows by half. Chosen by hand. */
  private static final double HALF_FOLLOWING = 0.3;

  /** Standard deviation of how far those follow, as a fraction of the change. Chosen by hand. */
  private static final double HALF_FOLLOWING_SPREAD = 0.2;

  /** The same for rails that follow. Chosen by hand. */
  private static final double FOLLOWING_SPREAD = 0.1;

  /**
   * Lower end of the grid of ln of the source resistance in ohms over which the prior is summed:
   * from 4 mΩ to 5 Ω.
   */
  private static final double LOWEST = -5.5;

  /** Its upper end. */
  private static final double HIGHEST = 1.6;

  /** Its step. */
  private static final double STEP = 0.25;

  /**
   * Fall of ln of the volts below the least rated load, as a fraction of the fall of ln of the
   * load, in two equal parts. Chosen by hand.
   */
  static final double[] DROPS = {0.25, 0.6};

  /** Standard deviations of these. Chosen by hand. */
  static final double[] DROP_SPREADS = {0.15, 0.25};

  private final RatingPrior prior;
  private final double regulated;
  private final LimitOnset onset;
  private final List<WalkReadings.Point> points;
  private final List<OutputShape> shapes = new ArrayList<>();
  private double leastOhms = Double.POSITIVE_INFINITY;
  private double mostOhms;
  private double[] shares = {};
  private double[] leastLevels = {};
  private boolean railsTold;

  OutputModel(RatingPrior prior, LimitOnset onset, List<WalkReadings.Point> points, Setup setup) {
    this.prior = prior;
    this.onset = onset;
    this.points = points;
    regulated = setup.regulatedProbability();
    for (WalkReadings.Point point : points) {
      leastOhms = Math.min(leastOhms, point.channelOhms());
      mostOhms = Math.max(mostOhms, point.channelOhms());
    }
    if (!points.isEmpty()) {
      build(setup);
    }
  }

  /**
   * The input of the model besides the readings.
   *
   * @param supplyVolts the supply volts of the sequence
   * @param regulatedProbability the prior probability that the rails are regulated, between 0 and 1
   * @param voltsScatter the standard deviation of ln of a volts reading
   */
  record Setup(double supplyVolts, double regulatedProbability, double voltsScatter) {}

  /** Returns the probability that the rails are regulated, NaN if no reading can show it. */
  double regulatedProbability() {
    double both = railsTold ? shares[0] + shares[1] : 0;
    return both > TELLING ? shares[0] / both : Double.NaN;
  }

  /** Returns how many times wider than usual the readings scatter about the model. */
  double scale() {
    double sum = points.isEmpty() ? 1 : 0;
    for (int i = 0; i < shares.length; i++) {
      sum += shares[i] * shapes.get(i).scale();
    }
    return sum;
  }

  /** Returns whether any reading has been taken. */
  public boolean measured() {
    return !points.isEmpty();
  }

  /** Returns whether a load as heavy has been measured already. */
  boolean reaches(double channelOhms) {
    return channelOhms > leastOhms * (1 - LimitOnset.SAME_LOAD);
  }

  /** Returns the density of ln of the channel volts that a new reading should show. */
  Mixture predict(double channelOhms, boolean bridged, double logSupply) {
    Mixture.Builder builder = new Mixture.Builder();
    if (points.isEmpty()) {
      addPrior(builder, channelOhms);
      return builder.build();
    }
    for (int i = 0; i < shares.length; i++) {
      if (shares[i] > LEAST_SHARE) {
        OutputShape shape = shapes.get(i);
        Mixture told = shape.predict(channelOhms, bridged, logSupply);
        onset.extend(builder, shares[i], told, channelOhms, reach(i, channelOhms), shape.slope());
      }
    }
    return VoltsFallBound.of(points, channelOhms).hold(builder.build());
  }

  /**
   * Returns the density of the volts if the supply differs from that expected and no reading has
   * yet shown whether the volts follow it.
   *
   * @param steady the density of ln volts at the expected supply volts
   * @param off ln of the ratio of the supply volts entered to those expected
   */
  Mixture following(Mixture steady, double off) {
    if (railsTold || Math.abs(off) < LEAST_OFF) {
      return steady;
    }
    Mixture.Builder builder = new Mixture.Builder();
    steady.addTo(builder, regulated * FIRM);
    steady.addMoved(
        builder, regulated * HALF_FOLLOWING, 1, 0.5 * off, HALF_FOLLOWING_SPREAD * Math.abs(off));
    steady.addMoved(builder, 1 - regulated, 1, off, FOLLOWING_SPREAD * Math.abs(off));
    return builder.build();
  }

  /** Returns the range of loads measured, with the level of a shape at the nearer edge. */
  private LimitOnset.Reach reach(int shape, double channelOhms) {
    double level = 0;
    if (channelOhms < leastOhms) {
      level = leastLevels[shape];
    } else if (channelOhms > mostOhms) {
      level = shapes.get(shape).predict(mostOhms, false, 0).mean();
    }
    return new LimitOnset.Reach(leastOhms, mostOhms, level);
  }

  private void build(Setup setup) {
    double[] logSupply = new double[points.size()];
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < logSupply.length; i++) {
      double volts = points.get(i).supplyVolts();
      logSupply[i] = Double.isNaN(volts) ? 0 : Math.log(volts / setup.supplyVolts());
      least = Math.min(least, logSupply[i]);
      most = Math.max(most, logSupply[i]);
    }
    railsTold = most - least > LEAST_VARIATION;
    List<Double> logs = new ArrayList<>();
    double smooth = Math.log(1 - onset.probability(leastOhms, mostOhms));
    add(
        logs,
        new SmoothShape(prior, points, logSupply, 0, setup.voltsScatter()),
        smooth + (railsTold ? Math.log(regulated) : 0));
    if (railsTold) {
      add(
          logs,
          new SmoothShape(prior, points, logSupply, 1, setup.voltsScatter()),
          smooth + Math.log(1 - regulated));
    }
    for (double from : Limits.candidates(points)) {
      addLimits(logs, from, setup.voltsScatter());
    }
    normalise(logs);
  }

  private void add(List<Double> logs, OutputShape shape, double logPrior) {
    shapes.add(shape);
    logs.add(shape.logEvidence() + logPrior);
  }

  private void addLimits(List<Double> logs, double from, double scatter) {
    List<WalkReadings.Point> above =
        points.stream().filter(p -> p.channelOhms() > ONE_LOAD * from).toList();
    List<WalkReadings.Point> below =
        points.stream().filter(p -> p.channelOhms() <= ONE_LOAD * from).toList();
    double leastAbove =
        above.stream().mapToDouble(WalkReadings.Point::channelOhms).min().orElse(Double.NaN);
    SmoothShape upper =
        above.isEmpty()
            ? null
            : new SmoothShape(prior, above, new double[above.size()], 0, scatter);
    double chance = upper == null ? LIMITED_ALL_ALONG : onset.probability(from, leastAbove);
    for (int i = 0; i < LIMIT_SLOPES.length; i++) {
      double slope = LIMIT_SLOPES[i];
      OutputShape shape =
          upper == null
              ? new LimitedShape(below, slope, scatter)
              : new LimitedShape(upper, leastAbove, below, slope, scatter);
      add(logs, shape, Math.log(chance * LIMIT_SHARES[i]));
    }
  }

  private void normalise(List<Double> logs) {
    double best = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      best = Math.max(best, log);
    }
    shares = new double[logs.size()];
    double total = 0;
    for (int i = 0; i < shares.length; i++) {
      shares[i] = Math.exp(logs.get(i) - best);
      total += shares[i];
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= total;
    }
    leastLevels = new double[shares.length];
    for (int i = 0; i < shares.length; i++) {
      leastLevels[i] =
          shares[i] > LEAST_SHARE ? shapes.get(i).predict(leastOhms, false, 0).mean() : 0;
    }
  }

  private void addPrior(Mixture.Builder builder, double channelOhms) {
    double total = 0;
    double mean = 0;
    double square = 0;
    for (double log = LOWEST; log < HIGHEST; log += STEP) {
      double weight = Math.exp(prior.logDensityOfSource(log));
      double at = prior.logVolts(channelOhms, Math.exp(log));
      total += weight;
      mean += weight * at;
      square += weight * at * at;
    }
    mean /= total;
    double extra = Math.sqrt(Math.max(0, square / total - mean * mean));
    double least = prior.rated() ? prior.leastChannelOhms() : channelOhms;
    double limited = onset.probability(channelOhms, least);
    prior.spread(builder, 1 - limited, mean, extra);
    if (limited > 0) {
      double drop = Math.log(least / channelOhms);
      for (int i = 0; i < DROPS.length; i++) {
        double spread = Math.hypot(extra, DROP_SPREADS[i] * drop);
        prior.spread(builder, limited / DROPS.length, mean - DROPS[i] * drop, spread);
      }
    }
  }
}
