package loadwalk.bench;

import java.util.OptionalDouble;

/**
 * A kind of load resistor and how many the owner has.
 *
 * @param label what it is called
 * @param ohms its nominal or measured value, ohms
 * @param tolerancePercent the half-width of its tolerance or of the measurement, percent
 * @param watts its rated dissipation on the heatsink it is mounted on, watts
 * @param count how many there are
 * @param ppmPerKelvin its temperature coefficient, ppm/K, where known
 */
public record LoadResistor(
    String label,
    double ohms,
    double tolerancePercent,
    double watts,
    int count,
    OptionalDouble ppmPerKelvin) {
  /** Checks the numbers. */
  public LoadResistor {
    Checks.text(label, "label");
    Checks.positive(ohms, "ohms");
    Checks.zeroOrMore(tolerancePercent, "tolerancePercent");
    Checks.positive(watts, "watts");
    if (count < 1) {
      throw new IllegalArgumentException("count must be 1 or more, got " + count);
    }
  }
}
