package loadwalk.journal;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static loadwalk.journal.Journals.HEAD;
import static loadwalk.journal.Journals.bodies;
import static loadwalk.journal.Journals.bodiesOf;
import static loadwalk.journal.Journals.of;
import static loadwalk.journal.Journals.oldBodies;
import static loadwalk.journal.Journals.text;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import loadwalk.journal.Recovered.Damaged;
import loadwalk.journal.Recovered.Ending;
import loadwalk.journal.Recovered.Refused;
import loadwalk.journal.Recovered.Whole;
import loadwalk.journal.Recovered.WindowsLines;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Feeds recovery with what no writer wrote; it answers everything and invents nothing. */
class RecoveryPropertyTest {
  private static final long SEED = 20_261;
  private static final byte[][] SPLINTERS = {
    text("\n"),
    text("{"),
    text("}}\n"),
    text("{\"seq\":"),
    text("{\"seq\":1,\"crc\":\"00000000\",\"body\":{}}\n"),
    text("99999999999999999999"),
    text(",\"body\":"),
    text("NaN"),
    text("\ufeff"),
    new byte[] {(byte) 0xed, (byte) 0xa0, (byte) 0x80},
    new byte[64],
    Framing.line(1, "{\"format\":\"loadwalk-journal/9\"}"),
    Framing.line(3, "{\"other\":3}"),
    text("[".repeat(3000))
  };

  private final Random random = new Random(SEED);
  private final Map<String, Integer> outcomes = new TreeMap<>();

  @Test
  void read_ofTenThousandSpoiledJournals_answersAndInventsNothing() {
    read(10_000);
  }

  @Test
  @Tag("long")
  void read_ofAMillionSpoiledJournals_answersAndInventsNothing() {
    read(1_000_000);
  }

  private void read(int count) {
    for (int i = 0; i < count; i++) {
      List<String> kept =
          random.nextInt(3) == 0 ? oldBodies(1 + random.nextInt(4)) : bodies(random.nextInt(6));
      byte[] bytes = random.nextInt(8) == 0 ? ofOthers(kept) : of(kept);
      for (int wounds = random.nextInt(4); wounds > 0; wounds--) {
        bytes = wounded(bytes);
      }
      check(bytes, witness(kept), kept, "seed " + SEED + ", input " + i);
    }
    System.out.printf("spoiled journals: %d, seed %d, %s%n", count, SEED, outcomes);
    assertEquals(4 + Damaged.Kind.values().length, outcomes.size(), outcomes.toString());
  }

  /** Returns the witness of all that was kept, or an earlier, a spoiled, another one or none. */
  private Witness witness(List<String> kept) {
    return switch (kept.isEmpty() ? 0 : random.nextInt(6)) {
      case 0 -> Witness.NONE;
      case 1 -> Witness.SPOILED;
      case 2 -> Journals.witness(kept.subList(0, 1 + random.nextInt(kept.size())));
      case 3 -> Journals.witness(List.of(HEAD.replace("full", "another")));
      default -> Journals.witness(kept);
    };
  }

  private byte[] wounded(byte[] bytes) {
    int at = random.nextInt(bytes.length + 1);
    int to = at + random.nextInt(bytes.length - at + 1);
    byte[] before = Arrays.copyOf(bytes, at);
    byte[] after = Arrays.copyOfRange(bytes, random.nextBoolean() ? at : to, bytes.length);
    return switch (random.nextInt(7)) {
      case 0 -> before;
      case 1 -> Journals.join(before, Arrays.copyOfRange(bytes, to, bytes.length));
      case 2 -> Journals.join(before, SPLINTERS[random.nextInt(SPLINTERS.length)], after);
      case 3 -> shuffledLines(bytes);
      case 4 -> crossed(bytes);
      case 5 -> new String(bytes, ISO_8859_1).replace("\n", "\r\n").getBytes(ISO_8859_1);
      default -> {
        byte[] flipped = bytes.clone();
        if (flipped.length > 0) {
          flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
        }
        yield flipped;
      }
    };
  }

  /** Returns a journal like another, but for one body. */
  private byte[] ofOthers(List<String> kept) {
    List<String> others = new ArrayList<>(kept);
    if (kept.size() > 1) {
      others.set(1 + random.nextInt(kept.size() - 1), "{\"other\":true}");
    }
    return of(others);
  }

  /** Returns the first lines of a journal with the further lines of another. */
  private byte[] crossed(byte[] bytes) {
    int lines = 1 + random.nextInt(4);
    List<byte[]> further = Journals.lines(random.nextBoolean() ? bodies(6) : oldBodies(6));
    int end = 0;
    for (int line = 0; line < lines && end < bytes.length; end++) {
      line += bytes[end] == '\n' ? 1 : 0;
    }
    return Journals.join(Arrays.copyOf(bytes, end), further.get(lines));
  }

  private byte[] shuffledLines(byte[] bytes) {
    int[] ends = new int[bytes.length + 1];
    int lines = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        ends[++lines] = i + 1;
      }
    }
    byte[][] chosen = new byte[lines][];
    for (int i = 0; i < lines; i++) {
      int line = random.nextInt(4) == 0 ? random.nextInt(lines) : i;
      chosen[i] = Arrays.copyOfRange(bytes, ends[line], ends[line + 1]);
    }
    return Journals.join(chosen);
  }

  private void check(byte[] bytes, Witness witness, List<String> kept, String where) {
    Recovered read = Recovery.read(bytes, witness);
    String kind = read instanceof Damaged damaged ? " " + damaged.kind() : "";
    outcomes.merge(read.getClass().getSimpleName() + kind, 1, Integer::sum);
    assertEquals(read, Recovery.read(bytes, witness), where);
    if (read instanceof Refused) {
      return;
    }
    if (!read.isDamaged()) {
      keepsToTheWitness(read, witness, kept, where);
    }
    if (read instanceof WindowsLines) {
      return;
    }
    int sound = (int) read.soundBytes();
    assertArrayEquals(of(bodiesOf(read)), Arrays.copyOf(bytes, sound), where);
    assertTrue(!(read instanceof Whole) || sound == bytes.length, where);
    Recovered alone = Recovery.read(Arrays.copyOf(bytes, sound));
    assertEquals(bodiesOf(read), bodiesOf(assertInstanceOf(Whole.class, alone, where)), where);
    assertTrue(read.told().isPresent() != read instanceof Whole, where);
  }

  /** What is not called damaged holds every record that the witness knows of, as it was kept. */
  private static void keepsToTheWitness(
      Recovered read, Witness witness, List<String> kept, String where) {
    boolean chained = !kept.isEmpty() && kept.get(0).equals(HEAD);
    boolean ofThisOne = chained && witness.first().equals(Journals.witness(kept).first());
    if (ofThisOne && witness.standing() == Witness.Standing.THERE) {
      int known = (int) witness.seq();
      assertTrue(read.records().size() >= known, where);
      assertEquals(kept.subList(0, known), bodiesOf(read).subList(0, known), where);
    }
    if (read.ending() == Ending.KNOWN && chained) {
      assertEquals(read.records().size(), witness.seq(), where);
    }
  }
}
