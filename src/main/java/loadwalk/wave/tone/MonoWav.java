package loadwalk.wave.tone;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Writes samples of one channel as a 16-bit WAV file, without dither. */
public final class MonoWav {
  private static final int HEADER = 44;

  private MonoWav() {}

  /** Returns the bytes of the file; samples that came from 16 bits stay exact. */
  public static byte[] of(float[] samples, int samplesPerSecond) {
    int data = 2 * samples.length;
    ByteBuffer out = ByteBuffer.allocate(HEADER + data).order(ByteOrder.LITTLE_ENDIAN);
    out.put(ascii("RIFF")).putInt(HEADER - 8 + data);
    out.put(ascii("WAVEfmt ")).putInt(16).putShort((short) 1).putShort((short) 1);
    out.putInt(samplesPerSecond).putInt(2 * samplesPerSecond);
    out.putShort((short) 2).putShort((short) 16);
    out.put(ascii("data")).putInt(data);
    for (float sample : samples) {
      long code = Math.round(sample * 32768.0);
      out.putShort((short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, code)));
    }
    return out.array();
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
