package loadwalk.app.loop;

import java.io.IOException;
import java.io.Reader;
import java.util.Optional;

/** Reads lines of text, each of bounded length however long the input makes it. */
final class BoundedLines {
  /** More than any line of plain mode needs; what lies behind is read past. */
  static final int MOST = 4000;

  private final Reader in;

  BoundedLines(Reader in) {
    this.in = in;
  }

  /** Returns the next line, cut behind {@link #MOST} + 1 characters; empty at the end. */
  Optional<String> next() throws IOException {
    StringBuilder line = new StringBuilder();
    int c = in.read();
    if (c < 0) {
      return Optional.empty();
    }
    while (c >= 0 && c != '\n') {
      if (line.length() <= MOST) {
        line.append((char) c);
      }
      c = in.read();
    }
    return Optional.of(line.toString());
  }
}
