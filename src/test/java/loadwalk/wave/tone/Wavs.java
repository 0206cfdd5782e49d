package loadwalk.wave.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loadwalk.wave.CaptureException;
import loadwalk.wave.file.Cue;
import loadwalk.wave.file.WavReader;

/** Makes and reads WAV files in memory; the makers share no code with the writer under test. */
public final class Wavs {
  private Wavs() {}

  /** A WAV file read to its end. */
  public record Read(double rate, double[][] rows, List<String> notes) {
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

  /** Returns the named places of a file, from its chunks "cue " and "adtl". */
  public static List<Cue> cues(byte[] file) {
    Map<Integer, Long> frames = new TreeMap<>();
    Map<Integer, String> labels = new HashMap<>();
    ByteBuffer in = ByteBuffer.wrap(file, 12, file.length - 12).order(ByteOrder.LITTLE_ENDIAN);
    while (in.remaining() >= 8) {
      String name = name(in);
      int size = in.getInt();
      ByteBuffer body = in.slice(in.position(), size).order(ByteOrder.LITTLE_ENDIAN);
      in.position(Math.min(in.limit(), in.position() + size + size % 2));
      if (name.equals("cue ")) {
        int count = body.getInt();
        for (int i = 0; i < count; i++) {
          frames.put(body.getInt(4 + 24 * i), (long) body.getInt(24 + 24 * i));
        }
      } else if (name.equals("LIST") && name(body).equals("adtl")) {
        while (body.remaining() >= 12) {
          assertEquals("labl", name(body));
          byte[] text = new byte[body.getInt() - 4];
          int id = body.getInt();
          body.get(text);
          body.position(Math.min(body.limit(), body.position() + text.length % 2));
          labels.put(id, new String(text, StandardCharsets.US_ASCII).replace("\0", ""));
        }
      }
    }
    List<Cue> cues = new ArrayList<>();
    frames.forEach((id, frame) -> cues.add(new Cue(frame, labels.get(id))));
    return cues;
  }

  private static String name(ByteBuffer from) {
    byte[] name = new byte[4];
    from.get(name);
    return new String(name, StandardCharsets.US_ASCII);
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
    return new Read(reader.samplesPerSecond(), rows, reader.notes());
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
