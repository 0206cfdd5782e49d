package loadwalk.wave.analysis;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The reading of a live input at one moment, in units of full scale.
 *
 * @param rms the rms without DC
 * @param hertz the frequency of the fundamental; empty where no tone stands out
 * @param thdPercent the THD of harmonics 2 to 10; empty without a tone or with too few periods
 * @param top whether the positive side is cut flat
 * @param bottom whether the negative side is cut flat
 * @param overdriven whether the input itself is driven to full scale
 * @param picture two periods of the wave, from a rising zero crossing
 */
public record LiveReading(
    double rms,
    OptionalDouble hertz,
    OptionalDouble thdPercent,
    boolean top,
    boolean bottom,
    boolean overdriven,
    List<Double> picture) {
  /** Checks the level and copies the picture. */
  public LiveReading {
    if (!(rms >= 0) || Double.isInfinite(rms)) {
      throw new IllegalArgumentException("rms must be a number from 0 up, got " + rms);
    }
    picture = List.copyOf(picture);
  }
}
