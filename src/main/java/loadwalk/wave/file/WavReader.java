package loadwalk.wave.file;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loadwalk.text.Sentence;
import loadwalk.wave.CaptureException;

/**
 * Reads a WAV file as a stream: 8 to 32 bit whole numbers, 32 and 64 bit floating point, any rate
 * and number of channels that an input can have. Where the header gives a wrong length, the samples
 * that are there are read and a note says so.
 */
public final class WavReader implements AudioSource {
  private static final String RIFF = "RIFF";
  private static final int PCM = 1;
  private static final int FLOAT = 3;
  private static final int EXTENSIBLE = 0xFFFE;
  private static final long LARGEST_LENGTHS = 0x7FFF_E000L;
  private static final int LARGEST_FORMAT_CHUNK = 1 << 20;
  private static final int MOST_CHANNELS = 64;

  /** Sound inputs take 8,000 to 768,000 frames a second, scopes that write WAV a few million. */
  private static final long LEAST_RATE = 100;

  private static final long MOST_RATE = 10_000_000;

  private final InputStream in;
  private final Form form;
  private final long dataBytes;
  private final List<String> notes = new ArrayList<>();
  private long readBytes;
  private byte[] buffer = new byte[0];
  private boolean ended;

  /**
   * The form of the samples.
   *
   * @param floating true for floating point, false for whole numbers
   * @param bytes of one sample of one channel
   * @param bits those that are used
   */
  private record Form(boolean floating, int channels, long rate, int bytes, int bits) {
    int frameBytes() {
      return channels * bytes;
    }
  }

  private WavReader(InputStream in) throws IOException, CaptureException {
    this.in = in;
    requireRiff();
    Form found = null;
    while (true) {
      ByteBuffer head = readUpTo(8);
      if (head.remaining() < 8) {
        throw new CaptureException(
            found == null
                ? "The WAV file ends before its format chunk."
                : "The WAV file holds no samples: its data chunk is missing.");
      }
      String name = name(head);
      long size = Integer.toUnsignedLong(head.getInt());
      if (name.equals("data")) {
        if (found == null) {
          throw new CaptureException("The WAV file has its samples before its format chunk.");
        }
        form = found;
        dataBytes = size;
        return;
      }
      found = readChunk(name, size, found);
    }
  }

  /**
   * Reads the header.
   *
   * @throws CaptureException if the stream is not a WAV file of a supported form, in a sentence
   */
  public static WavReader open(InputStream in) throws IOException, CaptureException {
    return new WavReader(in);
  }

  /** Tells whether these bytes begin as a WAV file does. */
  public static boolean begins(byte[] start) {
    return new String(start, 0, Math.min(4, start.length), StandardCharsets.ISO_8859_1)
        .equals(RIFF);
  }

  @Override
  public double samplesPerSecond() {
    return form.rate;
  }

  @Override
  public int channels() {
    return form.channels;
  }

  @Override
  public OptionalDouble step() {
    return OptionalDouble.of(form.floating ? 0 : Math.scalb(1.0, 1 - form.bits));
  }

  /** Returns what was odd about the file so far, one sentence each. */
  public List<String> notes() {
    return List.copyOf(notes);
  }

  @Override
  public int read(double[][] block) throws IOException, CaptureException {
    int wanted = block[0].length * form.frameBytes();
    long left = dataBytes == 0 ? wanted : dataBytes - readBytes;
    if (ended || left <= 0) {
      return -1;
    }
    if (buffer.length != wanted) {
      buffer = new byte[wanted];
    }
    int count = in.readNBytes(buffer, 0, (int) Math.min(wanted, left));
    readBytes += count;
    if (count < Math.min(wanted, left)) {
      ended = true;
      noteEnd();
    }
    int frames = count / form.frameBytes();
    if (count % form.frameBytes() != 0) {
      notes.add("The last frame is cut short and left out.");
      ended = true;
    }
    ByteBuffer bytes = ByteBuffer.wrap(buffer).order(ByteOrder.LITTLE_ENDIAN);
    for (int channel = 0; channel < form.channels; channel++) {
      decode(bytes, channel * form.bytes, block[channel], frames);
    }
    return frames == 0 ? -1 : frames;
  }

  private void noteEnd() {
    // Programs that write to a pipe do not know the length and leave 0 or the largest value.
    boolean untold = dataBytes == 0 || dataBytes >= LARGEST_LENGTHS;
    if (!untold) {
      notes.add(
          Sentence.of(
              "The header says {} frames, but the file ends after {}.",
              dataBytes / form.frameBytes(),
              readBytes / form.frameBytes()));
    }
  }

  private void decode(ByteBuffer bytes, int offset, double[] row, int frames)
      throws CaptureException {
    int step = form.frameBytes();
    if (form.floating) {
      for (int i = 0; i < frames; i++) {
        int at = offset + i * step;
        row[i] = form.bytes == 4 ? bytes.getFloat(at) : bytes.getDouble(at);
        if (!Double.isFinite(row[i])) {
          throw new CaptureException("The WAV file holds a sample that is not a number.");
        }
      }
      return;
    }
    double scale = 1 / (double) (1L << (8 * form.bytes - 1));
    byte[] raw = bytes.array();
    for (int i = 0, at = offset; i < frames; i++, at += step) {
      row[i] = whole(raw, at, form.bytes) * scale;
    }
  }

  /**
   * Returns a little-endian number; a single byte is unsigned in WAV, so its middle is subtracted.
   */
  private static int whole(byte[] raw, int at, int bytes) {
    switch (bytes) {
      case 1:
        return (raw[at] & 0xFF) - 128;
      case 2:
        return (raw[at] & 0xFF) | raw[at + 1] << 8;
      case 3:
        return (raw[at] & 0xFF) | (raw[at + 1] & 0xFF) << 8 | raw[at + 2] << 16;
      default:
        return (raw[at] & 0xFF)
            | (raw[at + 1] & 0xFF) << 8
            | (raw[at + 2] & 0xFF) << 16
            | raw[at + 3] << 24;
    }
  }

  private void requireRiff() throws IOException, CaptureException {
    ByteBuffer head = readUpTo(12);
    if (head.remaining() == 0) {
      throw new CaptureException("The file is empty.");
    }
    if (head.remaining() < 12) {
      throw new CaptureException("The file is too short for a WAV file.");
    }
    String form = name(head);
    head.getInt();
    if (!form.equals(RIFF) || !name(head).equals("WAVE")) {
      throw new CaptureException(
          "The file is not a WAV file: it does not begin with RIFF and WAVE.");
    }
  }

  private Form readChunk(String name, long size, Form found) throws IOException, CaptureException {
    if (!name.equals("fmt ")) {
      try {
        in.skipNBytes(size + size % 2);
      } catch (EOFException e) {
        throw cutShort(name);
      }
      return found;
    }
    if (size > LARGEST_FORMAT_CHUNK) {
      throw new CaptureException(Sentence.of("The WAV file's format chunk claims {} bytes.", size));
    }
    ByteBuffer body = readUpTo((int) (size + size % 2));
    if (body.remaining() < size) {
      throw cutShort(name);
    }
    return format(body, size);
  }

  private static CaptureException cutShort(String chunk) {
    return new CaptureException(Sentence.of("The WAV file ends inside its chunk \"{}\".", chunk));
  }

  private static Form format(ByteBuffer body, long size) throws CaptureException {
    if (size < 16) {
      throw new CaptureException("The WAV file's format chunk is cut short.");
    }
    int code = Short.toUnsignedInt(body.getShort());
    int channels = Short.toUnsignedInt(body.getShort());
    long rate = Integer.toUnsignedLong(body.getInt());
    body.getInt();
    int frameBytes = Short.toUnsignedInt(body.getShort());
    int bits = Short.toUnsignedInt(body.getShort());
    if (code == EXTENSIBLE && size >= 40) {
      body.getShort();
      int valid = Short.toUnsignedInt(body.getShort());
      body.getInt();
      code = Short.toUnsignedInt(body.getShort());
      bits = valid > 0 && valid <= bits ? valid : bits;
    }
    if (code != PCM && code != FLOAT) {
      throw new CaptureException(
          Sentence.of(
              "The WAV file is compressed or in an unknown format (code {}). Save it as PCM or"
                  + " floating point.",
              code));
    }
    if (channels == 0 || rate == 0 || frameBytes == 0 || frameBytes % channels != 0) {
      throw new CaptureException(
          Sentence.of(
              "The WAV file's format makes no sense: channels {}, frames per second {}, bytes per"
                  + " frame {}.",
              channels,
              rate,
              frameBytes));
    }
    if (channels > MOST_CHANNELS || rate < LEAST_RATE || rate > MOST_RATE) {
      throw new CaptureException(
          Sentence.of(
              "The WAV file's format cannot be: channels {}, frames per second {}. An input has at"
                  + " most {} channels and takes {} to {} frames per second.",
              channels,
              rate,
              MOST_CHANNELS,
              LEAST_RATE,
              MOST_RATE));
    }
    int bytes = frameBytes / channels;
    boolean floating = code == FLOAT;
    boolean known = floating ? bytes == 4 || bytes == 8 : bytes <= 4 && bits >= 8;
    if (!known || bits > 8 * bytes) {
      throw new CaptureException(
          Sentence.of(
              "The WAV file has samples of {} bits in {} bytes. Save it as 8 to 32 bit PCM, or as"
                  + " 32 or 64 bit floating point.",
              bits,
              bytes));
    }
    return new Form(floating, channels, rate, bytes, bits);
  }

  private ByteBuffer readUpTo(int count) throws IOException {
    return ByteBuffer.wrap(in.readNBytes(count)).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static String name(ByteBuffer from) {
    byte[] name = new byte[4];
    from.get(name);
    return new String(name, StandardCharsets.ISO_8859_1);
  }
}
