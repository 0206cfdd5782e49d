package loadwalk.practice;

/**
 * The output of a practice amplifier while its tone is turned up through the limit, again and
 * again.
 *
 * @param clipper how the output stage bends at the rail
 * @param limit the shape of the output at the limit
 * @param limitVolts rms volts at the limit
 * @param hertz the tone
 */
public record PracticeTone(Clipper clipper, Clipper.Shape limit, double limitVolts, double hertz) {
  private static final double RISE_SECONDS = 12;
  private static final double FROM_DB = -12;
  private static final double TO_DB = 2;

  /** Checks the numbers. */
  public PracticeTone {
    PracticeAmplifier.positive(limitVolts, "limitVolts");
    PracticeAmplifier.positive(hertz, "hertz");
  }

  /** Returns the volts at a time from the start, s; a new rise begins every twelve seconds. */
  public double volts(double seconds) {
    double part = seconds / RISE_SECONDS - Math.floor(seconds / RISE_SECONDS);
    double decibels = FROM_DB + (TO_DB - FROM_DB) * part;
    double drive = limit.drive() * Math.pow(10, decibels / 20);
    double bent = clipper.bent(drive * Math.sin(2 * Math.PI * hertz * seconds));
    return limitVolts / limit.rms() * bent;
  }
}
