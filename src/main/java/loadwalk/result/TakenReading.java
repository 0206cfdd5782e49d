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
 * @param resolution the value of one step of the last digit typed, in the reading's unit; 0 where
 *     it was not typed
 * @param scatter the standard deviation of readings like this one, type A (JCGM 100:2008, 4.2.2),
 *     in the reading's unit; 0 where it is not known
 * @param scatterDegrees the degrees of freedom of the scatter, 1 or more (4.2.6); infinite where it
 *     is not known
 * @param captured what a captured wave says of its own uncertainty, where no meter took the reading
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
   * @param calibration how samples became volts, the same words where it is the same calibration
   * @param calibrationU the relative standard uncertainty of that, where it was stated
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

  /** Makes a reading whose scatter is not known. */
  public TakenReading(ReadingId id, double value, double resolution) {
    this(id, value, resolution, 0, Double.POSITIVE_INFINITY, Optional.empty());
  }

  /** Makes a reading that a meter took again and again, with its scatter's degrees of freedom. */
  public TakenReading(
      ReadingId id, double value, double resolution, double scatter, double scatterDegrees) {
    this(id, value, resolution, scatter, scatterDegrees, Optional.empty());
  }
}
