package loadwalk.meter;

import java.util.List;
import java.util.Optional;
import loadwalk.numeric.Quantiles;
import loadwalk.numeric.Statistics;
import loadwalk.quantity.Quantity;

/**
 * What repeated readings of one thing say of its uncertainty: type A (JCGM 100:2008, 4.2).
 *
 * @param count how many readings
 * @param mean their mean
 * @param standardUncertainty the standard uncertainty of the mean, s/√n (4.2.3)
 * @param spread largest minus least reading
 */
public record Scatter(int count, double mean, double standardUncertainty, double spread) {
  /** The name under which the scatter stands among a quantity's sources of uncertainty. */
  public static final String SOURCE = "scatter of repeated readings";

  private static final double LEVEL = 0.95;

  /** Returns the scatter of at least two readings; empty for fewer. */
  public static Optional<Scatter> of(List<Double> readings) {
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

  /** Returns the degrees of freedom, n − 1 (4.2.6). */
  public double degreesOfFreedom() {
    return count - 1;
  }

  /**
   * Adds this scatter to what is known of a reading otherwise (type B, degrees of freedom taken as
   * infinite: G.4.3), with ν_eff by Welch–Satterthwaite (G.2b).
   */
  public Joined joined(Quantity typeB) {
    double[] parts = {typeB.u(), standardUncertainty};
    double[] degrees = {Double.POSITIVE_INFINITY, degreesOfFreedom()};
    Quantity both = standardUncertainty > 0 ? typeB.withPart(SOURCE, standardUncertainty) : typeB;
    return new Joined(both, Quantiles.effectiveDegreesOfFreedom(parts, degrees));
  }

  /**
   * A reading with both kinds of uncertainty.
   *
   * @param quantity the reading
   * @param degreesOfFreedom ν_eff, infinite where there is no scatter
   */
  public record Joined(Quantity quantity, double degreesOfFreedom) {
    /** Returns the coverage factor at 95 % for these degrees of freedom (table G.2). */
    public double coverageFactor() {
      return Quantiles.coverageFactor(LEVEL, degreesOfFreedom);
    }

    /** Returns the half-width that covers 95 %, in the quantity's unit. */
    public double expanded() {
      return coverageFactor() * quantity.u();
    }
  }
}
