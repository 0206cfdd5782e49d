package loadwalk.wave.tone;

import java.io.Closeable;
import java.io.IOException;
import loadwalk.wave.CaptureException;

/** Takes samples to be heard, full scale at 1, and waits while it is full. */
public interface AudioSink extends Closeable {
  /** Plays samples after those before. */
  void write(double[] samples, int count) throws IOException;

  /** A machine's sound output. */
  @FunctionalInterface
  interface Output {
    /**
     * Opens the output for one channel.
     *
     * @throws CaptureException if the machine has none, in a sentence
     */
    AudioSink open(int samplesPerSecond) throws CaptureException;
  }

  /** Stands for a machine without a sound output. */
  Output NONE =
      rate -> {
        throw new CaptureException("This machine has no sound output: write the tone to a file.");
      };
}
