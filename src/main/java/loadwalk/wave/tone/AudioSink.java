package loadwalk.wave.tone;

import java.io.Closeable;
import java.io.IOException;
import loadwalk.wave.CaptureException;

/** Plays samples, full scale at 1; a call waits while the sink is full. */
public interface AudioSink extends Closeable {
  /** Plays samples after those already written. */
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

  /** The output of a machine that has no sound output. */
  Output NONE =
      rate -> {
        throw new CaptureException("This machine has no sound output: write the tone to a file.");
      };
}
