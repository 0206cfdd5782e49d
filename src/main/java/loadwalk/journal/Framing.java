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

  /** The most bytes around a body, line feed included. */
  static final int FRAME_BYTES_MAX = 80;

  static final byte LINE_FEED = '\n';
  static final int SUM_DIGITS = 8;
  private static final byte[] BEFORE_BODY = "\",\"body\":".getBytes(US_ASCII);

  private static final byte[] BEFORE_SEQ = "{\"seq\":".getBytes(US_ASCII);
  private static final byte[] BEFORE_AFTER = ",\"after\":\"".getBytes(US_ASCII);
  private static final byte[] BEFORE_CRC = ",\"crc\":\"".getBytes(US_ASCII);
  private static final byte[] CLOSED = "\"".getBytes(US_ASCII);
  private static final int SEQ_DIGITS_MAX = 15;

  private Framing() {}

  /**
   * Frames a body as one line, line feed included, that names no record before it: the first record
   * of a journal, and every record of format 1.
   *
   * @param seq the number of the record, from 1
   * @param body one JSON object on one line
   * @throws IllegalArgumentException if the body is not such a text, which is a caller error
   */
  public static byte[] line(long seq, String body) {
    return line(seq, "", body);
  }

  /**
   * Frames a body as one line, line feed included.
   *
   * @param after the sum of the record before it; empty if it is not named
   * @throws IllegalArgumentException if the body cannot be framed, which is a caller error
   */
  public static byte[] line(long seq, String after, String body) {
    byte[] bodyBytes = encode(seq, body);
    Body.fault(bodyBytes, body)
        .ifPresent(
            fault -> {
              throw new IllegalArgumentException("the body of record " + seq + " " + fault);
            });
    ByteArrayOutputStream line = new ByteArrayOutputStream(bodyBytes.length + FRAME_BYTES_MAX);
    line.writeBytes(beginning(seq, after));
    line.writeBytes(sum(digits(seq), after.getBytes(US_ASCII), bodyBytes));
    line.writeBytes(BEFORE_BODY);
    line.writeBytes(bodyBytes);
    line.write('}');
    line.write(LINE_FEED);
    return line.toByteArray();
  }

  /** Returns what the line of a record begins with, up to its sum. */
  static byte[] beginning(long seq, String after) {
    ByteArrayOutputStream beginning = new ByteArrayOutputStream();
    beginning.writeBytes(BEFORE_SEQ);
    beginning.writeBytes(digits(seq));
    if (!after.isEmpty()) {
      beginning.writeBytes(BEFORE_AFTER);
      beginning.writeBytes(after.getBytes(US_ASCII));
      beginning.writeBytes(CLOSED);
    }
    beginning.writeBytes(BEFORE_CRC);
    return beginning.toByteArray();
  }

  /** Reads one line, given without its line feed; empty unless every byte is as written. */
  static Optional<JournalRecord> read(byte[] line) {
    int seqEnd = BEFORE_SEQ.length;
    while (seqEnd < line.length && line[seqEnd] >= '0' && line[seqEnd] <= '9') {
      seqEnd++;
    }
    byte[] seqBytes = Arrays.copyOfRange(line, Math.min(BEFORE_SEQ.length, line.length), seqEnd);
    boolean chained = holds(line, seqEnd, BEFORE_AFTER);
    int afterStart = seqEnd + BEFORE_AFTER.length;
    int afterEnd = chained ? afterStart + SUM_DIGITS + CLOSED.length : seqEnd;
    int crcStart = afterEnd + BEFORE_CRC.length;
    int bodyStart = crcStart + SUM_DIGITS + BEFORE_BODY.length;
    int bodyEnd = line.length - 1;
    boolean framed =
        seqBytes.length >= 1
            && seqBytes.length <= SEQ_DIGITS_MAX
            && seqBytes[0] != '0'
            && bodyStart < bodyEnd
            && bodyEnd - bodyStart <= BODY_BYTES_MAX
            && holds(line, 0, BEFORE_SEQ)
            && (!chained || holds(line, afterStart + SUM_DIGITS, CLOSED))
            && holds(line, afterEnd, BEFORE_CRC)
            && holds(line, crcStart + SUM_DIGITS, BEFORE_BODY)
            && line[bodyEnd] == '}';
    if (!framed) {
      return Optional.empty();
    }
    byte[] after =
        chained ? Arrays.copyOfRange(line, afterStart, afterStart + SUM_DIGITS) : new byte[0];
    byte[] bodyBytes = Arrays.copyOfRange(line, bodyStart, bodyEnd);
    byte[] sum = sum(seqBytes, after, bodyBytes);
    if (!holds(line, crcStart, sum)) {
      return Optional.empty();
    }
    long seq = Long.parseLong(new String(seqBytes, US_ASCII));
    return decode(bodyBytes)
        .filter(body -> Body.fault(bodyBytes, body).isEmpty())
        .map(body -> new JournalRecord(seq, text(after), text(sum), body));
  }

  /**
   * Tells whether the bytes, as far as they go, begin like a journal. A zero matches any byte,
   * because a sector that was never written reads as zeros.
   */
  static boolean beginsLikeAJournal(byte[] bytes) {
    return beginsWith(bytes, beginning(1, ""));
  }

  /** Tells whether the bytes, as far as they go, begin in a given way; a zero matches any byte. */
  static boolean beginsWith(byte[] bytes, byte[] start) {
    for (int i = 0; i < Math.min(start.length, bytes.length); i++) {
      if (bytes[i] != start[i] && bytes[i] != 0) {
        return false;
      }
    }
    return true;
  }

  private static byte[] digits(long seq) {
    byte[] digits = String.valueOf(seq).getBytes(US_ASCII);
    if (seq < 1 || digits.length > SEQ_DIGITS_MAX) {
      throw new IllegalArgumentException("seq must be from 1 to 999999999999999, got " + seq);
    }
    return digits;
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

  private static String text(byte[] bytes) {
    return new String(bytes, US_ASCII);
  }

  private static byte[] sum(byte[] seqBytes, byte[] after, byte[] bodyBytes) {
    CRC32C crc = new CRC32C();
    crc.update(seqBytes);
    crc.update(':');
    if (after.length > 0) {
      crc.update(after);
      crc.update(':');
    }
    crc.update(bodyBytes);
    return hex(crc);
  }

  /** Returns a sum as it stands in a file. */
  static byte[] hex(CRC32C crc) {
    return HexFormat.of().toHexDigits((int) crc.getValue()).getBytes(US_ASCII);
  }

  private static boolean holds(byte[] bytes, int at, byte[] expected) {
    int end = at + expected.length;
    return end <= bytes.length && Arrays.equals(bytes, at, end, expected, 0, expected.length);
  }
}
