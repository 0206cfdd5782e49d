package loadwalk.journal;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.zip.CRC32C;

/** Converts bodies to the lines of a journal and back; the package page documents the format. */
public final class Framing {
  /** The largest body, in bytes of UTF-8; no reader has to hold more at once. */
  public static final int BODY_BYTES_MAX = 1 << 20;

  static final byte LINE_FEED = '\n';

  private static final byte[] BEFORE_SEQ = "{\"seq\":".getBytes(US_ASCII);
  private static final byte[] BEFORE_CRC = ",\"crc\":\"".getBytes(US_ASCII);
  private static final byte[] BEFORE_BODY = "\",\"body\":".getBytes(US_ASCII);
  private static final int CRC_DIGITS = 8;
  private static final int SEQ_DIGITS_MAX = 15;

  private Framing() {}

  /**
   * Frames a body as one line, line feed included.
   *
   * @param seq the number of the record, from 1
   * @param body one JSON object on one line
   * @throws IllegalArgumentException if the body is not such a text, which is a caller error
   */
  public static byte[] line(long seq, String body) {
    if (seq < 1 || String.valueOf(seq).length() > SEQ_DIGITS_MAX) {
      throw new IllegalArgumentException("seq must be from 1 to 999999999999999, got " + seq);
    }
    byte[] bodyBytes = encode(seq, body);
    Body.fault(bodyBytes, body)
        .ifPresent(
            fault -> {
              throw new IllegalArgumentException("the body of record " + seq + " " + fault);
            });
    byte[] seqBytes = String.valueOf(seq).getBytes(US_ASCII);
    ByteArrayOutputStream line = new ByteArrayOutputStream(bodyBytes.length + 64);
    line.writeBytes(BEFORE_SEQ);
    line.writeBytes(seqBytes);
    line.writeBytes(BEFORE_CRC);
    line.writeBytes(crc(seqBytes, bodyBytes));
    line.writeBytes(BEFORE_BODY);
    line.writeBytes(bodyBytes);
    line.write('}');
    line.write(LINE_FEED);
    return line.toByteArray();
  }

  /** Reads one line, given without its line feed; empty unless every byte is as written. */
  static Optional<JournalRecord> read(byte[] line) {
    int seqEnd = BEFORE_SEQ.length;
    while (seqEnd < line.length && line[seqEnd] >= '0' && line[seqEnd] <= '9') {
      seqEnd++;
    }
    byte[] seqBytes = Arrays.copyOfRange(line, Math.min(BEFORE_SEQ.length, line.length), seqEnd);
    int crcStart = seqEnd + BEFORE_CRC.length;
    int bodyStart = crcStart + CRC_DIGITS + BEFORE_BODY.length;
    int bodyEnd = line.length - 1;
    boolean framed =
        seqBytes.length >= 1
            && seqBytes.length <= SEQ_DIGITS_MAX
            && seqBytes[0] != '0'
            && bodyStart < bodyEnd
            && bodyEnd - bodyStart <= BODY_BYTES_MAX
            && holds(line, 0, BEFORE_SEQ)
            && holds(line, seqEnd, BEFORE_CRC)
            && holds(line, crcStart + CRC_DIGITS, BEFORE_BODY)
            && line[bodyEnd] == '}';
    if (!framed) {
      return Optional.empty();
    }
    byte[] bodyBytes = Arrays.copyOfRange(line, bodyStart, bodyEnd);
    if (!holds(line, crcStart, crc(seqBytes, bodyBytes))) {
      return Optional.empty();
    }
    return decode(bodyBytes)
        .filter(body -> Body.fault(bodyBytes, body).isEmpty())
        .map(body -> new JournalRecord(Long.parseLong(new String(seqBytes, US_ASCII)), body));
  }

  /**
   * Tells whether the bytes, as far as they go, begin like a journal. A zero matches any byte,
   * because a sector that was never written reads as zeros.
   */
  static boolean beginsLikeAJournal(byte[] bytes) {
    byte[] start = "{\"seq\":1,\"crc\":\"".getBytes(US_ASCII);
    for (int i = 0; i < Math.min(start.length, bytes.length); i++) {
      if (bytes[i] != start[i] && bytes[i] != 0) {
        return false;
      }
    }
    return true;
  }

  private static byte[] encode(long seq, String body) {
    try {
      ByteBuffer encoded = UTF_8.newEncoder().encode(CharBuffer.wrap(body));
      if (encoded.remaining() > BODY_BYTES_MAX) {
        throw new IllegalArgumentException(
            "the body of record " + seq + " is longer than " + BODY_BYTES_MAX + " bytes");
      }
      byte[] bytes = new byte[encoded.remaining()];
      encoded.get(bytes);
      return bytes;
    } catch (CharacterCodingException e) {
      throw new IllegalArgumentException("the body of record " + seq + " is not Unicode", e);
    }
  }

  private static Optional<String> decode(byte[] bytes) {
    try {
      return Optional.of(UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private static byte[] crc(byte[] seqBytes, byte[] bodyBytes) {
    CRC32C crc = new CRC32C();
    crc.update(seqBytes);
    crc.update(':');
    crc.update(bodyBytes);
    return HexFormat.of().toHexDigits((int) crc.getValue()).getBytes(US_ASCII);
  }

  private static boolean holds(byte[] bytes, int at, byte[] expected) {
    int end = at + expected.length;
    return end <= bytes.length && Arrays.equals(bytes, at, end, expected, 0, expected.length);
  }
}
