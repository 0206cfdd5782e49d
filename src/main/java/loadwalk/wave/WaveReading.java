package loadwalk.wave;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import loadwalk.quantity.Quantity;

/**
 * The readings of a captured tone.
 *
 * <p>Distortion is over the fundamental (THD_F): THD from harmonics 2 to 10, THD+N from everything
 * but the fundamental and DC up to half the sample rate.
 *
 * @param frequency of the fundamental, by the clock of the capture
 * @param output rms without DC, harmonics and noise included
 * @param peakVolts the distance of the farthest sample from the mean
 * @param crestFactor peak over rms
 * @param thd in percent; empty where no harmonic lies below half the sample rate
 * @param harmonics harmonics 2 to 10, as far as they lie below half the sample rate
 * @param thdNoise in percent
 * @param noiseVolts rms of what is neither fundamental, DC nor a harmonic up to 10
 * @param dc the mean
 * @param clipping which sides are flat, and whether the capture was overdriven
 * @param shape the kind of distortion it looks like
 * @param cycle one averaged period in volts, from the rising zero crossing of the fundamental
 * @param method how it was computed, in a few words
 * @param calibration how samples became volts
 * @param steady whether one level fills the capture
 * @param notes what the reader must know, one sentence each
 */
public record WaveReading(
    Quantity frequency,
    Quantity output,
    double peakVolts,
    double crestFactor,
    Optional<Quantity> thd,
    List<Harmonic> harmonics,
    Quantity thdNoise,
    double noiseVolts,
    Quantity dc,
    Clipping clipping,
    WaveShape shape,
    List<Double> cycle,
    String method,
    Calibration calibration,
    boolean steady,
    List<String> notes) {
  /** Copies the lists. */
  public WaveReading {
    Objects.requireNonNull(frequency, "frequency");
    harmonics = List.copyOf(harmonics);
    cycle = List.copyOf(cycle);
    notes = List.copyOf(notes);
  }
}
