package loadwalk.forecast.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;

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

  private SinkTemperature() {}

  /**
   * Returns the band of the next heatsink reading, degrees Celsius, if there is an earlier reading.
   */
  static Optional<Band> band(Evidence evidence, Target target) {
    List<Observation> observations = evidence.observations();
    for (int i = observations.size() - 1; i >= 0; i--) {
      OptionalDouble read = observations.get(i).reading(ReadingId.SINK_CELSIUS);
      if (read.isPresent()) {
        double last = read.getAsDouble();
        double rise = target.kind() == Target.Kind.WARM_UP ? WARM_UP_RISES * RISE : RISE;
        return Optional.of(new Band(last - FALL, last + USUAL_RISE, last + rise));
      }
    }
    return Optional.empty();
  }
}
