package loadwalk.forecast.doubt;

import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;

/** Doubts temperatures that no bench has, and names the likeliest slip behind them. */
final class TemperatureSlip {
  /** What a heatsink may have on a bench, °C: from a cold garage to a thermal cut-out. By hand. */
  private static final Band SINK = new Band(0, 40, 130);

  /** What the air around a bench may have, °C. Chosen by hand. */
  private static final Band AIR = new Band(0, 22, 45);

  /** Difference up to which two entries are the same number, a fraction. */
  private static final double SAME = 1e-6;

  private TemperatureSlip() {}

  /** Returns degrees Celsius of degrees Fahrenheit. */
  static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  /**
   * Returns the doubt of a temperature that is not possible; empty where it is.
   *
   * @param id the heatsink or the air
   * @param entries every entry of the step
   * @param expected the forecast, if there is one
   * @param target the step
   */
  static Optional<Doubt> of(
      ReadingId id, Map<ReadingId, Double> entries, Optional<Band> expected, Target target) {
    double celsius = entries.get(id);
    Band possible = id == ReadingId.AMBIENT_CELSIUS ? AIR : SINK;
    if (possible.holds(celsius)) {
      return Optional.empty();
    }
    boolean copied =
        entries.entrySet().stream()
            .filter(other -> other.getKey() != id)
            .anyMatch(other -> Math.abs(other.getValue() - celsius) <= SAME * Math.abs(celsius));
    if (copied) {
      return Optional.of(
          DoubtWords.temperature(id, celsius, possible, Slip.WRONG_ROW, Double.NaN, target));
    }
    Band fits = expected.orElse(possible);
    double[] tenfold = {celsius / 10, celsius / 100, celsius / 1000};
    if (fits.holds(celsius(celsius))) {
      return Optional.of(
          DoubtWords.temperature(
              id, celsius, possible, Slip.FAHRENHEIT_FOR_CELSIUS, celsius(celsius), target));
    }
    for (double meant : tenfold) {
      if (fits.holds(meant)) {
        return Optional.of(
            DoubtWords.temperature(id, celsius, possible, Slip.DECIMAL_POINT, meant, target));
      }
    }
    return Optional.of(
        DoubtWords.temperature(id, celsius, possible, Slip.UNNAMED, Double.NaN, target));
  }
}
