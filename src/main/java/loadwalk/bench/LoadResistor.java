package loadwalk.bench;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;

/**
 * A kind of load resistor and how many the owner has.
 *
 * @param label what it is called; its value, such as "4R", where it has no name
 * @param ohms its nominal or measured value, ohms
 * @param tolerancePercent the half-width of its tolerance or of its measurement, percent
 * @param watts its rated dissipation with its case at 25 °C, watts
 * @param count how many the owner has
 * @param ppmPerKelvin its temperature coefficient, ppm/K, where known
 * @param mount how it is mounted, where that is said
 */
public record LoadResistor(
    String label,
    double ohms,
    double tolerancePercent,
    double watts,
    int count,
    OptionalDouble ppmPerKelvin,
    Optional<Mount> mount)
    implements Shaped<LoadResistor> {
  /**
   * The tolerance of a load that states none, percent: usual for wirewound resistors (common
   * practice, no source).
   */
  public static final double DEFAULT_TOLERANCE_PERCENT = 5;

  private static final double KILO = 1e3;
  private static final double MEGA = 1e6;

  /** Checks the numbers. */
  public LoadResistor {
    Checks.text(label, "label");
    Checks.positive(ohms, "ohms");
    Checks.zeroOrMore(tolerancePercent, "tolerancePercent");
    Checks.positive(watts, "watts");
    if (count < 1) {
      throw new IllegalArgumentException("count must be 1 or more, got " + count);
    }
    Objects.requireNonNull(mount, "mount");
  }

  /** Makes a kind of which is not said how it is mounted. */
  public LoadResistor(
      String label,
      double ohms,
      double tolerancePercent,
      double watts,
      int count,
      OptionalDouble ppmPerKelvin) {
    this(label, ohms, tolerancePercent, watts, count, ppmPerKelvin, Optional.empty());
  }

  static LoadResistor blank() {
    return new LoadResistor("1R", 1, DEFAULT_TOLERANCE_PERCENT, 1, 1, OptionalDouble.empty());
  }

  @Override
  public LoadResistor shape(Shape in) {
    Optional<String> itsLabel =
        in.has("label", true) ? Optional.of(in.text("label", label)) : Optional.empty();
    double itsOhms = in.number("ohms", ohms, 0.001, 1e6);
    return new LoadResistor(
        itsLabel.orElse(valueName(itsOhms)),
        itsOhms,
        in.numberOr("tolerancePercent", tolerancePercent, 0, 100),
        in.number("watts", watts, 0.01, 1e6),
        in.wholeOr("count", count, 1, 1000),
        in.number("ppmPerKelvin", ppmPerKelvin, -100_000, 100_000),
        Mount.shape(in, mount));
  }

  /** Returns a value as it is written on a resistor: "4R", "0R5", "2R2", "1k". */
  public static String valueName(double ohms) {
    double rounded = Double.parseDouble(Figures.three(ohms));
    String unit = rounded < KILO ? "R" : rounded < MEGA ? "k" : "M";
    double scale = rounded < KILO ? 1 : rounded < MEGA ? KILO : MEGA;
    String number = Figures.three(rounded / scale);
    return number.contains(".") ? number.replace(".", unit) : number + unit;
  }

  /** Returns so many of this kind. */
  public LoadResistor counted(int newCount) {
    return new LoadResistor(label, ohms, tolerancePercent, watts, newCount, ppmPerKelvin, mount);
  }

  /** Returns this kind mounted so. */
  public LoadResistor on(Mount newMount) {
    return new LoadResistor(
        label, ohms, tolerancePercent, watts, count, ppmPerKelvin, Optional.of(newMount));
  }
}
