package loadwalk.wave.tone;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import loadwalk.wave.file.Cue;

/** Writes a tone as a dithered WAV file of 16 or 24 bits, with its cues ahead of the samples. */
public final class WavWriter {
  private static final int BLOCK = 4096;
  private static final long LARGEST = 0xFFFF_FFFFL;

  private final int bits;
  private final int channels;
  private final long seed;

  /**
   * Makes a writer of one form of file.
   *
   * @param bits 16 or 24
   * @param channels how many, 1 or 2, all with the same samples
   * @param seed the seed of the dither
   */
  public WavWriter(int bits, int channels, long seed) {
    if (bits != 16 && bits != 24) {
      throw new IllegalArgumentException("bits must be 16 or 24, got " + bits);
    }
    if (channels != 1 && channels != 2) {
      throw new IllegalArgumentException("channels must be 1 or 2, got " + channels);
    }
    this.bits = bits;
    this.channels = channels;
    this.seed = seed;
  }

  /**
   * Writes the tone.
   *
   * @throws IllegalArgumentException if it is longer than a WAV file can hold
   */
  public void write(Tone tone, OutputStream out) throws IOException {
    int frameBytes = channels * bits / 8;
    long dataBytes = tone.frames() * frameBytes;
    byte[] cues = cueChunks(tone.cues());
    long pad = dataBytes % 2;
    if (36 + cues.length + 8 + dataBytes + pad > LARGEST) {
      throw new IllegalArgumentException("the tone is longer than a WAV file can hold (4 GiB)");
    }
    ByteBuffer header = little(36);
    header.put(ascii("RIFF")).putInt((int) (36 + cues.length + dataBytes + pad));
    header.put(ascii("WAVEfmt ")).putInt(16).putShort((short) 1).putShort((short) channels);
    header.putInt(tone.samplesPerSecond()).putInt(tone.samplesPerSecond() * frameBytes);
    header.putShort((short) frameBytes).putShort((short) bits);
    out.write(header.array());
    out.write(cues);
    out.write(little(8).put(ascii("data")).putInt((int) dataBytes).array());
    writeSamples(tone, frameBytes, out);
    if (pad > 0) {
      out.write(0);
    }
    out.flush();
  }

  private void writeSamples(Tone tone, int frameBytes, OutputStream out) throws IOException {
    Dither dither = new Dither(seed);
    int bytes = bits / 8;
    int top = (1 << (bits - 1)) - 1;
    byte[] block = new byte[BLOCK * frameBytes];
    int at = 0;
    for (long frame = 0; frame < tone.frames(); frame++) {
      long code = Math.round(tone.at(frame) * top + dither.next());
      int sample = (int) Math.max(-top - 1, Math.min(top, code));
      for (int channel = 0; channel < channels; channel++) {
        for (int b = 0; b < bytes; b++) {
          block[at++] = (byte) (sample >> (8 * b));
        }
      }
      if (at == block.length) {
        out.write(block, 0, at);
        at = 0;
      }
    }
    out.write(block, 0, at);
  }

  private static byte[] cueChunks(List<Cue> cues) {
    if (cues.isEmpty()) {
      return new byte[0];
    }
    int labelBytes = 4;
    for (Cue cue : cues) {
      labelBytes += 12 + evenLength(cue.label());
    }
    ByteBuffer chunks = little(8 + 4 + 24 * cues.size() + 8 + labelBytes);
    chunks.put(ascii("cue ")).putInt(4 + 24 * cues.size()).putInt(cues.size());
    for (int i = 0; i < cues.size(); i++) {
      int frame = (int) cues.get(i).frame();
      chunks.putInt(i + 1).putInt(frame).put(ascii("data")).putInt(0).putInt(0).putInt(frame);
    }
    chunks.put(ascii("LIST")).putInt(labelBytes).put(ascii("adtl"));
    for (int i = 0; i < cues.size(); i++) {
      byte[] text = ascii(cues.get(i).label());
      chunks.put(ascii("labl")).putInt(4 + text.length + 1).putInt(i + 1).put(text);
      chunks.put(new byte[evenLength(cues.get(i).label()) - text.length]);
    }
    return chunks.array();
  }

  /** Returns the bytes of a label with its closing zero, padded to an even number. */
  private static int evenLength(String label) {
    return (label.length() + 2) / 2 * 2;
  }

  private static ByteBuffer little(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
