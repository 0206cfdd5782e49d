package loadwalk.app.sound;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import loadwalk.wave.CaptureException;
import loadwalk.wave.tone.AudioSink;

/** The machine's sound output, 16 bit on two channels alike. */
public final class SoundOutput implements AudioSink {
  private static final int FRAME_BYTES = 4;

  private final SourceDataLine line;

  private SoundOutput(SourceDataLine line) {
    this.line = line;
  }

  /** Opens the sound output of this computer. */
  public static AudioSink open(int samplesPerSecond) throws CaptureException {
    try {
      AudioFormat format = new AudioFormat(samplesPerSecond, 16, 2, true, false);
      SourceDataLine line = AudioSystem.getSourceDataLine(format);
      line.open(format, samplesPerSecond / 5 * FRAME_BYTES);
      line.start();
      return new SoundOutput(line);
    } catch (LineUnavailableException | IllegalArgumentException e) {
      throw new CaptureException("This computer has no sound output. Write the tone to a file.");
    }
  }

  @Override
  public void write(double[] samples, int count) {
    byte[] bytes = new byte[count * FRAME_BYTES];
    for (int i = 0; i < count; i++) {
      int code = (int) Math.round(Math.max(-1, Math.min(1, samples[i])) * Short.MAX_VALUE);
      for (int side = 0; side < FRAME_BYTES; side += 2) {
        bytes[i * FRAME_BYTES + side] = (byte) code;
        bytes[i * FRAME_BYTES + side + 1] = (byte) (code >> 8);
      }
    }
    line.write(bytes, 0, bytes.length);
  }

  @Override
  public void close() {
    line.drain();
    line.close();
  }
}
