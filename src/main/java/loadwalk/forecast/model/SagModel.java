package loadwalk.forecast.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;

/**
 * Predicts the supply volts at the amplifier's terminals from the current.
 *
 * <p>Vs = V0 − R I with normal priors on V0 and R: a Bayesian line in closed form, whose scatter
 * grows with the residuals of the readings. If the current is not read, the one estimated from the
 * output replaces it; that is off by much the same factor at every load, and R absorbs the factor.
 */
final class SagModel {
  /**
   * Standard deviation of the supply volts at no current about the setting, volts. Common practice,
   * no source.
   */
  static final double SET_SPREAD = 0.12;

  /**
   * Standard deviation of a battery's volts at rest: its charge falls as it works. Chosen by hand.
   */
  private static final double BATTERY_SPREAD = 0.25;

  /** Standard deviation of a battery's resistance, a fraction of it. Chosen by hand. */
  private static final double BATTERY_OHMS_SPREAD = 0.3;

  /** Sag at the current into the usual load, volts: supplies are chosen to suit the amplifier. */
  static final double USUAL_SAG = 0.15;

  /** Its standard deviation, volts. Set on the experiment. */
  static final double USUAL_SAG_SPREAD = 0.2;

  /**
   * Standard deviation of a supply volts reading, a fraction of the setting. Set on the experiment.
   */
  static final double SCATTER = 0.006;

  /** Number of readings that this prior scatter is worth. Chosen by hand. */
  static final double PRIOR_FREEDOM = 5;

  /**
   * Lowest supply volts predicted, a fraction of the setting: below that amplifiers switch off.
   * Common practice, no source.
   */
  private static final double LEAST_VOLTS = 0.5;

  private final double[] estimate = new double[2];
  private final double[] covariance = new double[3];
  private final double scatter;
  private final double setVolts;

  /**
   * Fits the readings of a walk.
   *
   * @param usualAmps the current expected into 4 Ω before the first reading, amperes
   * @param drawn the current of a step as read, or otherwise as estimated from its output, amperes;
   *     NaN if neither is known
   */
  SagModel(Evidence evidence, double usualAmps, ToDoubleFunction<Observation> drawn) {
    setVolts = evidence.conditions().supplyVolts();
    double sagSpread = USUAL_SAG_SPREAD / usualAmps;
    double base = SCATTER * setVolts;
    double precision = 1 / (base * base);
    Start start = start(evidence.bench(), USUAL_SAG / usualAmps, sagSpread);
    double a = 1 / (start.voltsSpread() * start.voltsSpread());
    double b = 0;
    double c = 1 / (start.ohmsSpread() * start.ohmsSpread());
    double u = start.volts() * a;
    double w = start.ohms() * c;
    List<Told> all = told(evidence.observations(), drawn);
    for (Told told : all) {
      a += precision;
      b -= precision * told.amps();
      c += precision * told.amps() * told.amps();
      u += precision * told.volts();
      w -= precision * told.amps() * told.volts();
    }
    double determinant = a * c - b * b;
    estimate[0] = (c * u - b * w) / determinant;
    estimate[1] = Math.max(0, (a * w - b * u) / determinant);
    covariance[0] = c / determinant;
    covariance[1] = -b / determinant;
    covariance[2] = a / determinant;
    scatter = scatter(all, base);
  }

  /** What is believed of V0, volts, and of R, ohms, before any reading, with their spreads. */
  private record Start(double volts, double voltsSpread, double ohms, double ohmsSpread) {}

  /** A battery starts from its own volts and adds its own resistance to that of the leads. */
  private Start start(Bench bench, double leadOhms, double leadSpread) {
    return bench
        .source()
        .filter(source -> bench.onBattery())
        .map(
            battery ->
                new Start(
                    battery.volts(),
                    BATTERY_SPREAD,
                    leadOhms + battery.ohms(),
                    Math.hypot(leadSpread, BATTERY_OHMS_SPREAD * battery.ohms())))
        .orElse(new Start(setVolts, SET_SPREAD, leadOhms, leadSpread));
  }

  /** Returns the middle of the supply volts at a current, amperes. */
  double volts(double amps) {
    return Math.max(LEAST_VOLTS * setVolts, estimate[0] - estimate[1] * amps);
  }

  /**
   * Returns the standard deviation of a supply volts reading at a current that is itself predicted.
   */
  double deviation(double amps, double ampsDeviation) {
    double variance = covariance[0] - 2 * amps * covariance[1] + amps * amps * covariance[2];
    double through = estimate[1] * ampsDeviation;
    return Math.sqrt(Math.max(0, variance) + scatter * scatter + through * through);
  }

  /** The supply volts of a step and the current at which they were read. */
  private record Told(double volts, double amps) {}

  private static List<Told> told(
      List<Observation> observations, ToDoubleFunction<Observation> drawn) {
    List<Told> all = new ArrayList<>();
    for (Observation observation : observations) {
      double volts = observation.reading(ReadingId.SUPPLY_VOLTS).orElse(Double.NaN);
      double amps = drawn.applyAsDouble(observation);
      if (volts > 0 && amps >= 0) {
        all.add(new Told(volts, amps));
      }
    }
    return all;
  }

  /**
   * Returns the ratio of the 97.5 % point of Student's t to that of the normal: the widening for a
   * scatter known from few readings. The closed form is accurate enough, and quick, because every
   * reading needs it again (Abramowitz and Stegun, 26.7.5, from memory; 1 % low at five degrees).
   * {@code Quantity.coverageFactor} is exact at a different level, 95.45 %; using it here would
   * move every band of the supply volts.
   */
  private static double student(double freedom) {
    double z = StepBands.TAIL_QUANTILE * StepBands.TAIL_QUANTILE;
    return 1 + (z + 1) / (4 * freedom) + (5 * z * z + 16 * z + 3) / (96 * freedom * freedom);
  }

  private double scatter(List<Told> all, double base) {
    double squares = PRIOR_FREEDOM * base * base;
    double freedom = PRIOR_FREEDOM;
    for (Told told : all) {
      double off = told.volts() - (estimate[0] - estimate[1] * told.amps());
      squares += off * off;
      freedom++;
    }
    return Math.sqrt(squares / freedom) * student(freedom);
  }
}
