package loadwalk.bench;

import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Computes how many watts a chassis-mounted wirewound load resistor bears as it is mounted, and for
 * how long.
 *
 * <p>The element may rise by 225 K: rated in full with its case at 25 °C, not at all at 250 °C
 * (MIL-PRF-39009). Its time constant is the one at which the overload of the tables is just
 * bearable (catalogues: five times for five seconds, from memory). From case to air the heat goes
 * by the mount; the body itself, by its mass, takes up heat meanwhile. The air is taken at 25 °C,
 * and each burst starts cold.
 */
public final class ResistorDerating {
  /**
   * The rise of a resistor at its rated watts, kelvin: rated in full with its case at 25 °C, not at
   * all at 250 °C (MIL-PRF-39009, from its abstract).
   */
  private static final double RISE_AT_RATED_KELVIN = 225;

  /**
   * Beyond the largest body of the table its surface, and with it the watts in free air, grow as
   * the power of two thirds of its size. Chosen by hand.
   */
  private static final double BY_SURFACE = 2.0 / 3;

  /** The least resistance from case to air, K/W; keeps an own table from dividing by zero. */
  private static final double LEAST_KELVIN_PER_WATT = 0.001;

  private static final double GRAMS_PER_KILOGRAM = 1000;

  /** Halvings of the time to the limit; a double has no more digits. */
  private static final int HALVINGS = 60;

  private final Tables tables;
  private final Curve freeAirWatts;
  private final Curve bodyGrams;

  /** Takes the limits from the tables. */
  public ResistorDerating(Tables tables) {
    this.tables = tables;
    freeAirWatts = new Curve(tables.byNumber("resistor-free-air-"));
    bodyGrams = new Curve(tables.byNumber("resistor-grams-"));
  }

  /**
   * Returns by how much a resistor gets hotter than its case if it takes the watts for long,
   * kelvin: in proportion to them, and no more than at its rated watts, beyond which it does not
   * last.
   */
  public static double riseKelvin(double watts, double ratedWatts) {
    double share = Checks.zeroOrMore(watts, "watts") / Checks.positive(ratedWatts, "rated watts");
    return RISE_AT_RATED_KELVIN * Math.min(1, share);
  }

  /**
   * Returns the most watts that a cold resistor bears for a time, as it is mounted; never more than
   * the largest known overload.
   */
  public double mostWatts(LoadResistor resistor, Hold hold) {
    double bears = allowedKelvin() / path(resistor).kelvinPerWatt(hold.seconds());
    return Math.min(bears, largestMultiple() * resistor.watts());
  }

  /**
   * Returns how long a cold resistor bears the watts as it is mounted, seconds: infinite up to what
   * it bears for ever, 0 above the largest known overload, of which nothing is known.
   */
  public double burstSeconds(double watts, LoadResistor resistor) {
    HeatPath path = path(resistor);
    double bearable = allowedKelvin() / Checks.zeroOrMore(watts, "watts");
    if (path.kelvinPerWatt() <= bearable) {
      return Double.POSITIVE_INFINITY;
    }
    if (watts > largestMultiple() * resistor.watts()) {
      return 0;
    }
    double low = 0;
    double high = path.elementSeconds();
    while (path.kelvinPerWatt(high) < bearable) {
      low = high;
      high *= 2;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean bears = path.kelvinPerWatt(middle) < bearable;
      low = bears ? middle : low;
      high = bears ? high : middle;
    }
    return low;
  }

  private double allowedKelvin() {
    return tables.limit("resistor-zero-celsius") - tables.limit("resistor-full-celsius");
  }

  private HeatPath path(LoadResistor resistor) {
    double rated = resistor.watts();
    double element = allowedKelvin() / rated;
    double freeAir = allowedKelvin() / freeAirWatts.at(rated, 1, BY_SURFACE) - element;
    Mount mount = resistor.mount().orElse(Mount.PRESUMED);
    double toAir = mount.caseKelvinPerWatt(Math.max(freeAir, LEAST_KELVIN_PER_WATT), tables);
    double kilograms = bodyGrams.at(rated, 1, 1) / GRAMS_PER_KILOGRAM;
    double joulesPerKelvin = kilograms * tables.limit("aluminium-joules-per-kilogram-kelvin");
    return new HeatPath(element, elementSeconds(), toAir, joulesPerKelvin);
  }

  /**
   * Returns the time constant of the element that makes the table's burst just bearable, seconds.
   */
  private double elementSeconds() {
    return -tables.limit("resistor-burst-seconds") / Math.log(1 - 1 / largestMultiple());
  }

  /** Returns the assumption behind {@link #burstSeconds}, one sentence. */
  public String burstAssumption() {
    return Sentence.of(
        "burst times are estimates from cold: the element bears {} times its rating for {} s, and"
            + " the body warms as it is mounted",
        Printer.UTF8.exact(largestMultiple(), Unit.ONE),
        Printer.UTF8.exact(tables.limit("resistor-burst-seconds"), Unit.ONE));
  }

  /** Returns the largest overload for which a burst is known, as a multiple of the rating. */
  public double largestMultiple() {
    return tables.limit("resistor-burst-multiple");
  }
}
