package loadwalk.bench;

import java.util.List;
import java.util.Optional;

/**
 * What feeds the leads, seen from their near end: volts behind a resistance.
 *
 * @param volts the volts at no current
 * @param ohms the resistance; 0 where supplies hold their volts
 */
public record Source(double volts, double ohms) {
  /**
   * Returns the source that supplies in parallel make: the highest setting, or of batteries the
   * volts and the resistance of all together (Millman).
   */
  static Optional<Source> of(List<Supply> supplies) {
    if (supplies.isEmpty()) {
      return Optional.empty();
    }
    List<Battery> batteries = supplies.stream().flatMap(s -> s.battery().stream()).toList();
    if (batteries.isEmpty()) {
      double highest = supplies.stream().mapToDouble(Supply::volts).max().orElseThrow();
      return Optional.of(new Source(highest, 0));
    }
    double siemens = batteries.stream().mapToDouble(b -> 1 / b.ohms()).sum();
    double amps = batteries.stream().mapToDouble(b -> b.openVolts() / b.ohms()).sum();
    return Optional.of(new Source(amps / siemens, 1 / siemens));
  }

  /** Returns the volts behind leads of a resistance, ohms, at a current, amperes; never below 0. */
  public double voltsBehind(double leadOhms, double amps) {
    return Math.max(0, volts - amps * (ohms + leadOhms));
  }
}
