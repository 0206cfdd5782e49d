package loadwalk.wave;

/**
 * The volts at the amplifier for one unit of a capture.
 *
 * @param voltsPerUnit volts at the amplifier's output for a sample of 1, above 0
 * @param relativeU its relative standard uncertainty, 0 where none was stated
 * @param from its source
 */
public record Calibration(double voltsPerUnit, double relativeU, Origin from) {
  /** The calibration of a capture with nothing known about it. */
  public static final Calibration NONE = new Calibration(1, 0, Origin.NOTHING);

  /** Where the volts of a sample come from. */
  public enum Origin {
    /** Nothing was given: volts are parts of full scale. */
    NOTHING("none: volts are parts of full scale"),
    /** The volts of full scale, behind a divider. */
    FULL_SCALE("volts per full scale and divider ratio"),
    /** The file's own volts, behind a divider. */
    FILE("volts of the file and divider ratio"),
    /** A voltage measured while the capture was made. */
    KNOWN_VOLTAGE("one known voltage");

    private final String words;

    Origin(String words) {
      this.words = words;
    }

    /** Returns it in a few words, as journals keep it. */
    public String words() {
      return words;
    }

    /** Tells whether these words from a journal mean this origin. */
    public boolean isIn(String kept) {
      return words.equals(kept);
    }
  }

  /** Checks the numbers. */
  public Calibration {
    requirePositive(voltsPerUnit, "volts per unit");
    if (!(relativeU >= 0) || Double.isInfinite(relativeU)) {
      throw new IllegalArgumentException(
          "relative uncertainty must be a number from 0 up, got " + relativeU);
    }
  }

  /**
   * Returns a calibration from the peak volts of full scale, behind a divider.
   *
   * @param volts peak volts at the input at full scale
   * @param divider volts at the amplifier for one volt at the input, 1 where there is no divider
   */
  public static Calibration fullScale(double volts, double divider) {
    requirePositive(volts, "full-scale volts");
    requirePositive(divider, "divider ratio");
    return new Calibration(volts * divider, 0, Origin.FULL_SCALE);
  }

  /** Returns a calibration of samples that are volts already, behind a divider. */
  public static Calibration volts(double divider) {
    requirePositive(divider, "divider ratio");
    return new Calibration(divider, 0, Origin.FILE);
  }

  /**
   * Returns a calibration from one voltage measured during the capture.
   *
   * @param volts the rms volts at the amplifier
   * @param captured the rms of the capture, in its own units
   */
  public static Calibration knownVoltage(double volts, double captured) {
    requirePositive(volts, "known volts");
    requirePositive(captured, "captured rms");
    return new Calibration(volts / captured, 0, Origin.KNOWN_VOLTAGE);
  }

  /** Tells whether a calibration was given; otherwise volts are parts of full scale. */
  public boolean known() {
    return from != Origin.NOTHING;
  }

  /** Returns its source in a few words. */
  public String how() {
    return from.words();
  }

  /** Returns this with a relative standard uncertainty. */
  public Calibration withRelativeU(double u) {
    return new Calibration(voltsPerUnit, u, from);
  }

  private static void requirePositive(double value, String name) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be a number above 0, got " + value);
    }
  }
}
