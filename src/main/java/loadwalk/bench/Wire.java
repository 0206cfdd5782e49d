package loadwalk.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import loadwalk.text.Sentence;

/**
 * Computes resistance, drop, heat and permitted current of leads.
 *
 * <p>AWG: diameter 0.127 mm · 92^((36 − n)/39) (ASTM B258) with annealed copper (IACS, IEC 60028);
 * the stranding of a real lead adds about 2 %. Metric: the maxima of IEC 60228 class 5,
 * interpolated on area between sizes. Copper at temperature t: R(t) = R20 (234.5 + t)/254.5 (IEC
 * 60228). Copper-clad aluminium has the resistance of the copper size times the ratio of the
 * resistivities, and its own zero.
 */
public final class Wire {
  private static final double REFERENCE_CELSIUS = 20;

  /** What the insulation of the ampacity tables is rated for, °C. */
  private static final double TABLE_CELSIUS = 105;

  private final Tables tables;
  private final Curve ohmsPerKilometreByArea;
  private final Curve ampsByAwgArea;
  private final Curve ampsByMm2;
  private final TreeMap<Double, Curve> ampsByCelsius = new TreeMap<>();

  /** Prepares the curves of the tables. */
  public Wire(Tables tables) {
    this.tables = tables;
    ohmsPerKilometreByArea = curve(tables.wires(), true);
    ampsByAwgArea = curve(tables.ampacities(), false);
    ampsByMm2 = curve(tables.ampacities(), true);
    TreeMap<Double, TreeMap<Double, Double>> columns = new TreeMap<>();
    tables
        .insulations()
        .forEach(
            (key, amps) ->
                columns
                    .computeIfAbsent(key.celsius(), celsius -> new TreeMap<>())
                    .put(key.gauge().areaMm2(), amps.value()));
    columns.forEach((celsius, points) -> ampsByCelsius.put(celsius, new Curve(points)));
  }

  /** Returns the resistance of one metre of a single conductor, ohms, at a temperature, °C. */
  double ohmsPerMetre(Lead.Gauge gauge, Metal metal, double celsius) {
    return ohmsPerMetreAt20(gauge) * resistivity(metal) * temperatureFactor(metal, celsius);
  }

  /** Returns a metal's resistivity over that of copper, at 20 °C. */
  private double resistivity(Metal metal) {
    String key = "-ohm-mm2-per-metre";
    return metal.value(tables, key) / Metal.COPPER.value(tables, key);
  }

  /** Returns a metal's resistance at a temperature, °C, over that at 20 °C. */
  double temperatureFactor(Metal metal, double celsius) {
    double zero = metal.value(tables, "-zero-celsius");
    if (!(celsius > zero) || Double.isInfinite(celsius)) {
      throw new IllegalArgumentException(
          Sentence.of(
              "the temperature of {} must lie above {} °C, got {}",
              metal.text(),
              String.valueOf(zero),
              String.valueOf(celsius)));
    }
    return (celsius - zero) / (REFERENCE_CELSIUS - zero);
  }

  /**
   * Returns the resistance of a run with all its parallel conductors, ohms, at a temperature, °C.
   */
  public double ohms(Lead lead, double celsius) {
    return ohmsPerMetre(lead.gauge(), lead.metal(), celsius) * lead.metres() / lead.parallel();
  }

  /** Returns the resistance of runs in series, ohms, at a temperature, °C. */
  public double ohms(List<Lead> leads, double celsius) {
    return leads.stream().mapToDouble(lead -> ohms(lead, celsius)).sum();
  }

  /**
   * Returns the resistance of all lead runs between supply and amplifier at working temperature,
   * ohms; empty where the bench lists no leads.
   */
  public OptionalDouble ohms(Bench bench) {
    return bench.leads().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(ohms(bench.leads(), workingCelsius()));
  }

  /** Returns the temperature assumed for leads in use, °C. */
  public double workingCelsius() {
    return tables.limit("lead-celsius");
  }

  /** Returns the volts lost in a run at a current, amperes, and a conductor temperature, °C. */
  public double dropVolts(Lead lead, double amps, double celsius) {
    return Checks.zeroOrMore(amps, "amps") * ohms(lead, celsius);
  }

  /**
   * Returns what the insulation of a lead is rated for, °C; a lead that does not say is taken on
   * the cautious side.
   */
  public double insulationCelsius(Lead lead) {
    return lead.insulationCelsius().orElse(tables.limit("insulation-unsaid-celsius"));
  }

  /** Returns the sentences about what the leads do not say and how it is taken. */
  public List<String> taken(Bench bench) {
    List<String> unsaid =
        bench.leads().stream()
            .filter(lead -> lead.insulationCelsius().isEmpty())
            .map(Lead::label)
            .distinct()
            .toList();
    List<String> told = new ArrayList<>();
    if (!unsaid.isEmpty()) {
      told.add(
          Sentence.of(
              "Insulation of lead {}: not said, taken as good for {} °C. 105 °C would carry a"
                  + " quarter more.",
              String.join(", ", unsaid),
              Figures.three(tables.limit("insulation-unsaid-celsius"))));
    }
    return told;
  }

  /**
   * Returns the current a run may carry continuously, amperes: 33 CFR 183.425 for AWG and ISO 10133
   * for mm², insulation for 105 °C at 30 °C. Between sizes it is interpolated on area; below the
   * table it is proportional to area, and above the table it stays at the last value: both err on
   * the low side. Other insulation: times the ratio of its column of 33 CFR 183.425 to that of 105
   * °C. Another metal: what makes the same heat, so with the root of the resistance. Three or more
   * conductors side by side count as a bundle.
   */
  public double ampacity(Lead lead) {
    double celsius = insulationCelsius(lead);
    double single = singleAmpacity(lead.gauge()) * insulationFactor(lead.gauge(), celsius);
    return single
        * metalFactor(lead.metal(), celsius)
        * lead.parallel()
        * bundleFactor(lead.parallel());
  }

  /**
   * Returns the current a run bears for a time, amperes: more than its ampacity while its metal is
   * still warming, but never more than lugs and clamps bear.
   *
   * <p>θ(t) = θ₀ e^(−t/τ) + x² θ∞ (1 − e^(−t/τ)), x being current over ampacity and θ∞ the rise at
   * the ampacity (first-order heating, textbook). A step at half power before leaves the run with
   * half of this heat, θ₀ = x² θ∞ / 2 (common practice, no source), so θ(t) = θ∞ at x = 1/√(1 −
   * e^(−t/τ)/2).
   */
  public double mostAmps(Lead lead, Hold hold) {
    if (hold.isContinuous()) {
      return ampacity(lead);
    }
    double kept = Math.exp(-hold.seconds() / timeConstantSeconds(lead));
    double most = tables.limit("lead-burst-factor");
    return ampacity(lead) * Math.min(most, 1 / Math.sqrt(1 - kept / 2));
  }

  /**
   * Returns how fast a run warms, seconds: the heat its metal holds at the rise of its insulation
   * over the watts at its ampacity.
   */
  double timeConstantSeconds(Lead lead) {
    double celsius = insulationCelsius(lead);
    double amps = ampacity(lead) / lead.parallel();
    double wattsPerMetre = amps * amps * ohmsPerMetre(lead.gauge(), lead.metal(), celsius);
    // 1 mm² over 1 m is 1 cm³.
    double joules = lead.metal().value(tables, "-joules-per-cm3-kelvin") * lead.gauge().areaMm2();
    return joules * (celsius - Tables.Insulated.ROOM_CELSIUS) / wattsPerMetre;
  }

  private double singleAmpacity(Lead.Gauge gauge) {
    Curve curve = gauge.isMetric() ? ampsByMm2 : ampsByAwgArea;
    return curve.at(gauge.areaMm2(), 1, 0);
  }

  /**
   * Returns the amperes in insulation of a rating, °C, over those in insulation for 105 °C; between
   * the columns of the table they follow the rise on logarithmic scales, below them its root.
   */
  private double insulationFactor(Lead.Gauge gauge, double celsius) {
    TreeMap<Double, Double> byRise = new TreeMap<>();
    ampsByCelsius.forEach(
        (column, amps) ->
            byRise.put(column - Tables.Insulated.ROOM_CELSIUS, amps.at(gauge.areaMm2(), 1, 0)));
    Curve curve = new Curve(byRise);
    double room = Tables.Insulated.ROOM_CELSIUS;
    return curve.at(celsius - room, 0.5, 0) / curve.at(TABLE_CELSIUS - room, 0.5, 0);
  }

  private double metalFactor(Metal metal, double celsius) {
    double copper = temperatureFactor(Metal.COPPER, celsius);
    return Math.sqrt(copper / (resistivity(metal) * temperatureFactor(metal, celsius)));
  }

  private double bundleFactor(int conductors) {
    if (conductors < 3) {
      return 1;
    }
    if (conductors == 3) {
      return tables.limit("bundle-factor-3");
    }
    return tables.limit(conductors <= 6 ? "bundle-factor-6" : "bundle-factor-24");
  }

  private double ohmsPerMetreAt20(Lead.Gauge gauge) {
    SourcedNumber exact = tables.wires().get(gauge);
    if (exact != null) {
      return exact.value() / 1000;
    }
    if (!gauge.isMetric()) {
      return tables.limit("copper-ohm-mm2-per-metre") / gauge.areaMm2();
    }
    return ohmsPerKilometreByArea.at(gauge.areaMm2(), -1, -1) / 1000;
  }

  private static Curve curve(Map<Lead.Gauge, SourcedNumber> table, boolean metric) {
    TreeMap<Double, Double> points = new TreeMap<>();
    table.forEach(
        (gauge, value) -> {
          if (gauge.isMetric() == metric) {
            points.put(gauge.areaMm2(), value.value());
          }
        });
    return new Curve(points);
  }
}
