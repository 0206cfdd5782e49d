package loadwalk.wave.file;

import java.io.IOException;
import java.util.OptionalDouble;
import loadwalk.wave.CaptureException;

/** A source of samples in blocks: a file, a stream or a live input. */
public interface AudioSource {
  /** Returns the frames per second. */
  double samplesPerSecond();

  /** Returns how many channels a frame has, 1 or more. */
  int channels();

  /**
   * Returns the step between adjacent sample values with full scale at 1, so that overdrive can be
   * seen; empty where full scale is unknown.
   */
  default OptionalDouble step() {
    return OptionalDouble.empty();
  }

  /** Tells whether samples are already volts at the input, not parts of full scale. */
  default boolean isInVolts() {
    return false;
  }

  /**
   * Reads the next frames, with full scale at 1.
   *
   * @param block one row a channel, filled from the front
   * @return how many frames were read, or -1 at the end
   * @throws CaptureException if the input cannot be understood, in a sentence
   */
  int read(double[][] block) throws IOException, CaptureException;
}
