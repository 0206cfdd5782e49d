package loadwalk.forecast.model;

import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;

/**
 * The smallest width of a band: the specification of the meter.
 *
 * <p>If the bench names no meter, ±(1 % + 2 digits) of a 2000-count meter applies (common practice,
 * no source).
 */
public final class MeterFloor {
  /**
   * Half-width for a meter that the bench does not name, a fraction of the reading. Common
   * practice, no source.
   */
  private static final double DEFAULT_PART = 0.01;

  /** Steps of the last digit added to that. Common practice, no source. */
  private static final double DEFAULT_DIGITS = 2;

  /** Counts of its display: 3½ digits. */
  private static final double COUNTS = 2000;

  /** Half-width at a reading of zero, in its unit. Chosen by hand. */
  private static final double LEAST_HALF_WIDTH = 0.01;

  private MeterFloor() {}

  /** Returns the half-width of the meter's specification at a reading, in the reading's unit. */
  public static double halfWidth(Bench bench, ReadingId id, double reading) {
    return bench
        .meterFor(id)
        .map(meter -> meter.halfWidth(reading))
        .orElseGet(() -> standard(Math.abs(reading)));
  }

  /** Returns the band widened to the meter's specification at its middle. */
  static Band widen(Bench bench, ReadingId id, Band band) {
    double half = halfWidth(bench, id, band.middle());
    return new Band(
        Math.min(band.low(), Math.max(0, band.middle() - half)),
        band.middle(),
        Math.max(band.high(), band.middle() + half));
  }

  private static double standard(double reading) {
    if (!(reading > 0)) {
      return LEAST_HALF_WIDTH;
    }
    double range = 2 * Math.pow(10, Math.ceil(Math.log10(reading / 2)));
    return reading * DEFAULT_PART + DEFAULT_DIGITS * range / COUNTS;
  }
}
