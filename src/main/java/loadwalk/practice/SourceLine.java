package loadwalk.practice;

/**
 * The supplies and leads as the amplifier's terminals see them.
 *
 * @param volts the volts without current
 * @param ohms the resistance of supplies and leads together
 * @param amps the current limit, from which on the volts fall
 */
public record SourceLine(double volts, double ohms, double amps) {
  /** Checks the numbers. */
  public SourceLine {
    PracticeAmplifier.positive(volts, "volts");
    PracticeAmplifier.zeroOrMore(ohms, "ohms");
    PracticeAmplifier.positive(amps, "amps");
  }
}
