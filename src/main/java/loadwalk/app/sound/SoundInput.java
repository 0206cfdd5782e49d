package loadwalk.app.sound;

import java.util.OptionalDouble;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import loadwalk.wave.CaptureException;

/** The machine's sound input, 16 bit on two channels. */
public final class SoundInput implements LiveInput.Opened {
  private static final int CHANNELS = 2;
  private static final int FRAME_BYTES = 4;

  private final TargetDataLine line;

  private SoundInput(TargetDataLine line) {
    this.line = line;
  }

  /**
   * Opens the input.
   *
   * @throws CaptureException if the machine has none, in a sentence
   */
  public static SoundInput open(int samplesPerSecond) throws CaptureException {
    try {
      AudioFormat format = new AudioFormat(samplesPerSecond, 16, CHANNELS, true, false);
      TargetDataLine line = AudioSystem.getTargetDataLine(format);
      line.open(format);
      line.start();
      return new SoundInput(line);
    } catch (LineUnavailableException | IllegalArgumentException e) {
      throw new CaptureException(
          "This computer has no sound input. Type the readings, or use a captured file.");
    }
  }

  @Override
  public double samplesPerSecond() {
    return line.getFormat().getSampleRate();
  }

  @Override
  public int channels() {
    return CHANNELS;
  }

  @Override
  public OptionalDouble step() {
    return OptionalDouble.of(Math.scalb(1.0, -15));
  }

  @Override
  public int read(double[][] block) {
    byte[] bytes = new byte[block[0].length * FRAME_BYTES];
    int read = line.read(bytes, 0, bytes.length);
    int frames = read / FRAME_BYTES;
    for (int i = 0; i < frames; i++) {
      for (int c = 0; c < CHANNELS; c++) {
        int at = i * FRAME_BYTES + 2 * c;
        block[c][i] = (short) (bytes[at] & 0xFF | bytes[at + 1] << 8) / 32768.0;
      }
    }
    return frames == 0 ? -1 : frames;
  }

  @Override
  public void close() {
    line.stop();
    line.close();
  }
}
