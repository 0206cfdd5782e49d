package loadwalk.bench;

import java.util.Optional;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * One bench supply, or a battery that stands for it; several are assumed to be in parallel.
 *
 * @param volts its setting, volts; a battery's volts at rest
 * @param amps its maximum current, amperes; what a battery can be counted on for
 * @param battery the battery, where it is one
 */
public record Supply(double volts, double amps, Optional<Battery> battery)
    implements Shaped<Supply> {
  /** Checks the numbers. */
  public Supply {
    Checks.positive(volts, "volts");
    Checks.positive(amps, "amps");
  }

  /** A supply that holds its volts up to its amperes. */
  public Supply(double volts, double amps) {
    this(volts, amps, Optional.empty());
  }

  /** Returns a battery as a supply. */
  public static Supply of(Battery battery) {
    return new Supply(battery.openVolts(), battery.mostAmps(), Optional.of(battery));
  }

  @Override
  public Supply shape(Shape in) {
    if (in.has("openVolts", battery.isPresent())) {
      return of(battery.orElse(Battery.blank()).shape(in));
    }
    return new Supply(in.number("volts", volts, 0.1, 1000), in.number("amps", amps, 0.01, 100_000));
  }
}
