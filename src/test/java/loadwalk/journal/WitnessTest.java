package loadwalk.journal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static loadwalk.journal.Journals.bodies;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class WitnessTest {
  private static final byte[] WRITTEN = Journals.witness(bodies(5)).bytes();

  @Test
  void bytes_areTheDocumentedText() {
    String first = Journals.record(Journals.lines(bodies(5)).get(0)).sum();
    String last = Journals.record(Journals.lines(bodies(5)).get(4)).sum();
    String said =
        "{\"first\":\"" + first + "\",\"last\":\"" + last + "\",\"seq\":\"000000000000005\"";
    String crc = String.format("%08x", FramingTest.crcBitByBit(said.getBytes(UTF_8)));
    assertEquals(said + ",\"crc\":\"" + crc + "\"}\n", new String(WRITTEN, UTF_8));
    assertEquals(Journals.witness(bodies(5)), Witness.read(WRITTEN));
    assertEquals(WRITTEN.length, Witness.of(first, last, 999_999_999_999_999L).bytes().length);
  }

  @Test
  void bytes_areTheSameWhereDigitsAreOthers() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("fa-IR-u-nu-arabext"));
      assertArrayEquals(WRITTEN, Journals.witness(bodies(5)).bytes());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void read_withEveryBitTurned_isSpoiled() {
    for (int bit = 0; bit < WRITTEN.length * 8; bit++) {
      byte[] turned = WRITTEN.clone();
      turned[bit / 8] ^= (byte) (1 << bit % 8);
      assertEquals(Witness.SPOILED, Witness.read(turned), "bit " + bit);
    }
  }

  @Test
  void read_cutOrLengthened_isSpoiled() {
    for (int length = 1; length <= WRITTEN.length + 1; length++) {
      Witness due = length == WRITTEN.length ? Witness.read(WRITTEN) : Witness.SPOILED;
      assertEquals(due, Witness.read(Arrays.copyOf(WRITTEN, length)), "length " + length);
    }
  }

  @Test
  void read_ofWhatWasMadeAndNeverWritten_isNone() {
    assertEquals(Witness.NONE, Witness.read(new byte[0]));
    assertEquals(Witness.NONE, Witness.read(new byte[WRITTEN.length]));
  }
}
