package loadwalk.bench;

import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * One bench supply; several are assumed to be in parallel.
 *
 * @param volts its setting, volts
 * @param amps its maximum current, amperes
 */
public record Supply(double volts, double amps) implements Shaped<Supply> {
  /** Checks the numbers. */
  public Supply {
    Checks.positive(volts, "volts");
    Checks.positive(amps, "amps");
  }

  @Override
  public Supply shape(Shape in) {
    return new Supply(in.number("volts", volts, 0.1, 1000), in.number("amps", amps, 0.01, 100_000));
  }
}
