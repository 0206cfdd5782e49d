package loadwalk.quantity;

import java.util.Objects;

/**
 * The distribution of one part of an uncertainty.
 *
 * @param excess its excess kurtosis: 0 for a normal distribution, less for one with limits
 * @param degreesOfFreedom those of its estimate from readings, 1 or more (JCGM 100:2008, G.3);
 *     infinite for one that is known
 * @param pool the readings that it is estimated from, where several parts share them; else empty
 */
public record Shape(double excess, double degreesOfFreedom, String pool) {
  /** Equally likely anywhere within limits. */
  public static final Shape RECTANGULAR = known(-1.2);

  /**
   * All at one end or all at the other: what is known to lie on one side, by how much at the
   * middle, and is not corrected for.
   */
  public static final Shape EITHER_END = known(-2);

  /** Checks the numbers. */
  public Shape {
    Objects.requireNonNull(pool, "pool");
    if (!Double.isFinite(excess)) {
      throw new IllegalArgumentException("excess must be finite, got " + excess);
    }
    if (!(degreesOfFreedom >= 1)) {
      throw new IllegalArgumentException(
          "degrees of freedom must be 1 or more, got " + degreesOfFreedom);
    }
  }

  private static Shape known(double excess) {
    return new Shape(excess, Double.POSITIVE_INFINITY, "");
  }

  /**
   * Returns a normal part estimated from few readings.
   *
   * @param pool the readings, where other parts are estimated from them too; else empty
   */
  public static Shape estimated(double degreesOfFreedom, String pool) {
    return new Shape(0, degreesOfFreedom, pool);
  }

  boolean isEstimated() {
    return !Double.isInfinite(degreesOfFreedom);
  }

  /** Returns the pool of a part with this shape: its own where it shares none. */
  String poolOf(String source) {
    return pool.isEmpty() ? source : pool;
  }

  Shape lessSure(Shape other) {
    return other.degreesOfFreedom < degreesOfFreedom ? other : this;
  }
}
