package loadwalk.result;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;

/**
 * One raw reading.
 *
 * @param id what was read
 * @param value the reading in SI units, finite
 * @param resolution the value of one step of the last digit typed, in the reading's unit; 0 if it
 *     was not typed
 * @param scatter the standard deviation of repeated readings, type A (JCGM 100:2008, 4.2.2), in the
 *     reading's unit; 0 if unknown
 * @param scatterDegrees the degrees of freedom of the scatter, 1 or more (4.2.6); infinite if
 *     unknown
 * @param captured the uncertainty from a captured wave, if no meter took the reading
 */
public record TakenReading(
    ReadingId id,
    double value,
    double resolution,
    double scatter,
    double scatterDegrees,
    Optional<Captured> captured) {
  /**
   * The uncertainty of a reading that was taken from a captured wave.
   *
   * @param calibration how samples were converted to volts; equal text means the same calibration
   * @param calibrationU the relative standard uncertainty of the calibration, if stated
   */
  public record Captured(String calibration, OptionalDouble calibrationU) {}

  /** Checks the numbers. */
  public TakenReading {
    Objects.requireNonNull(id, "id");
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(id.key() + " must be finite, got " + value);
    }
    if (!(resolution >= 0) || Double.isInfinite(resolution)) {
      throw new IllegalArgumentException(
          "resolution of " + id.key() + " must be a number from 0 up, got " + resolution);
    }
    if (!(scatter >= 0) || Double.isInfinite(scatter)) {
      throw new IllegalArgumentException(
          "scatter of " + id.key() + " must be a number from 0 up, got " + scatter);
    }
    if (!(scatterDegrees >= 1)) {
      throw new IllegalArgumentException(
          "degrees of freedom of " + id.key() + " must be 1 or more, got " + scatterDegrees);
    }
  }

  /** Makes a reading with unknown scatter. */
  public TakenReading(ReadingId id, double value, double resolution) {
    this(id, value, resolution, 0, Double.POSITIVE_INFINITY, Optional.empty());
  }

  /** Makes a reading from repeated meter readings, with the degrees of freedom of their scatter. */
  public TakenReading(
      ReadingId id, double value, double resolution, double scatter, double scatterDegrees) {
    this(id, value, resolution, scatter, scatterDegrees, Optional.empty());
  }
}
