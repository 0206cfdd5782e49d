package loadwalk.forecast;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/** Tells the heatsink's temperature from the one read last. */
final class SinkTemperature {
  private static final double FALL = 8;
  private static final double RISE = 14;

  private SinkTemperature() {}

  /** Returns the band of the next heatsink reading, degrees Celsius, where one was read before. */
  static Optional<Band> band(Evidence evidence, Target target) {
    List<Observation> observations = evidence.observations();
    for (int i = observations.size() - 1; i >= 0; i--) {
      OptionalDouble read = observations.get(i).reading(ReadingId.SINK_CELSIUS);
      if (read.isPresent()) {
        double last = read.getAsDouble();
        double rise = target.kind() == Target.Kind.WARM_UP ? 3 * RISE : RISE;
        return Optional.of(new Band(last - FALL, last + 1, last + rise));
      }
    }
    return Optional.empty();
  }
}
