package loadwalk.app;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;

/** Captures of an amplifier whose 1 % point has a closed form, written by the Java library. */
public final class Ramps {
  /** Samples a second. */
  public static final int RATE = 48_000;

  /**
   * The rms at 1 % THD of y = x − 0.1x³: with x = A sin, H3/H1 = 0.025A²/(1 − 0.075A²) = 0.01 gives
   * A² = 0.01/0.02575; the rms is A(1 − 0.075A²)·√(1.0001/2).
   */
  public static final double LIMIT_RMS;

  static {
    double square = 0.01 / 0.02575;
    LIMIT_RMS = Math.sqrt(square) * (1 - 0.075 * square) * Math.sqrt(1.0001 / 2);
  }

  private Ramps() {}

  /** Returns a 40 Hz tone that rises from a twentieth of full drive to full drive. */
  public static double[] rising(double seconds) {
    double[] row = new double[(int) (seconds * RATE)];
    for (int i = 0; i < row.length; i++) {
      double drive = 0.05 * Math.pow(20, (double) i / row.length);
      row[i] = amplified(drive * Math.sin(2 * Math.PI * 40 * i / RATE));
    }
    return row;
  }

  /** Returns a 40 Hz tone of one drive. */
  public static double[] steady(double drive, double seconds) {
    double[] row = new double[(int) (seconds * RATE)];
    for (int i = 0; i < row.length; i++) {
      row[i] = amplified(drive * Math.sin(2 * Math.PI * 40 * i / RATE));
    }
    return row;
  }

  private static double amplified(double x) {
    return x - 0.1 * x * x * x;
  }

  /** Writes a row as a 16-bit sound file of one channel. */
  public static Path write(Path file, double[] row) throws IOException {
    byte[] bytes = new byte[2 * row.length];
    for (int i = 0; i < row.length; i++) {
      int code = (int) Math.round(row[i] * 32767);
      bytes[2 * i] = (byte) code;
      bytes[2 * i + 1] = (byte) (code >> 8);
    }
    AudioFormat format = new AudioFormat(RATE, 16, 1, true, false);
    File to = file.toFile();
    try (AudioInputStream in =
        new AudioInputStream(new ByteArrayInputStream(bytes), format, row.length)) {
      AudioSystem.write(in, AudioFileFormat.Type.WAVE, to);
    }
    return file;
  }
}
