package loadwalk.app.sound;

import loadwalk.wave.CaptureException;
import loadwalk.wave.file.AudioSource;

/** A sound input that can be listened to; its own thread opens, reads and closes it. */
@FunctionalInterface
public interface LiveInput {

  /** An input while it is open; reading waits for sound. */
  interface Opened extends AudioSource, AutoCloseable {
    @Override
    void close();
  }

  /**
   * Opens the input.
   *
   * @throws CaptureException if there is none, in a sentence
   */
  Opened open() throws CaptureException;
}
