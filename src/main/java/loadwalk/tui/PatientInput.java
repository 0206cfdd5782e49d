package loadwalk.tui;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.InputStream;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Hands on what a terminal sends: text, the Escape key, or one whole sequence of a key at a time.
 *
 * <p>A sequence that arrives in pieces is waited for, so that it is not read as the Escape key and
 * letters. One that no key of ours sends, such as the report of a mouse, is left out whole. Escape
 * with a letter behind it is the Escape key and a letter, not Alt: a terminal may join what a hand
 * types one after the other, and the stop key must not be lost in it.
 */
final class PatientInput extends InputStream {
  private static final byte ESCAPE = 0x1b;
  private static final byte BELL = 0x07;
  private static final byte[] NOTHING = {};
  private static final byte[] ALONE = {ESCAPE};

  /** Between two pieces; a stop waits as long as this. */
  private static final long WAIT_MILLIS = 100;

  /** In which the rest of a sequence that was given up is still left out. */
  private static final long LATE_NANOS = 1_000_000_000;

  private static final int SEQUENCE_MOST = 64;
  private static final int STRING_MOST = 4096;
  private static final int MOUSE_BYTES = 3;

  /** What follows the escape and its bracket in the sequences of keys, pastes and the cursor. */
  private static final Pattern KEYS =
      Pattern.compile(
          "([0-9]{1,2}(;[0-9]{1,2})?)?[ABCDFHPQSZ]|[0-9]+;[0-9]+R|\\[[A-E]"
              + "|([1-6]|1[1-57-9]|2[0134])(;[0-9]{1,2})?~|20[01]~");

  private static final Pattern KEYS_OF_O = Pattern.compile("[ABCDFHPQRS]");
  private static final Pattern LATE = Pattern.compile("\\[[0-9;<?]*[A-Za-z~]");

  private final InputStream in;
  private final byte[] got = new byte[1 << 14];
  private int from;
  private int to;
  private byte[] token = NOTHING;
  private int handed;
  private long lateUntil = System.nanoTime();

  PatientInput(InputStream in) {
    this.in = in;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] bytes, int at, int most) throws IOException {
    while (handed == token.length) {
      if (from == to && !more()) {
        return -1;
      }
      token = got[from] == ESCAPE ? sequence() : text();
      handed = 0;
    }
    int count = Math.min(most, token.length - handed);
    System.arraycopy(token, handed, bytes, at, count);
    handed += count;
    return count;
  }

  /** Only what is handed on without a look at what comes: so one sequence is read at a time. */
  @Override
  public int available() {
    return token.length - handed;
  }

  @Override
  public void close() throws IOException {
    in.close();
  }

  private byte[] text() {
    Matcher late = LATE.matcher(string(from, Math.min(to, from + SEQUENCE_MOST)));
    if (got[from] == '[' && System.nanoTime() - lateUntil < 0 && late.lookingAt()) {
      return leftOut(late.end());
    }
    int end = from;
    while (end < to && got[end] != ESCAPE) {
      end++;
    }
    return handedOn(end - from);
  }

  private byte[] sequence() throws IOException {
    int atOnce = to - from;
    if (!has(2)) {
      return alone(1);
    }
    switch (got[from + 1]) {
      case '[':
        return bracketed();
      case 'O':
        // A hand may type an O for itself; a key sends all of it at once, or one we know.
        boolean key = has(3) && KEYS_OF_O.matcher(string(from + 2, from + 3)).matches();
        return key ? handedOn(3) : atOnce >= 3 ? leftOut(3) : alone(1);
      case ']':
      case 'P':
      case 'X':
      case '^':
      case '_':
        return atOnce >= 3 ? leftOut(lengthOfString()) : alone(1);
      default:
        return alone(1);
    }
  }

  /** Reads up to the letter that ends a sequence: a key, or something else. */
  private byte[] bracketed() throws IOException {
    int length = 2;
    while (has(length + 1)) {
      byte b = got[from + length++];
      boolean ofConsole = b == '[' && length == 3;
      if (b >= 0x40 && b < 0x7f && !ofConsole) {
        boolean mouse = b == 'M' && length == 3;
        boolean key = KEYS.matcher(string(from + 2, from + length)).matches();
        return key ? handedOn(length) : leftOut(mouse ? hasUpTo(length + MOUSE_BYTES) : length);
      }
      if (!ofConsole && (b < 0x20 || b >= 0x40) || length > SEQUENCE_MOST) {
        return leftOut(length - 1);
      }
    }
    return alone(length);
  }

  /** Returns how long an escape string is, such as the answer to a question for colours. */
  private int lengthOfString() throws IOException {
    int length = 2;
    while (length < STRING_MOST && has(length + 1)) {
      byte b = got[from + length++];
      if (b == BELL || b == '\\' && got[from + length - 2] == ESCAPE) {
        break;
      }
    }
    return length;
  }

  /** Hands on the Escape key, and leaves out the rest of what was begun with it. */
  private byte[] alone(int length) {
    from += length;
    lateUntil = System.nanoTime() + LATE_NANOS;
    return ALONE;
  }

  private byte[] leftOut(int length) {
    from += length;
    return NOTHING;
  }

  private byte[] handedOn(int length) {
    byte[] bytes = new byte[length];
    System.arraycopy(got, from, bytes, 0, length);
    from += length;
    return bytes;
  }

  private String string(int begin, int end) {
    return new String(got, begin, end - begin, ISO_8859_1);
  }

  private int hasUpTo(int count) throws IOException {
    return has(count) ? count : to - from;
  }

  /** Tells whether so many bytes are there, or come in time. */
  private boolean has(int count) throws IOException {
    while (to - from < count) {
      long end = System.nanoTime() + WAIT_MILLIS * 1_000_000;
      while (in.available() == 0) {
        if (System.nanoTime() - end >= 0 || !rested()) {
          return false;
        }
      }
      if (!more()) {
        return false;
      }
    }
    return true;
  }

  private static boolean rested() {
    try {
      Thread.sleep(1);
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Takes in what is there, or waits for it; false at the end of the input. */
  private boolean more() throws IOException {
    System.arraycopy(got, from, got, 0, to - from);
    to -= from;
    from = 0;
    int count = in.read(got, to, got.length - to);
    to += Math.max(0, count);
    return count > 0;
  }
}
