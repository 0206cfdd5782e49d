package loadwalk.bench;

import java.util.TreeMap;

/**
 * Computes what a chassis-mounted wirewound load resistor takes.
 *
 * <p>The rating holds with the case on its heatsink at 25 °C and falls in a straight line to
 * nothing at 250 °C (MIL-PRF-39009). The burst is an estimate: catalogues commonly allow five times
 * the rating for five seconds, and the wire is assumed to keep all its heat, so the time falls as
 * the watts rise. Each burst starts cold.
 */
public final class ResistorDerating {
  /** The assumption behind {@link #burstSeconds}, one sentence. */
  public static final String BURST_ASSUMPTION =
      "a burst is an estimate from the usual catalogue figure of 5 times the rating for 5 s, from"
          + " cold, on its heatsink";

  private static final String FREE_AIR = "resistor-free-air-";

  private final Tables tables;
  private final Curve freeAir;

  /** Prepares the curves of the tables. */
  public ResistorDerating(Tables tables) {
    this.tables = tables;
    TreeMap<Double, Double> pairs = new TreeMap<>();
    tables
        .limits()
        .forEach(
            (key, value) -> {
              if (key.startsWith(FREE_AIR)) {
                pairs.put(Double.parseDouble(key.substring(FREE_AIR.length())), value.value());
              }
            });
    freeAir = new Curve(pairs);
  }

  /** Returns the watts a resistor takes with its heatsink at a temperature, °C; never below 0. */
  public double watts(LoadResistor resistor, double sinkCelsius) {
    if (!Double.isFinite(sinkCelsius)) {
      throw new IllegalArgumentException("heatsink must be a number, got " + sinkCelsius);
    }
    double full = tables.limit("resistor-full-celsius");
    double zero = tables.limit("resistor-zero-celsius");
    double part = Math.min(1, Math.max(0, (zero - sinkCelsius) / (zero - full)));
    return part * resistor.watts();
  }

  /** Returns the watts a resistor takes in free air, no heatsink, about 25 °C. */
  public double freeAirWatts(LoadResistor resistor) {
    double watts = freeAir.at(resistor.watts(), 1, 0);
    return Math.min(watts, resistor.watts());
  }

  /** Returns the part of a resistor's rating that may be used continuously, 0.75 in stock. */
  public double continuousShare() {
    return tables.limit("resistor-continuous-percent") / 100;
  }

  /**
   * Returns how long a resistor may take the watts from cold, seconds; infinite within the
   * continuous share, 0 above the largest overload that is known.
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

  /** Returns the largest overload for which a burst is known, as a multiple of the rating. */
  public double largestMultiple() {
    return tables.limit("resistor-burst-multiple");
  }
}
