package loadwalk.practice;

/**
 * Bends a sine against the rails: {@code y = s / (1 + |s|^knee)^(1/knee)}, s in units of the clip
 * level; a knee of 40 or more is close to a hard clipper.
 *
 * @param knee the sharpness of the bend, 4 or more
 */
public record Clipper(double knee) {
  private static final int POINTS = 128;
  private static final int HALVINGS = 50;
  private static final double MOST_DRIVE = 4;

  /** Checks the number. */
  public Clipper {
    if (!(knee >= 4 && knee <= 400)) {
      throw new IllegalArgumentException("knee must lie from 4 to 400, got " + knee);
    }
  }

  /**
   * The shape of a driven output, in units of the clip level.
   *
   * @param drive the peak of the sine if it were not bent
   * @param rms the rms value
   * @param meanMagnitude the mean magnitude, which is what a push-pull stage draws from its rails
   * @param thdPercent the distortion, percent of the fundamental
   */
  public record Shape(double drive, double rms, double meanMagnitude, double thdPercent) {
    /** Returns a pure sine of a given peak, for drive well below the bend. */
    public static Shape sine(double peak) {
      return new Shape(peak, peak / Math.sqrt(2), 2 * peak / Math.PI, 0);
    }

    /** Returns the sine with a given part of this shape's power. */
    Shape atPowerFraction(double fraction) {
      return fraction >= 1 ? this : sine(Math.sqrt(2 * fraction) * rms);
    }
  }

  /** Returns the shape at a drive, the peak of the sine over the clip level. */
  Shape at(double drive) {
    double squares = 0;
    double magnitudes = 0;
    double fundamental = 0;
    for (int i = 0; i < POINTS; i++) {
      double sine = Math.sin(Math.PI / 2 * (i + 0.5) / POINTS);
      double y = bend(drive * sine);
      squares += y * y / POINTS;
      magnitudes += y / POINTS;
      fundamental += 2 * y * sine / POINTS;
    }
    double harmonics = Math.max(0, squares - fundamental * fundamental / 2);
    double thd = Math.sqrt(2 * harmonics) / fundamental;
    return new Shape(drive, Math.sqrt(squares), magnitudes, 100 * thd);
  }

  /** Returns the shape at which the distortion reaches a limit, found by bisection on the drive. */
  public Shape atThd(double thdPercent) {
    double low = 0.05;
    double high = MOST_DRIVE;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (at(middle).thdPercent() < thdPercent) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return at(high);
  }

  /** Returns the output for an input, both in units of the clip level. */
  double bent(double s) {
    return Math.copySign(bend(Math.abs(s)), s);
  }

  private double bend(double s) {
    return s <= 0 ? 0 : s / Math.pow(1 + Math.pow(s, knee), 1 / knee);
  }
}
