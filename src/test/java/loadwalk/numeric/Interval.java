package loadwalk.numeric;

/**
 * An interval of values, ends included.
 *
 * @param low the lower end
 * @param high the upper end
 */
public record Interval(double low, double high) {
  /** Checks that the ends are numbers in order. */
  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("ends must be in order, got " + low + " and " + high);
    }
  }

  /** Returns the length. */
  public double width() {
    return high - low;
  }

  /** Tells whether the value lies inside; NaN never does. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }
}
