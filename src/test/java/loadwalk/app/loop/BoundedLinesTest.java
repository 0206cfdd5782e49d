package loadwalk.app.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoundedLinesTest {
  @Test
  void lines_endAtALineFeedOrTheEnd() throws IOException {
    BoundedLines lines = new BoundedLines(new StringReader("one\n\ntwo"));
    assertEquals(Optional.of("one"), lines.next());
    assertEquals(Optional.of(""), lines.next());
    assertEquals(Optional.of("two"), lines.next());
    assertEquals(Optional.empty(), lines.next());
    assertEquals(Optional.empty(), lines.next());
  }

  @Test
  void endlessLine_isReadPastWithoutBeingHeld() throws IOException {
    long length = 50_000_000;
    Reader endless =
        new Reader() {
          private long given;

          @Override
          public int read() {
            given++;
            return given <= length
                ? 'x'
                : given == length + 1 ? '\n' : given == length + 2 ? 'y' : -1;
          }

          @Override
          public int read(char[] chars, int from, int most) {
            throw new UnsupportedOperationException("read one by one");
          }

          @Override
          public void close() {
            given = length;
          }
        };
    BoundedLines lines = new BoundedLines(endless);
    assertEquals(BoundedLines.MOST + 1, lines.next().orElseThrow().length());
    assertEquals(Optional.of("y"), lines.next());
  }
}
