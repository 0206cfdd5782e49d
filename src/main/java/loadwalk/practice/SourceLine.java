package loadwalk.practice;

/**
 * The supplies and leads as seen from the amplifier's terminals.
 *
 * @param volts the volts at no current
 * @param ohms the resistance of supplies and leads together
 * @param amps the current limit, above which the volts fall
 */
public record SourceLine(double volts, double ohms, double amps) {
  /** Checks the numbers. */
  public SourceLine {
    PracticeAmplifier.positive(volts, "volts");
    PracticeAmplifier.zeroOrMore(ohms, "ohms");
    PracticeAmplifier.positive(amps, "amps");
  }
}
