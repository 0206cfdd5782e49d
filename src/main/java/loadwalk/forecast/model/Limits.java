package loadwalk.forecast.model;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Looks for a limit that set in among the loads already measured.
 *
 * <p>If the volts fall much faster from one load to the next than before, the readings are split
 * there: above, E and r; below, a straight line of ln v over ln x with the slope of a limit. Each
 * split is weighed by its evidence against no split; its prior is the chance that a limit sets in
 * at that load.
 */
final class Limits {
  /** Fall of ln v per octave of load from which a limit is looked for. Set on the experiment. */
  private static final double LEAST_FALL = 0.08;

  /**
   * Mean fall of ln v per octave from which the limit may have set in above all loads measured. Set
   * on the experiment.
   */
  private static final double LEAST_MEAN_FALL = 0.15;

  /** Factor by which a fall must be steeper than the one before it. Set on the experiment. */
  private static final double STEEPER = 1.4;

  /** Largest difference between loads that count as one here, a fraction. Chosen by hand. */
  private static final double ONE_LOAD = 0.1;

  private Limits() {}

  /** Returns the loads of a channel, ohms, at and below which a limit may have set in. */
  static List<Double> candidates(List<WalkReadings.Point> points) {
    TreeMap<Double, double[]> means = new TreeMap<>();
    for (WalkReadings.Point point : points) {
      Double near = near(means, point.channelOhms());
      double[] sum = means.computeIfAbsent(near, x -> new double[2]);
      sum[0] += point.logVolts();
      sum[1]++;
    }
    List<Double> found = new ArrayList<>();
    if (means.size() > 1 && meanFall(means) > LEAST_MEAN_FALL) {
      found.add(means.lastKey());
    }
    double before = 0;
    Double above = null;
    for (Double ohms : means.descendingKeySet()) {
      if (above != null) {
        double octaves = Math.log(above / ohms) / Math.log(2);
        double fall = (mean(means.get(above)) - mean(means.get(ohms))) / octaves;
        if (fall > LEAST_FALL && fall > STEEPER * before) {
          found.add(ohms);
        }
        before = Math.max(fall, 0);
      }
      above = ohms;
    }
    return found;
  }

  private static double meanFall(TreeMap<Double, double[]> means) {
    double octaves = Math.log(means.lastKey() / means.firstKey()) / Math.log(2);
    double fall = mean(means.lastEntry().getValue()) - mean(means.firstEntry().getValue());
    return fall / octaves;
  }

  private static Double near(TreeMap<Double, double[]> means, double ohms) {
    for (Double known : means.keySet()) {
      if (Math.abs(known - ohms) < ONE_LOAD * known) {
        return known;
      }
    }
    return ohms;
  }

  private static double mean(double[] sum) {
    return sum[0] / sum[1];
  }
}
