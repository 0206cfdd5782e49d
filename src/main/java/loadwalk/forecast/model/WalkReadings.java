package loadwalk.forecast.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.forecast.caution.StepCautions;

/** Converts the readings of a walk to those of one channel into the load it drives. */
public final class WalkReadings {
  /**
   * Largest difference between a resistor and the requested load that still counts as the same
   * value, a fraction.
   */
  private static final double SAME_NOMINAL = 0.01;

  /** Allowance for floating-point error in a subtraction. */
  private static final double FLOATING = 1e-9;

  /** Number of newest readings that a model uses: more cost time and add little. Chosen by hand. */
  private static final int MOST_POINTS = 14;

  private WalkReadings() {}

  /**
   * One loaded step at the limit.
   *
   * @param channelOhms the load that each channel drives, ohms
   * @param bridged whether it was measured bridged
   * @param logVolts ln of one channel's volts
   * @param supplyVolts the supply volts, NaN if not read
   * @param supplyAmps the supply amperes, NaN if not read
   */
  record Point(
      double channelOhms,
      boolean bridged,
      double logVolts,
      double supplyVolts,
      double supplyAmps) {}

  /** Returns the steps at the limit that gave output volts or watts, the newest fourteen. */
  static List<Point> points(Evidence evidence) {
    List<Point> points = new ArrayList<>();
    for (Observation observation : evidence.observations()) {
      if (atLimit(observation.target())) {
        Target target = observation.target();
        double ohms = loadOhms(evidence.bench(), target, observation.readings());
        double volts = volts(observation.readings(), ohms);
        if (volts > 0) {
          points.add(
              new Point(
                  target.mode().channelOhms(ohms),
                  target.mode() == Mode.BRIDGED,
                  Math.log(channelVolts(target, volts)),
                  positive(observation.reading(ReadingId.SUPPLY_VOLTS)),
                  positive(observation.reading(ReadingId.SUPPLY_AMPS))));
        }
      }
    }
    int size = points.size();
    return size <= MOST_POINTS ? points : List.copyOf(points.subList(size - MOST_POINTS, size));
  }

  /** Returns whether a step drives a known load at the amplifier's limit. */
  public static boolean atLimit(Target target) {
    return target.kind() == Target.Kind.LOADED && target.ohms() > 0;
  }

  /**
   * Returns the load to calculate with: the measured one if credible, otherwise the nominal one.
   */
  public static double loadOhms(Bench bench, Target target, Map<ReadingId, Double> readings) {
    Double measured = readings.get(ReadingId.LOAD_OHMS);
    boolean credible = measured != null && loadBand(bench, target.ohms()).holds(measured);
    return credible ? measured : target.ohms();
  }

  /**
   * Returns the expected band of a cold load check, ohms: the load within its tolerance and the
   * meter's, by the rule of {@link StepCautions#coldLoad}.
   */
  public static Band loadBand(Bench bench, double ohms) {
    double stock =
        bench.loads().stream()
            .filter(r -> Math.abs(r.ohms() - ohms) <= SAME_NOMINAL * ohms)
            .mapToDouble(LoadResistor::tolerancePercent)
            .max()
            .orElse(0);
    double percent = Math.max(StepCautions.DEFAULT_LOAD_TOLERANCE_PERCENT, stock);
    double meter = bench.meterFor(ReadingId.LOAD_OHMS).map(m -> m.halfWidth(ohms)).orElse(0.0);
    double half = (ohms * percent / 100 + meter) * (1 + FLOATING);
    return new Band(Math.max(0, ohms - half), ohms, ohms + half);
  }

  /** Returns the reading to use for the output: volts if entered, otherwise watts. */
  public static ReadingId output(Map<ReadingId, Double> readings) {
    return readings.containsKey(ReadingId.OUTPUT_VOLTS)
            || !readings.containsKey(ReadingId.OUTPUT_WATTS)
        ? ReadingId.OUTPUT_VOLTS
        : ReadingId.OUTPUT_WATTS;
  }

  /**
   * Returns the volts across one load, from volts or, failing that, from watts; NaN if neither was
   * entered.
   */
  public static double volts(Map<ReadingId, Double> readings, double ohms) {
    Double volts = readings.get(ReadingId.OUTPUT_VOLTS);
    if (volts != null) {
      return volts;
    }
    Double watts = readings.get(ReadingId.OUTPUT_WATTS);
    return watts == null || watts < 0 ? Double.NaN : Math.sqrt(watts * ohms);
  }

  /** Returns one channel's share of the volts across the load. */
  static double channelVolts(Target target, double volts) {
    return target.mode() == Mode.BRIDGED ? volts / 2 : volts;
  }

  /** Returns the last measured idle current, amperes, if there is one. */
  static OptionalDouble idleAmps(Evidence evidence) {
    OptionalDouble idle = OptionalDouble.empty();
    for (Observation observation : evidence.observations()) {
      OptionalDouble amps = observation.reading(ReadingId.SUPPLY_AMPS);
      if (observation.target().kind() == Target.Kind.IDLE && amps.isPresent()) {
        idle = amps;
      }
    }
    return idle;
  }

  private static double positive(OptionalDouble reading) {
    double value = reading.orElse(Double.NaN);
    return value > 0 ? value : Double.NaN;
  }
}
