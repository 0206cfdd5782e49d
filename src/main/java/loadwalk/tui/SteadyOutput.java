package loadwalk.tui;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;

/** Buffers what is painted, but sends the query for the cursor position at once. */
final class SteadyOutput extends BufferedOutputStream {
  private static final int SIZE = 1 << 15;
  private static final byte[] WHERE = {0x1b, '[', '6', 'n'};

  SteadyOutput(OutputStream out) {
    super(out, SIZE);
  }

  @Override
  public synchronized void write(byte[] bytes, int from, int count) throws IOException {
    super.write(bytes, from, count);
    if (count == WHERE.length && Arrays.equals(bytes, from, from + count, WHERE, 0, count)) {
      flush();
    }
  }
}
