package loadwalk.forecast.model;

import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Warmth;

/** Predicts the heatsink temperature from the last reading. */
final class SinkTemperature {
  /** Largest cooling of the heatsink from one step to the next, K. Chosen by hand. */
  private static final double FALL = 8;

  /** Largest warming from one step to the next, K. Chosen by hand. */
  private static final double RISE = 14;

  /** Number of such rises that a warm-up may bring. Chosen by hand. */
  private static final double WARM_UP_RISES = 3;

  /** Warming in most steps, K. Chosen by hand. */
  private static final double USUAL_RISE = 1;

  /** Standard uncertainties either side of the end of a warm-up. */
  private static final double COVERAGE = 2;

  /** How far below the air read a heatsink at rest may be, K. Chosen by hand. */
  private static final double BELOW_AIR = 3;

  /** The air where nobody read it, °C. Chosen by hand. */
  private static final double COLD_ROOM = 10;

  private SinkTemperature() {}

  /**
   * Returns the band of the next heatsink reading, degrees Celsius, if there is an earlier reading.
   * A warm-up settles where the walk's first one did, in the same air; after a rest the heatsink
   * may be as cold as the air.
   */
  static Optional<Band> band(Evidence evidence, Target target) {
    OptionalDouble read = newest(evidence, ReadingId.SINK_CELSIUS);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    double last = read.getAsDouble();
    double coldest = last - FALL;
    if (evidence.warmth().cooled()) {
      OptionalDouble air = newest(evidence, ReadingId.AMBIENT_CELSIUS);
      coldest = Math.min(coldest, air.isPresent() ? air.getAsDouble() - BELOW_AIR : COLD_ROOM);
    }
    if (target.kind() == Target.Kind.WARM_UP) {
      return Optional.of(warmUp(evidence.warmth(), last, coldest));
    }
    double middle = evidence.warmth().cooled() ? (coldest + last) / 2 : last + USUAL_RISE;
    return Optional.of(new Band(coldest, middle, last + RISE));
  }

  private static Band warmUp(Warmth warmth, double last, double coldest) {
    if (warmth.endCelsius().isEmpty()) {
      return new Band(coldest, last + USUAL_RISE, last + WARM_UP_RISES * RISE);
    }
    double end = warmth.endCelsius().getAsDouble();
    double open = Math.max(FALL, COVERAGE * warmth.endU());
    return new Band(Math.min(coldest, end - open), end, Math.max(last, end) + open);
  }

  private static OptionalDouble newest(Evidence evidence, ReadingId id) {
    OptionalDouble newest = OptionalDouble.empty();
    for (Observation observation : evidence.observations()) {
      OptionalDouble read = observation.reading(id);
      newest = read.isPresent() ? read : newest;
    }
    return newest;
  }
}
