package loadwalk.cli;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import loadwalk.json.JsonText;

/** Splits a stream into lines without ever holding more than one line of bounded length. */
final class LineReader implements Closeable {
  private static final int BUFFER = 1 << 16;

  private final InputStream in;
  private int number;

  LineReader(InputStream in) {
    this.in = new BufferedInputStream(in, BUFFER);
  }

  /**
   * One line.
   *
   * @param number its number, from 1
   * @param bytes its bytes without the line break; where it is too long, its beginning up to one
   *     byte more than a JSON text may have
   */
  record Line(int number, byte[] bytes) {
    /** Tells whether nothing but blanks stands in it. */
    boolean isBlank() {
      for (byte b : bytes) {
        if (b != ' ' && b != '\t' && b != '\r') {
          return false;
        }
      }
      return true;
    }
  }

  /** Returns the next line; empty at the end. */
  Optional<Line> next() throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream(1024);
    int b = in.read();
    if (b < 0) {
      return Optional.empty();
    }
    while (b >= 0 && b != '\n') {
      if (line.size() <= JsonText.LARGEST) {
        line.write(b);
      }
      b = in.read();
    }
    number++;
    return Optional.of(new Line(number, line.toByteArray()));
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
