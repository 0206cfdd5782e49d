package loadwalk.bench;

import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Computes how many watts a chassis-mounted wirewound load resistor can take, and for how long.
 *
 * <p>The rating holds with the case on its heatsink at 25 °C (MIL-PRF-39009). The burst is an
 * estimate: catalogues commonly allow five times the rating for five seconds, and the wire is
 * assumed to lose no heat, so the time falls as the watts rise. Each burst starts cold.
 */
public final class ResistorDerating {
  /**
   * The rise of a resistor at its rated watts, kelvin: rated in full with its case at 25 °C, not at
   * all at 250 °C (MIL-PRF-39009, from its abstract).
   */
  private static final double RISE_AT_RATED_KELVIN = 225;

  private final Tables tables;

  /** Takes the limits from the tables. */
  public ResistorDerating(Tables tables) {
    this.tables = tables;
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
   * Returns the part of a resistor's rating that may be used continuously; 0.75 in the stock
   * tables.
   */
  public double continuousShare() {
    return tables.limit("resistor-continuous-percent") / 100;
  }

  /**
   * Returns how long a cold resistor may take the watts, seconds; infinite within the continuous
   * share, 0 above the largest known overload.
   */
  public double burstSeconds(double watts, double ratedWatts) {
    double multiple =
        Checks.zeroOrMore(watts, "watts") / Checks.positive(ratedWatts, "rated watts");
    double most = tables.limit("resistor-burst-multiple");
    if (multiple <= continuousShare()) {
      return Double.POSITIVE_INFINITY;
    }
    return multiple > most ? 0 : most * tables.limit("resistor-burst-seconds") / multiple;
  }

  /** Returns the most watts that a cold resistor bears for a time. */
  public double mostWatts(LoadResistor resistor, Hold hold) {
    double multiple = 1 / (1 - Math.exp(-hold.seconds() / elementSeconds()));
    return resistor.watts() * Math.min(multiple, largestMultiple());
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
        "burst times are estimates: {} times the rating for {} s, from cold, on the heatsink",
        Printer.UTF8.exact(tables.limit("resistor-burst-multiple"), Unit.ONE),
        Printer.UTF8.exact(tables.limit("resistor-burst-seconds"), Unit.ONE));
  }

  /** Returns the largest overload for which a burst is known, as a multiple of the rating. */
  public double largestMultiple() {
    return tables.limit("resistor-burst-multiple");
  }
}
