package loadwalk.result;

/**
 * The conditions under which a walk's readings were taken.
 *
 * @param limitThdPercent the distortion at which volts are read, percent
 * @param supplyVolts the supply volts specified at the amplifier's terminals
 * @param toneHertz the test tone, hertz
 */
record Conditions(double limitThdPercent, double supplyVolts, double toneHertz) {
  Conditions {
    requirePositive(limitThdPercent, "limitThdPercent");
    requirePositive(supplyVolts, "supplyVolts");
    requirePositive(toneHertz, "toneHertz");
  }

  private static void requirePositive(double value, String name) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be a number above 0, got " + value);
    }
  }
}
