package loadwalk.result;

/**
 * One pair of volts and distortion measured near the limit.
 *
 * @param volts RMS volts across one load, above 0
 * @param thdPercent the distortion there, percent, above 0
 */
public record LimitPair(double volts, double thdPercent) {
  /** Checks the numbers. */
  public LimitPair {
    requirePositive(volts, "volts");
    requirePositive(thdPercent, "thdPercent");
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          what + " of a limit pair must be a number above 0, got " + value);
    }
  }
}
