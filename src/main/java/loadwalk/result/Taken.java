package loadwalk.result;

import java.util.Objects;
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
 */
public record Taken(ReadingId id, double value, double resolution, double scatter) {
  /** Checks the numbers. */
  public Taken {
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
  }

  /** Makes a reading whose scatter is not known. */
  public Taken(ReadingId id, double value, double resolution) {
    this(id, value, resolution, 0);
  }
}
