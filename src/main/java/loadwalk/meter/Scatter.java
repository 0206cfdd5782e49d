package loadwalk.meter;

import java.util.List;
import java.util.Optional;
import loadwalk.numeric.Statistics;

/**
 * The type A uncertainty from repeated readings of one quantity (JCGM 100:2008, 4.2).
 *
 * @param count how many readings
 * @param mean their mean
 * @param standardUncertainty the standard uncertainty of the mean, s/√n (4.2.3)
 * @param spread largest minus least reading
 */
public record Scatter(int count, double mean, double standardUncertainty, double spread) {
  /** Returns the scatter of at least two readings; empty for fewer. */
  static Optional<Scatter> of(List<Double> readings) {
    if (readings.size() < 2) {
      return Optional.empty();
    }
    double[] values = readings.stream().mapToDouble(Double::doubleValue).toArray();
    double least = Statistics.quantile(0, values);
    double most = Statistics.quantile(1, values);
    return Optional.of(
        new Scatter(
            values.length,
            Statistics.mean(values),
            Statistics.standardDeviationOfMean(values),
            most - least));
  }

  /** Returns the standard deviation s of one reading (4.2.2). */
  public double deviation() {
    return standardUncertainty * Math.sqrt(count);
  }
}
