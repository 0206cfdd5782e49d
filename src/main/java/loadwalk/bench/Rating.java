package loadwalk.bench;

import java.util.Objects;
import java.util.OptionalDouble;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * One line of an amplifier's rated power.
 *
 * @param mode stereo or bridged
 * @param ohms the rated load, ohms
 * @param watts the rated power, watts: per channel in stereo, into the one load when bridged
 * @param supplyVolts the supply volts it is rated at, where stated
 * @param thdPercent the distortion it is rated at, percent, where stated
 */
public record Rating(
    Mode mode, double ohms, double watts, OptionalDouble supplyVolts, OptionalDouble thdPercent)
    implements Shaped<Rating> {
  /** Checks the numbers. */
  public Rating {
    Objects.requireNonNull(mode, "mode");
    Checks.positive(ohms, "ohms");
    Checks.positive(watts, "watts");
    supplyVolts.ifPresent(v -> Checks.positive(v, "supplyVolts"));
    thdPercent.ifPresent(v -> Checks.positive(v, "thdPercent"));
  }

  static Rating blank() {
    return new Rating(Mode.STEREO, 1, 1, OptionalDouble.empty(), OptionalDouble.empty());
  }

  @Override
  public Rating shape(Shape in) {
    return new Rating(
        in.word("mode", mode, BenchFiles.MODES),
        in.number("ohms", ohms, 0.01, 10_000),
        in.number("watts", watts, 0.001, 1e6),
        in.number("supplyVolts", supplyVolts, 1, 1000),
        in.number("thdPercent", thdPercent, 1e-6, 100));
  }
}
