package loadwalk.result;

import java.util.List;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Shape;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * How well an output that is set to the limit by hand repeats: the scatter of the setting and of
 * the supply, over and above what the meter's digits do.
 *
 * @param relativeVolts the standard deviation of the output volts, a fraction of them
 * @param pairs how many pairs of runs it was learned from; 0 if it is assumed
 */
public record Repeatability(double relativeVolts, int pairs) {
  /** What is assumed before enough runs are known: 0.4 % of volts (common practice, no source). */
  public static final Repeatability DEFAULT = new Repeatability(0.004, 0);

  /** The fewest pairs to learn from. Set by hand. */
  public static final int ENOUGH_PAIRS = 10;

  /**
   * The largest difference of volts, a fraction, that counts as scatter; beyond it something has
   * changed. Five times the default for a difference of two runs, set by hand.
   */
  private static final double MOST = 0.03;

  private static final String POOL = "pairs of runs";

  /** Checks the numbers. */
  public Repeatability {
    if (!(relativeVolts >= 0) || Double.isInfinite(relativeVolts)) {
      throw new IllegalArgumentException(
          "relativeVolts must be a number from 0 up, got " + relativeVolts);
    }
    if (pairs < 0) {
      throw new IllegalArgumentException("pairs must be 0 or more, got " + pairs);
    }
  }

  /**
   * Two runs at one load that should have given the same volts.
   *
   * @param relativeVolts the difference of the two, a fraction of their mean; of three runs or more
   *     what a pair of them would have differed by
   * @param meterU the standard uncertainty that the meter's digits give that difference, a fraction
   */
  public record Pair(double relativeVolts, double meterU) {
    /** Checks the numbers. */
    public Pair {
      if (!Double.isFinite(relativeVolts) || !(meterU >= 0) || Double.isInfinite(meterU)) {
        throw new IllegalArgumentException(
            "a pair needs numbers, got " + relativeVolts + " and " + meterU);
      }
    }

    /** Tells whether the two differ by what can be scatter. */
    boolean isScatter() {
      return Math.abs(relativeVolts) <= MOST;
    }
  }

  /**
   * Learns from pairs of runs: s² = Σ(d² − m²)/2n with n degrees of freedom (JCGM 100:2008, 4.2.4,
   * pooled), d the difference and m the part of it that the meter's digits make, which stands in
   * the uncertainty already. The default stands with fewer than {@link #ENOUGH_PAIRS}.
   */
  public static Repeatability pooled(List<Pair> pairs) {
    List<Pair> scatter = pairs.stream().filter(Pair::isScatter).toList();
    int n = scatter.size();
    if (n < ENOUGH_PAIRS) {
      return DEFAULT;
    }
    double squares =
        scatter.stream()
            .mapToDouble(p -> p.relativeVolts * p.relativeVolts - p.meterU * p.meterU)
            .sum();
    return new Repeatability(Math.sqrt(Math.max(0, squares) / (2 * n)), n);
  }

  /**
   * Returns an output that was set to the limit by hand in a step, with the scatter of setting.
   *
   * @param output its volts, or its watts, which scatter twice as much
   */
  Quantity in(Quantity output, String stepId) {
    double power = output.unit() == Unit.WATT ? 2 : 1;
    double u = Math.abs(output.value()) * relativeVolts * power;
    double degrees = pairs == 0 ? Double.POSITIVE_INFINITY : pairs;
    return u > 0 ? output.withShaped(source(stepId), u, Shape.estimated(degrees, POOL)) : output;
  }

  /** Returns the name of the scatter of setting one step. */
  static String source(String stepId) {
    return Sentence.of("setting the limit, {}", stepId);
  }
}
