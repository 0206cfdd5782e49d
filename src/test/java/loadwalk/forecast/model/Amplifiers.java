package loadwalk.forecast.model;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;

/** Amplifiers and walks that the tests of the forecast share; makers are invented. */
public final class Amplifiers {
  public static final Evidence.Conditions CONDITIONS = new Evidence.Conditions(40, 1, 13.8);
  public static final Target IDLE = Target.idle("idle");
  public static final Target STEREO_4 = Target.loaded("stereo-4", Mode.STEREO, 4);
  public static final Target STEREO_2 = Target.loaded("stereo-2", Mode.STEREO, 2);
  public static final Target STEREO_1 = Target.loaded("stereo-1", Mode.STEREO, 1);
  public static final Target BRIDGED_4 = Target.loaded("bridged-4", Mode.BRIDGED, 4);
  public static final Target BRIDGED_2 = Target.loaded("bridged-2", Mode.BRIDGED, 2);
  public static final Target BRIDGED_1 = Target.loaded("bridged-1", Mode.BRIDGED, 1);
  public static final Target BRIDGED_HALF = Target.loaded("bridged-0.5", Mode.BRIDGED, 0.5);

  /** The idle current of the worked amplifier, amperes. */
  static final double IDLE_AMPS = 1.4;

  private Amplifiers() {}

  /** Returns an amplifier rated 50 W into 4 Ω, class AB. */
  public static Amplifier rated(double watts) {
    return with(
        List.of(new Rating(Mode.STEREO, 4, watts, OptionalDouble.of(13.8), OptionalDouble.empty())),
        List.of());
  }

  public static Amplifier with(List<Rating> ratings, List<Double> fuses) {
    return with(ratings, OptionalDouble.empty(), OptionalDouble.empty(), fuses, Optional.empty());
  }

  public static Amplifier with(
      List<Rating> ratings,
      OptionalDouble leastStereo,
      OptionalDouble leastBridged,
      List<Double> fuses,
      Optional<Boolean> regulated) {
    return new Amplifier(
        "Halvorsen & Pike",
        "HP-250",
        Optional.empty(),
        OptionalInt.empty(),
        Optional.of("AB"),
        OptionalInt.of(2),
        ratings,
        leastStereo,
        leastBridged,
        fuses,
        regulated);
  }

  public static Evidence evidence(Amplifier amplifier, List<Observation> observations) {
    return new Evidence(amplifier, Bench.unknown(), CONDITIONS, observations);
  }

  /** Returns exact readings of an amplifier of 15.3 V behind 0.1 Ω a channel, 58 % efficient. */
  public static Map<ReadingId, Double> readings(Target target) {
    return readings(target, 1);
  }

  /** Returns its readings where the load really connected is a factor of the nominal one. */
  public static Map<ReadingId, Double> readings(Target target, double factor) {
    Map<ReadingId, Double> readings = new EnumMap<>(ReadingId.class);
    if (target.kind() == Target.Kind.IDLE) {
      readings.put(ReadingId.SUPPLY_AMPS, IDLE_AMPS);
      readings.put(ReadingId.SUPPLY_VOLTS, 13.78);
      return readings;
    }
    double ohms = target.mode().channelOhms(target.ohms() * factor);
    double volts = 15.3 * ohms / (ohms + 0.1);
    double loadVolts = target.mode() == Mode.BRIDGED ? 2 * volts : volts;
    double amps = IDLE_AMPS + 2 * volts * volts / ohms / (0.58 * 13.7);
    readings.put(ReadingId.OUTPUT_VOLTS, rounded(loadVolts, 100));
    readings.put(ReadingId.SUPPLY_AMPS, rounded(amps, 10));
    readings.put(ReadingId.SUPPLY_VOLTS, rounded(13.8 - 0.004 * amps, 100));
    return readings;
  }

  /** Returns what a bench and an amplifier rated 50 W tell after idle, 4 Ω and 2 Ω in stereo. */
  static WalkModel measured(Bench bench) {
    List<Observation> walk =
        List.of(
            new Observation(IDLE, Map.of(ReadingId.SUPPLY_AMPS, IDLE_AMPS)),
            new Observation(STEREO_4, readings(STEREO_4)),
            new Observation(STEREO_2, readings(STEREO_2)));
    return new WalkModel(new Evidence(rated(50), bench, CONDITIONS, walk));
  }

  /** Returns the honest walk before a step. */
  public static List<Observation> before(Target step) {
    List<Observation> known = new ArrayList<>();
    for (Target target :
        List.of(
            IDLE, STEREO_4, STEREO_2, STEREO_1, BRIDGED_4, BRIDGED_2, BRIDGED_1, BRIDGED_HALF)) {
      if (target.equals(step)) {
        return known;
      }
      known.add(new Observation(target, readings(target)));
    }
    throw new IllegalArgumentException(step.stepId());
  }

  public static double rounded(double value, double perUnit) {
    return Math.rint(value * perUnit) / perUnit;
  }
}
