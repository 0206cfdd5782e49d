package loadwalk.journal;

import static java.nio.charset.StandardCharsets.US_ASCII;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;

/**
 * The bytes after the last good record, as far as one interrupted write of one record explains
 * them: the beginning of the line of the record due, where whole sectors may read as zeros because
 * they were never written.
 */
final class Tail {
  private static final JsonFactory JSON = new JsonFactory();

  private static final String LONGEST_WORD = "false";

  /** Zeros alone say nothing of a record, so no more of them are taken for one than this. */
  private static final int ZEROS = 4096;

  private static final byte[] BODY_BEGINS = "\",\"body\":{".getBytes(US_ASCII);

  private final byte[] bytes;
  private final byte[] beginning;

  /**
   * Takes the bytes.
   *
   * @param bytes the bytes, to the end of the file
   * @param beginning what the line of the record due begins with, up to its sum
   */
  Tail(byte[] bytes, byte[] beginning) {
    this.bytes = bytes;
    this.beginning = beginning;
  }

  /**
   * Tells whether an interrupted write left them.
   *
   * @param longest the longest record of this journal in bytes, by which a tail of zeros is judged
   */
  boolean isTorn(int longest) {
    boolean ended = bytes[bytes.length - 1] == Framing.LINE_FEED;
    int length = ended ? bytes.length - 1 : bytes.length;
    int zeros = 0;
    for (int i = 0; i < length; i++) {
      zeros += bytes[i] == 0 ? 1 : 0;
      if (bytes[i] > 0 && bytes[i] < 0x20) {
        return false;
      }
    }
    boolean fits =
        bytes.length <= Framing.BODY_BYTES_MAX + Framing.FRAME_BYTES_MAX
            && Framing.beginsWith(bytes, beginning);
    if (!fits) {
      return false;
    }
    if (zeros == bytes.length) {
      return zeros <= Math.max(ZEROS, 2 * longest);
    }
    return zeros > 0 || !ended && isCutOff();
  }

  /** Tells whether more bytes could make a record of them. */
  private boolean isCutOff() {
    for (int i = beginning.length; i < bytes.length; i++) {
      int at = i - beginning.length;
      boolean right =
          at < Framing.SUM_DIGITS
              ? Character.digit(bytes[i], 16) >= 0 && !Character.isUpperCase(bytes[i])
              : at - Framing.SUM_DIGITS >= BODY_BEGINS.length
                  || bytes[i] == BODY_BEGINS[at - Framing.SUM_DIGITS];
      if (!right) {
        return false;
      }
    }
    return isJsonCutOff();
  }

  /** The line is one JSON object; where that is complete, only the line feed may be missing. */
  private boolean isJsonCutOff() {
    try (JsonParser parser = JSON.createParser(bytes)) {
      int open = 0;
      do {
        JsonToken token = parser.nextToken();
        open += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
      } while (open > 0);
      boolean complete = parser.currentLocation().getByteOffset() == bytes.length;
      return complete && Framing.read(bytes).isPresent();
    } catch (JsonEOFException cutOff) {
      return true;
    } catch (JsonProcessingException wrong) {
      // A word or number that was cut off is a fault where it begins or ends.
      JsonLocation at = wrong.getLocation();
      return at != null && at.getByteOffset() >= bytes.length - LONGEST_WORD.length();
    } catch (IOException unreachable) {
      return false;
    }
  }
}
