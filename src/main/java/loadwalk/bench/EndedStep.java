package loadwalk.bench;

import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.text.Sentence;

/**
 * A step that drove a load and ended before it could be measured; its readings are the last ones,
 * none of them at the limit.
 *
 * @param target the step
 * @param outcome how it ended
 * @param readings the last values in SI units, finite
 */
public record EndedStep(Target target, Outcome outcome, Map<ReadingId, Double> readings) {
  /** Copies the readings. */
  public EndedStep {
    readings = Map.copyOf(readings);
    if (!readings.values().stream().allMatch(Double::isFinite)) {
      throw new IllegalArgumentException("the readings of " + target.stepId() + " must be finite");
    }
  }

  /** Returns the load that each channel drove, ohms. */
  public double channelOhms() {
    return target.mode().channelOhms(target.ohms());
  }

  /** Returns the outcome with the current at which it came: "protected at 41.2 A". */
  public String text() {
    OptionalDouble amps = reading(ReadingId.SUPPLY_AMPS);
    return amps.isPresent()
        ? Sentence.of("{} at {} A", outcome.text(), Figures.three(amps.getAsDouble()))
        : outcome.text();
  }

  /** Returns a reading, if it was taken. */
  public OptionalDouble reading(ReadingId id) {
    Double value = readings.get(id);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
