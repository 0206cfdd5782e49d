package loadwalk.bench;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Computes resistance, drop, heat and permitted current of copper leads.
 *
 * <p>AWG: diameter 0.127 mm · 92^((36 − n)/39) (ASTM B258) with annealed copper (IACS, IEC 60028);
 * the stranding of a real lead adds about 2 %. Metric: the maxima of IEC 60228 class 5,
 * interpolated on area between sizes. Copper at temperature t: R(t) = R20 (234.5 + t)/254.5 (IEC
 * 60228).
 */
public final class Wire {
  private static final double REFERENCE_CELSIUS = 20;

  private final Tables tables;
  private final Curve ohmsPerKilometreByArea;
  private final Curve ampsByAwgArea;
  private final Curve ampsByMm2;

  /** Prepares the curves of the tables. */
  public Wire(Tables tables) {
    this.tables = tables;
    ohmsPerKilometreByArea = curve(tables.wires(), true);
    ampsByAwgArea = curve(tables.ampacities(), false);
    ampsByMm2 = curve(tables.ampacities(), true);
  }

  /** Returns the resistance of one metre of a single conductor, ohms, at a temperature, °C. */
  double ohmsPerMetre(Lead.Gauge gauge, double celsius) {
    return ohmsPerMetreAt20(gauge) * temperatureFactor(celsius);
  }

  /** Returns copper's resistance at a temperature, °C, over that at 20 °C. */
  double temperatureFactor(double celsius) {
    double zero = tables.limit("copper-zero-celsius");
    if (!(celsius > zero) || Double.isInfinite(celsius)) {
      throw new IllegalArgumentException(
          "copper temperature must lie above " + zero + " °C, got " + celsius);
    }
    return (celsius - zero) / (REFERENCE_CELSIUS - zero);
  }

  /**
   * Returns the resistance of a run with all its parallel conductors, ohms, at a temperature, °C.
   */
  public double ohms(Lead lead, double celsius) {
    return ohmsPerMetre(lead.gauge(), celsius) * lead.metres() / lead.parallel();
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

  /** Returns the volts lost in a run at a current, amperes, and a copper temperature, °C. */
  public double dropVolts(Lead lead, double amps, double celsius) {
    return Checks.zeroOrMore(amps, "amps") * ohms(lead, celsius);
  }

  /**
   * Returns the current a run may carry continuously, amperes: 33 CFR 183.425 for AWG and ISO 10133
   * for mm², insulation for 105 °C at 30 °C. Between sizes it is interpolated on area; below the
   * table it is proportional to area, and above the table it stays at the last value: both err on
   * the low side. Three or more conductors side by side count as a bundle.
   */
  public double ampacity(Lead lead) {
    double single = singleAmpacity(lead.gauge());
    return single * lead.parallel() * bundleFactor(lead.parallel());
  }

  /** Returns the current a run bears for a time, amperes. */
  public double mostAmps(Lead lead, Hold hold) {
    return ampacity(lead);
  }

  private double singleAmpacity(Lead.Gauge gauge) {
    Curve curve = gauge.isMetric() ? ampsByMm2 : ampsByAwgArea;
    return curve.at(gauge.areaMm2(), 1, 0);
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
