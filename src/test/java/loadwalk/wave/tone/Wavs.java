package loadwalk.wave.tone;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loadwalk.wave.CaptureException;
import loadwalk.wave.file.Cue;
import loadwalk.wave.file.WavReader;

/** Makes and reads WAV files in memory; the makers share no code with the writer under test. */
public final class Wavs {
  private Wavs() {}

  /** A WAV file read to its end. */
  public record Read(double rate, double[][] rows, List<Cue> cues, List<String> notes) {
    public double[] row(int channel) {
      return rows[channel];
    }
  }

  public static byte[] bytes(Tone tone, int bits, int channels) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new WavWriter(bits, channels, 1).write(tone, out);
    return out.toByteArray();
  }

  public static Read read(byte[] file) throws IOException, CaptureException {
    return read(new ByteArrayInputStream(file));
  }

  public static Read read(InputStream in) throws IOException, CaptureException {
    WavReader reader = WavReader.open(in);
    double[][] rows = new double[reader.channels()][0];
    double[][] block = new double[reader.channels()][1000];
    int count = reader.read(block);
    while (count >= 0) {
      for (int c = 0; c < rows.length; c++) {
        int had = rows[c].length;
        rows[c] = Arrays.copyOf(rows[c], had + count);
        System.arraycopy(block[c], 0, rows[c], had, count);
      }
      count = reader.read(block);
    }
    return new Read(reader.samplesPerSecond(), rows, reader.cues(), reader.notes());
  }

  /** Builds a file of 64-bit floating-point samples, one row a channel. */
  public static byte[] floats(int rate, double[]... rows) {
    ByteBuffer data = little(rows[0].length * rows.length * 8);
    for (int i = 0; i < rows[0].length; i++) {
      for (double[] row : rows) {
        data.putDouble(row[i]);
      }
    }
    return file(chunk("fmt ", format(3, rows.length, rate, 64)), chunk("data", data.array()));
  }

  public static byte[] format(int code, int channels, int rate, int bits) {
    int frame = channels * bits / 8;
    return little(16)
        .putShort((short) code)
        .putShort((short) channels)
        .putInt(rate)
        .putInt(rate * frame)
        .putShort((short) frame)
        .putShort((short) bits)
        .array();
  }

  public static byte[] chunk(String name, byte[] body) {
    return little(8 + body.length + body.length % 2)
        .put(name.getBytes(StandardCharsets.US_ASCII))
        .putInt(body.length)
        .put(body)
        .array();
  }

  public static byte[] file(byte[]... chunks) {
    List<byte[]> parts = new ArrayList<>(Arrays.asList(chunks));
    int size = 4 + parts.stream().mapToInt(c -> c.length).sum();
    ByteBuffer file = little(8 + size);
    file.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(size);
    file.put("WAVE".getBytes(StandardCharsets.US_ASCII));
    parts.forEach(file::put);
    return file.array();
  }

  public static ByteBuffer little(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }
}
