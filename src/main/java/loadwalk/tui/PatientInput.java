package loadwalk.tui;

import java.io.IOException;
import java.io.InputStream;

/**
 * Waits a moment after a trailing escape, so that a sequence arriving in pieces is not read as the
 * Escape key and letters.
 */
final class PatientInput extends InputStream {
  private static final int ESCAPE = 0x1b;
  private static final long WAIT_MILLIS = 25;

  private final InputStream in;

  PatientInput(InputStream in) {
    this.in = in;
  }

  @Override
  public int read() throws IOException {
    int b = in.read();
    if (b == ESCAPE) {
      waitForMore();
    }
    return b;
  }

  @Override
  public int read(byte[] bytes, int from, int most) throws IOException {
    int count = in.read(bytes, from, most);
    while (count > 0 && count < most && endsInsideSequence(bytes, from, count)) {
      waitForMore();
      if (in.available() == 0) {
        return count;
      }
      count += Math.max(0, in.read(bytes, from + count, most - count));
    }
    return count;
  }

  @Override
  public int available() throws IOException {
    return in.available();
  }

  @Override
  public void close() throws IOException {
    in.close();
  }

  private void waitForMore() throws IOException {
    long end = System.nanoTime() + WAIT_MILLIS * 1_000_000;
    while (in.available() == 0 && System.nanoTime() < end) {
      try {
        Thread.sleep(1);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }

  /** Tells whether the bytes end inside an escape sequence that has no final letter yet. */
  static boolean endsInsideSequence(byte[] bytes, int from, int count) {
    int at = from + count - 1;
    while (at >= from && bytes[at] != ESCAPE && isInner(bytes[at])) {
      at--;
    }
    boolean introduced = at >= from && bytes[at] == ESCAPE;
    boolean letterO = at > from && bytes[at] == 'O' && at == from + count - 1;
    return introduced || (letterO && bytes[at - 1] == ESCAPE);
  }

  private static boolean isInner(byte b) {
    return b == '[' || b == ';' || (b >= '0' && b <= '9') || b == '?';
  }
}
