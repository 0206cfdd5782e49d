package loadwalk.tui;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import loadwalk.view.canvas.Key;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What terminals send, through the decoder that the screen uses, as the keys that come out. */
class PatientInputTest {
  private static final long SEED = 1_840;

  /** Gives one piece a read, as a slow line does; a piece "…" is a long wait. */
  private static final class Pieces extends InputStream {
    private final Deque<byte[]> left = new ArrayDeque<>();

    Pieces(List<String> pieces) {
      pieces.forEach(p -> left.add(p.replace('^', '\u001b').getBytes(UTF_8)));
    }

    @Override
    public int read() {
      throw new IllegalStateException("whole pieces are read");
    }

    @Override
    public int read(byte[] bytes, int from, int most) {
      if (isWait()) {
        left.poll();
      }
      byte[] piece = left.poll();
      if (piece == null) {
        return -1;
      }
      System.arraycopy(piece, 0, bytes, from, piece.length);
      return piece.length;
    }

    private boolean isWait() {
      return !left.isEmpty() && new String(left.peek(), UTF_8).equals("…");
    }

    @Override
    public int available() {
      return left.isEmpty() || isWait() ? 0 : left.peek().length;
    }
  }

  /** Returns the keys that come of pieces, {@code ^} standing for the escape. */
  private static String keys(String... pieces) throws IOException {
    InputDecoder decoder =
        new InputDecoder(
            new InputStreamReader(new PatientInput(new Pieces(List.of(pieces))), UTF_8));
    decoder.addProfile(new DefaultKeyDecodingProfile());
    decoder.addProfile(
        () ->
            List.of(
                new BasicCharacterPattern(TtyTerminal.PASTE_BEGIN, "\u001b[200~".toCharArray()),
                new BasicCharacterPattern(TtyTerminal.PASTE_END, "\u001b[201~".toCharArray())));
    List<Key> keys = new ArrayList<>();
    for (KeyStroke stroke = decoder.getNextCharacter(true);
        stroke != null && stroke.getKeyType() != KeyType.EOF;
        stroke = decoder.getNextCharacter(true)) {
      keys.add(KeyMap.of(stroke));
    }
    return keys.stream()
        .map(k -> k.is(Key.Kind.CHARACTER) ? "" + k.character() : k.kind().name())
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource({
    "^, [A, UP",
    "^[, A, UP",
    "^O, P, F1",
    "^[15, ~, F5",
    "^[21, ~, F10",
    "^[1;5, A, UP",
    "a^, [B, a DOWN",
    "^[200, ~4, PASTE_BEGIN 4",
    "4, 5, 4 5",
    "^[A, ^[B, UP DOWN",
    "O, P, O P",
    "^OP, x, F1 x",
    "Ω, µ, Ω µ",
    "^[[, A, F1",
    "^[3, ~, DELETE",
    "^[, Z, BACK_TAB"
  })
  void sequenceInPieces_isOneKey(String first, String second, String keys) throws IOException {
    assertEquals(keys, keys(first, second));
  }

  @ParameterizedTest
  @CsvSource({
    "^, ESCAPE",
    "^^, ESCAPE ESCAPE",
    "^x, ESCAPE x",
    "^Ou, ''",
    "x^, x ESCAPE",
    "^^[A, ESCAPE UP"
  })
  void escapeKey_isNeverAlt_andAStopIsNotLost(String typed, String keys) throws IOException {
    assertEquals(keys, keys(typed));
  }

  @Test
  void stopKeyAndAReasonTypedBehindIt_areTheStopAndTheReason() throws IOException {
    assertEquals("ESCAPE O u t", keys("^", "O", "u", "t"));
    assertEquals("ESCAPE P o p", keys("^", "P", "op"));
    assertEquals("ESCAPE ] x", keys("^]", "x"));
    assertEquals("ESCAPE o", keys("^", "…", "o"));
    assertEquals("ESCAPE INTERRUPT", keys("^\u0003"));
  }

  @Test
  void sequenceThatStopsHalfWay_isTheStop_andItsRestNoText() throws IOException {
    assertEquals("ESCAPE", keys("^", "…", "[A"));
    assertEquals("ESCAPE", keys("^[1;", "…"));
    assertEquals("ESCAPE x", keys("^", "…", "[1;5Ax"));
    assertEquals("ESCAPE [ a b", keys("^", "…", "[", "ab"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "^[I",
        "^[O",
        "^[<0;10;20M",
        "^[<0;10;20m",
        "^[M !!",
        "^[?1;2c",
        "^[>0;276;0c",
        "^[97;5u",
        "^[32~",
        "^[33~",
        "^[25~",
        "^[?2004;1$y",
        "^]11;rgb:0000/0000/0000\u0007",
        "^]11;rgb:0000/0000/0000^\\",
        "^P1$r0m^\\",
        "^_Gi=31;OK^\\",
        "^[27;5;106~",
        "^[57414u",
        "^[200;1~",
        "^[1;1;1;1A",
        "^[0n",
        "^Oj",
        "^[123456~",
        "^[5;5;5~"
      })
  void sequenceThatNoKeyOfOursSends_leavesNothing(String sequence) throws IOException {
    assertEquals("4 UP 2", keys("4" + sequence + "^[A2"));
    assertEquals("4 2", keys("4", sequence, "2"));
  }

  @Test
  void sequencesOfAnyKind_leaveNoText() throws IOException {
    System.out.println("sequences, seed " + SEED);
    Random random = new Random(SEED);
    String inner = "0123456789;;;<=>?:!$";
    for (int i = 0; i < 20_000; i++) {
      StringBuilder sequence = new StringBuilder("^[");
      for (int n = random.nextInt(5); n > 0; n--) {
        sequence.append(inner.charAt(random.nextInt(inner.length())));
      }
      char last = (char) ('@' + random.nextInt(0x7f - '@'));
      String all = sequence.append(last == '[' || last == 'M' || last == '^' ? 'A' : last) + "";
      String keys = keys(all + "Ω");
      String wrong = "seed " + SEED + ": " + all + " gives " + keys;
      assertEquals(-1, keys.indexOf("ESCAPE"), wrong);
      String others = keys.replaceAll("[A-Z][A-Z_0-9]+", "").strip();
      assertEquals("Ω", others, wrong);
    }
  }
}
