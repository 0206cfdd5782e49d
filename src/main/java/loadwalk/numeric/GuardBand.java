package loadwalk.numeric;

/**
 * Judges a measured value against a one-sided requirement with a guard band (JCGM 106:2012, 8.3.3):
 * the value is shown to meet a limit only if it still does with its guard band taken off.
 *
 * @param level the probability the verdict must reach, above 0.5 and below 1
 */
public record GuardBand(double level) {
  /** The guard band of every verdict on a sheet: one-sided, 95 %. */
  public static final GuardBand AT_95_PERCENT = new GuardBand(0.95);

  /** Checks that the level puts the guard band on the cautious side. */
  public GuardBand {
    if (!(level > 0.5 && level < 1)) {
      throw new IllegalArgumentException("level must be between 0.5 and 1, got " + level);
    }
  }

  /**
   * Returns the width of the guard band where u has few degrees of freedom.
   *
   * @param u the standard uncertainty, 0 or more
   * @param degreesOfFreedom those of u, above 0; infinite where u is known
   */
  double width(double u, double degreesOfFreedom) {
    return Quantiles.studentQuantile(level, degreesOfFreedom)
        * Samples.zeroOrMore(u, "standard uncertainty");
  }

  /** Judges a value that must be at least a limit, where u has few degrees of freedom. */
  public Conformance atLeast(double value, double u, double degreesOfFreedom, double limit) {
    return judge(
        Samples.finite(value, "value") - Samples.finite(limit, "limit"),
        width(u, degreesOfFreedom));
  }

  private static Conformance judge(double margin, double guard) {
    if (margin >= guard) {
      return Conformance.SHOWN_TO_MEET;
    }
    return margin <= -guard ? Conformance.SHOWN_TO_MISS : Conformance.TOO_CLOSE;
  }
}
