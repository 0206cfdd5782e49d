package loadwalk.wave;

/**
 * Says how many volts at the amplifier one unit of a capture stands for.
 *
 * @param voltsPerUnit volts at the amplifier's output for a sample of 1, above 0
 * @param relativeU its relative standard uncertainty, 0 where none was stated
 * @param known whether it was given; otherwise volts are only parts of full scale
 * @param how where it comes from, a few words
 */
public record Calibration(double voltsPerUnit, double relativeU, boolean known, String how) {
  /** The calibration of a capture about which nothing is known. */
  public static final Calibration NONE =
      new Calibration(1, 0, false, "none: volts are parts of full scale");

  /** Checks the numbers. */
  public Calibration {
    requirePositive(voltsPerUnit, "volts per unit");
    if (!(relativeU >= 0) || Double.isInfinite(relativeU)) {
      throw new IllegalArgumentException(
          "relative uncertainty must be a number from 0 up, got " + relativeU);
    }
  }

  /**
   * Takes the peak volts at the input that make full scale, behind a divider.
   *
   * @param volts peak volts at the input for full scale
   * @param divider volts at the amplifier for one volt at the input, 1 where there is no divider
   */
  public static Calibration fullScale(double volts, double divider) {
    requirePositive(volts, "full-scale volts");
    requirePositive(divider, "divider ratio");
    return new Calibration(volts * divider, 0, true, "volts per full scale and divider ratio");
  }

  /** Takes samples that are volts already, behind a divider. */
  public static Calibration volts(double divider) {
    requirePositive(divider, "divider ratio");
    return new Calibration(divider, 0, true, "volts of the file and divider ratio");
  }

  /**
   * Takes one voltage that was measured while a capture was made.
   *
   * @param volts the rms volts at the amplifier
   * @param captured the rms that the capture shows, in its units
   */
  public static Calibration knownVoltage(double volts, double captured) {
    requirePositive(volts, "known volts");
    requirePositive(captured, "captured rms");
    return new Calibration(volts / captured, 0, true, "one known voltage");
  }

  /** Returns this with a relative standard uncertainty. */
  public Calibration withRelativeU(double u) {
    return new Calibration(voltsPerUnit, u, known, how);
  }

  private static void requirePositive(double value, String name) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be a number above 0, got " + value);
    }
  }
}
