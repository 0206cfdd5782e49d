package loadwalk.bench;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One line of an amplifier's rated power.
 *
 * @param mode stereo or bridged
 * @param ohms the rated load, ohms
 * @param watts the rated power, watts: per channel in stereo, of the one load when bridged
 * @param supplyVolts the supply at which it is rated, volts, where stated
 * @param thdPercent the distortion at which it is rated, percent, where stated
 */
public record Rating(
    Mode mode, double ohms, double watts, OptionalDouble supplyVolts, OptionalDouble thdPercent) {
  /** Checks the numbers. */
  public Rating {
    Objects.requireNonNull(mode, "mode");
    Checks.positive(ohms, "ohms");
    Checks.positive(watts, "watts");
    supplyVolts.ifPresent(v -> Checks.positive(v, "supplyVolts"));
    thdPercent.ifPresent(v -> Checks.positive(v, "thdPercent"));
  }
}
