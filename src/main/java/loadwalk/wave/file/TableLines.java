package loadwalk.wave.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import loadwalk.text.Sentence;
import loadwalk.wave.CaptureException;

/** The lines of a table, each held whole: one without end is no line of a table. */
final class TableLines {
  private static final int LONGEST = 1 << 16;

  private final BufferedReader in;
  private int number;
  private boolean returned;

  TableLines(Reader in) {
    this.in = new BufferedReader(in, LONGEST);
  }

  /**
   * Returns the next line, which ends as any system ends lines; null at the end.
   *
   * @throws CaptureException if it is longer than any line of a table, in a sentence
   */
  String next() throws IOException, CaptureException {
    StringBuilder line = new StringBuilder();
    number++;
    int c = in.read();
    if (c == '\n' && returned) {
      c = in.read();
    }
    if (c < 0) {
      return null;
    }
    while (c >= 0 && c != '\n' && c != '\r') {
      if (line.length() == LONGEST) {
        throw new CaptureException(
            Sentence.of("Line {} is longer than {} characters: no table.", number, LONGEST));
      }
      line.append((char) c);
      c = in.read();
    }
    returned = c == '\r';
    return line.toString();
  }
}
