package loadwalk.bench;

/**
 * One bench supply; several are taken as connected in parallel.
 *
 * @param volts its setting, volts
 * @param amps the most it delivers, amperes
 */
public record Supply(double volts, double amps) {
  /** Checks the numbers. */
  public Supply {
    Checks.positive(volts, "volts");
    Checks.positive(amps, "amps");
  }
}
