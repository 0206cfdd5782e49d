package loadwalk.wave.file;

import java.io.IOException;
import java.util.OptionalDouble;
import loadwalk.wave.CaptureException;

/** A row of samples that comes in blocks: a file, a stream or a live input. */
public interface AudioSource {
  /** Returns the frames per second. */
  double samplesPerSecond();

  /** Returns how many channels a frame has, 1 or more. */
  int channels();

  /**
   * Returns the step between two neighbouring samples where full scale lies at 1, so that a driven
   * end can be seen; empty where the ends are not known.
   */
  default OptionalDouble step() {
    return OptionalDouble.empty();
  }

  /** Tells whether a sample is volts at the input already, not a part of full scale. */
  default boolean isInVolts() {
    return false;
  }

  /**
   * Reads the next frames, full scale at 1.
   *
   * @param block one row a channel, filled from the front
   * @return how many frames were read, or -1 at the end
   * @throws CaptureException if what comes in cannot be understood, in a sentence
   */
  int read(double[][] block) throws IOException, CaptureException;
}
