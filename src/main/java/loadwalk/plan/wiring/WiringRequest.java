package loadwalk.plan.wiring;

/**
 * A load to be wired.
 *
 * @param ohms the value wanted, ohms
 * @param watts the most watts in one load; 0 if unknown
 * @param loads how many equal loads at once from one stock: 2 in stereo, 1 bridged
 * @param tolerancePercent how far the value may be from the one wanted, percent
 */
public record WiringRequest(double ohms, double watts, int loads, double tolerancePercent) {
  /** The tolerance for a load's value if none is specified, percent. */
  public static final double DEFAULT_TOLERANCE_PERCENT = 5;

  /** Allowance for rounding in sums of resistors, a fraction. */
  static final double ROUNDING = 1e-12;

  /** Checks the numbers. */
  public WiringRequest {
    if (!(ohms > 0) || Double.isInfinite(ohms)) {
      throw new IllegalArgumentException("a load must be a number of ohms above 0, got " + ohms);
    }
    if (!(watts >= 0) || Double.isInfinite(watts)) {
      throw new IllegalArgumentException("watts must be a number from 0 up, got " + watts);
    }
    if (loads != 1 && loads != 2) {
      throw new IllegalArgumentException("there are 1 or 2 loads, got " + loads);
    }
    if (!(tolerancePercent >= 0 && tolerancePercent < 100)) {
      throw new IllegalArgumentException(
          "the tolerance of a load must lie from 0 up to below 100 %, got " + tolerancePercent);
    }
  }

  double lowestOhms() {
    return ohms * (1 - tolerancePercent / 100) * (1 - ROUNDING);
  }

  double highestOhms() {
    return ohms * (1 + tolerancePercent / 100) * (1 + ROUNDING);
  }

  double leastWatts() {
    return watts * (1 - ROUNDING);
  }

  /** Tells whether a network of this value, which can handle these watts, is such a load. */
  boolean isMetBy(double networkOhms, double networkWatts) {
    return networkOhms >= lowestOhms()
        && networkOhms <= highestOhms()
        && networkWatts >= leastWatts();
  }
}
