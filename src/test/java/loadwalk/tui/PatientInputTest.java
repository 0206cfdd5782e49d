package loadwalk.tui;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A key's sequence that arrives in pieces is read as one; whole input is not waited for. */
class PatientInputTest {

  /** Gives one piece a read, as a slow line does. */
  private static final class Pieces extends InputStream {
    private final Deque<byte[]> left = new ArrayDeque<>();

    Pieces(List<String> pieces) {
      pieces.forEach(p -> left.add(p.getBytes(StandardCharsets.ISO_8859_1)));
    }

    @Override
    public int read() {
      throw new IllegalStateException("whole pieces are read");
    }

    @Override
    public int read(byte[] bytes, int from, int most) {
      byte[] piece = left.poll();
      if (piece == null) {
        return -1;
      }
      System.arraycopy(piece, 0, bytes, from, piece.length);
      return piece.length;
    }

    @Override
    public int available() {
      return left.isEmpty() ? 0 : left.peek().length;
    }
  }

  private static String firstRead(String... pieces) throws IOException {
    byte[] bytes = new byte[64];
    int count = new PatientInput(new Pieces(List.of(pieces))).read(bytes, 3, 50);
    return new String(Arrays.copyOfRange(bytes, 3, 3 + count), StandardCharsets.ISO_8859_1)
        .replace('\u001b', '^');
  }

  @ParameterizedTest
  @CsvSource({
    "^, [A, ^[A", "^[, A, ^[A", "^O, P, ^OP", "^[15, ~, ^[15~", "^[1;5, A, ^[1;5A", "a^, [B, a^[B",
    "^[200, ~4, ^[200~4", "4, 5, 4", "^[A, ^[B, ^[A", "O, P, O", "^OP, x, ^OP", "^[?2, c, ^[?2c"
  })
  void sequence_isReadWhole_andNothingMore(String first, String second, String read)
      throws IOException {
    assertEquals(read, firstRead(first.replace('^', '\u001b'), second.replace('^', '\u001b')));
  }

  @Test
  void escapeAlone_isReadAfterAMoment_andAFullBufferAtOnce() throws IOException {
    assertEquals("^", firstRead("\u001b"));
    byte[] two = new byte[2];
    assertEquals(2, new PatientInput(new Pieces(List.of("\u001b[", "A"))).read(two, 0, 2));
    assertArrayEquals(new byte[] {0x1b, '['}, two);
    assertEquals(-1, new PatientInput(new Pieces(List.of())).read(two, 0, 2));
  }
}
