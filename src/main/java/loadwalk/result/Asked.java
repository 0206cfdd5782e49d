package loadwalk.result;

/**
 * What a walk's sequence asks for; what was really reached stands in {@link Conditions}.
 *
 * @param limitThdPercent the distortion at which volts are to be read, percent
 * @param supplyVolts the supply volts asked for at the amplifier's terminals
 * @param toneHertz the test tone, hertz
 */
record Asked(double limitThdPercent, double supplyVolts, double toneHertz) {
  Asked {
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
