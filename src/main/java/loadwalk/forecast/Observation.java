package loadwalk.forecast;

import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/**
 * The readings of one step that later forecasts may use; doubted readings are left out.
 *
 * @param target the step
 * @param readings the values in SI units, finite
 */
public record Observation(Target target, Map<ReadingId, Double> readings) {
  /** Copies the readings. */
  public Observation {
    readings = Map.copyOf(readings);
    readings.values().forEach(Observation::requireFinite);
  }

  /** Returns a reading, if it was taken. */
  public OptionalDouble reading(ReadingId id) {
    Double value = readings.get(id);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private static void requireFinite(Double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a reading must be finite, got " + value);
    }
  }
}
