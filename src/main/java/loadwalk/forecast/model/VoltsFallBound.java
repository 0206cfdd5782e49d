package loadwalk.forecast.model;

import java.util.List;

/**
 * An upper bound on the volts below the least load measured, from the bend of the volts.
 *
 * <p>ln v over ln x is concave: source resistance, a converter at its power limit and a current
 * limit all make the volts fall faster the lower the load, never slower. So below the least load
 * measured they fall at least as fast as between it and the next one up.
 *
 * @param bound the highest ln of a channel's volts, infinite if fewer than two loads are measured
 * @param softness its standard deviation, from the readings behind it
 */
record VoltsFallBound(double bound, double softness) {
  /** Standard deviation of ln of a volts reading. Set on the experiment. */
  private static final double SCATTER = 0.0065;

  /**
   * Standard deviation of ln volts from drift and from the difference between bridged and stereo
   * readings. Set on the experiment.
   */
  private static final double LOOSE = 0.008;

  /** Probability that the volts bend this way at all. Chosen by hand. */
  private static final double CERTAINTY = 0.99;

  /** Returns the bound at a load of a channel, ohms. */
  static VoltsFallBound of(List<WalkReadings.Point> points, double channelOhms) {
    Load least = Load.above(points, 0);
    Load next = Load.above(points, least.ohms() * (1 + LimitOnset.SAME_LOAD));
    boolean below = channelOhms < least.ohms() * (1 - LimitOnset.SAME_LOAD);
    if (next.count() == 0 || !below) {
      return new VoltsFallBound(Double.POSITIVE_INFINITY, LOOSE);
    }
    double octaves = Math.log(least.ohms() / channelOhms) / Math.log(next.ohms() / least.ohms());
    double fall = Math.max(0, next.logVolts() - least.logVolts());
    double variance =
        (1 + octaves) * (1 + octaves) / least.count() + octaves * octaves / next.count() + 1;
    return new VoltsFallBound(
        least.logVolts() - octaves * fall, Math.hypot(SCATTER * Math.sqrt(variance), LOOSE));
  }

  /** Returns a density of ln of a channel's volts, held below the bound. */
  Mixture hold(Mixture density) {
    return bound == Double.POSITIVE_INFINITY
        ? density
        : density.heldBelow(bound, softness, CERTAINTY);
  }

  /** The readings at one load: their mean and their number. */
  private record Load(double ohms, double logVolts, int count) {
    static Load above(List<WalkReadings.Point> points, double limit) {
      double least = Double.POSITIVE_INFINITY;
      for (WalkReadings.Point point : points) {
        if (point.channelOhms() > limit) {
          least = Math.min(least, point.channelOhms());
        }
      }
      double sum = 0;
      int count = 0;
      for (WalkReadings.Point point : points) {
        boolean here = point.channelOhms() > limit;
        if (here && point.channelOhms() < least * (1 + LimitOnset.SAME_LOAD)) {
          sum += point.logVolts();
          count++;
        }
      }
      return new Load(least, sum / count, count);
    }
  }
}
