package loadwalk.forecast;

/**
 * A predicted range of one reading, at the forecast's level.
 *
 * @param low the lower end, in the reading's unit
 * @param middle the value held likeliest
 * @param high the upper end
 */
public record Band(double low, double middle, double high) {
  /** Checks that the ends are finite and in order. */
  public Band {
    boolean ordered = low <= middle && middle <= high;
    if (!ordered || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "a band needs finite ends in order, got " + low + ", " + middle + ", " + high);
    }
  }

  /** Tells whether a value lies inside, ends included; NaN never does. */
  public boolean holds(double value) {
    return value >= low && value <= high;
  }
}
