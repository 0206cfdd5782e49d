package loadwalk.forecast;

import java.util.List;

/**
 * Predicts one channel's volts at the limit for every load, from ratings and readings.
 *
 * <p>Everything is told of what one channel does into the load that it sees, so that a stereo
 * reading forecasts the bridged one of twice the load and the reverse. Model of a reading:
 *
 * <pre>ln v = ln E − ln(1 + r/x) + κ ln(Vs/V0) + δ(x) + bridge offset + scatter</pre>
 *
 * with x the load of the channel, κ = 1 for rails that follow the supply and 0 for regulated ones,
 * δ a random walk over octaves of load that stands for all that E and r do not describe. Given r, κ
 * and a common scale of the errors all is linear and normal, so ln E and δ are integrated in closed
 * form; r runs over a grid that closes in on its posterior, κ over two values, the scale over four,
 * which makes the tails heavy and lets the band widen by itself where the readings contradict the
 * model. Below the least load measured so far a limit may set in: see {@link LimitOnset}.
 */
final class OutputModel {
  private static final double LEAST_VARIATION = 0.004;

  private final RatingPrior prior;
  private final LimitOnset onset;
  private final List<WalkReadings.Point> points;
  private final List<OutputBranch> branches;
  private final double[] shares;

  OutputModel(RatingPrior prior, LimitOnset onset, List<WalkReadings.Point> points, Setup setup) {
    this.prior = prior;
    this.onset = onset;
    this.points = points;
    double[] logSupply = new double[points.size()];
    double least = 0;
    double most = 0;
    for (int i = 0; i < logSupply.length; i++) {
      double volts = points.get(i).supplyVolts();
      logSupply[i] = Double.isNaN(volts) ? 0 : Math.log(volts / setup.supplyVolts());
      least = i == 0 ? logSupply[i] : Math.min(least, logSupply[i]);
      most = i == 0 ? logSupply[i] : Math.max(most, logSupply[i]);
    }
    boolean told = most - least > LEAST_VARIATION;
    OutputBranch steady = new OutputBranch(prior, points, logSupply, 0, setup.voltsScatter());
    OutputBranch following =
        told ? new OutputBranch(prior, points, logSupply, 1, setup.voltsScatter()) : steady;
    branches = told ? List.of(steady, following) : List.of(steady);
    double regulated = setup.regulatedProbability();
    double odds =
        told
            ? Math.exp(following.logEvidence() - steady.logEvidence()) * (1 - regulated) / regulated
            : 0;
    double share = odds > 1e12 ? 1 : odds / (1 + odds);
    shares = new double[] {1 - share, share};
  }

  /**
   * What the model rests on besides the readings.
   *
   * @param supplyVolts the supply volts of the sequence
   * @param regulatedProbability the prior probability that the rails are regulated, between 0 and 1
   * @param voltsScatter the standard deviation of ln of a volts reading
   */
  record Setup(double supplyVolts, double regulatedProbability, double voltsScatter) {}

  /** Returns the probability that the rails are regulated, NaN where no reading can tell. */
  double regulatedProbability() {
    return branches.size() < 2 ? Double.NaN : shares[0];
  }

  /** Tells how many times wider than usual the readings scatter about the model. */
  double scale() {
    double sum = 0;
    for (int i = 0; i < branches.size(); i++) {
      sum += (branches.size() == 1 ? 1 : shares[i]) * branches.get(i).scale();
    }
    return points.isEmpty() ? 1 : sum;
  }

  /** Tells whether any reading has been taken. */
  boolean measured() {
    return !points.isEmpty();
  }

  /** Returns the density of ln of the channel volts that a new reading should show. */
  Mixture predict(double channelOhms, boolean bridged, double logSupply) {
    Mixture.Builder builder = new Mixture.Builder();
    if (points.isEmpty()) {
      addPrior(builder, channelOhms);
      return builder.build();
    }
    double leastOhms = Double.POSITIVE_INFINITY;
    double mostOhms = 0;
    for (WalkReadings.Point point : points) {
      leastOhms = Math.min(leastOhms, point.channelOhms());
      mostOhms = Math.max(mostOhms, point.channelOhms());
    }
    for (int i = 0; i < branches.size(); i++) {
      double share = branches.size() == 1 ? 1 : shares[i];
      if (share > 1e-6) {
        Mixture smooth = branches.get(i).predict(channelOhms, bridged, logSupply);
        onset.extend(builder, share, smooth, channelOhms, leastOhms, mostOhms);
      }
    }
    return builder.build();
  }

  private void addPrior(Mixture.Builder builder, double channelOhms) {
    double total = 0;
    double mean = 0;
    double square = 0;
    for (double log = -5.5; log < 1.6; log += 0.25) {
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
      prior.spread(builder, limited / 2, mean - 0.25 * drop, Math.hypot(extra, 0.15 * drop));
      prior.spread(builder, limited / 2, mean - 0.6 * drop, Math.hypot(extra, 0.25 * drop));
    }
  }
}
