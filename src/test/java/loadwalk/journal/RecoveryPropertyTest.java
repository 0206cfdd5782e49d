package loadwalk.journal;

import static loadwalk.journal.Journals.bodies;
import static loadwalk.journal.Journals.bodiesOf;
import static loadwalk.journal.Journals.of;
import static loadwalk.journal.Journals.text;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import loadwalk.journal.Recovered.Damaged;
import loadwalk.journal.Recovered.Refused;
import loadwalk.journal.Recovered.Whole;
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
      byte[] bytes = of(bodies(random.nextInt(5)));
      for (int wounds = random.nextInt(4); wounds > 0; wounds--) {
        bytes = wounded(bytes);
      }
      check(bytes, "seed " + SEED + ", input " + i);
    }
    System.out.printf("spoiled journals: %d, seed %d, %s%n", count, SEED, outcomes);
    assertEquals(3 + Damaged.Kind.values().length, outcomes.size(), outcomes.toString());
  }

  private byte[] wounded(byte[] bytes) {
    int at = random.nextInt(bytes.length + 1);
    int to = at + random.nextInt(bytes.length - at + 1);
    byte[] before = Arrays.copyOf(bytes, at);
    byte[] after = Arrays.copyOfRange(bytes, random.nextBoolean() ? at : to, bytes.length);
    return switch (random.nextInt(5)) {
      case 0 -> before;
      case 1 -> Journals.join(before, Arrays.copyOfRange(bytes, to, bytes.length));
      case 2 -> Journals.join(before, SPLINTERS[random.nextInt(SPLINTERS.length)], after);
      case 3 -> shuffledLines(bytes);
      default -> {
        byte[] flipped = bytes.clone();
        if (flipped.length > 0) {
          flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
        }
        yield flipped;
      }
    };
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

  private void check(byte[] bytes, String where) {
    Recovered read = Recovery.read(bytes);
    String kind = read instanceof Damaged damaged ? " " + damaged.kind() : "";
    outcomes.merge(read.getClass().getSimpleName() + kind, 1, Integer::sum);
    assertEquals(read, Recovery.read(bytes), where);
    if (read instanceof Refused) {
      return;
    }
    int sound = (int) read.soundBytes();
    assertArrayEquals(of(bodiesOf(read)), Arrays.copyOf(bytes, sound), where);
    assertEquals(read instanceof Whole, sound == bytes.length, where);
    Recovered alone = Recovery.read(Arrays.copyOf(bytes, sound));
    assertEquals(bodiesOf(read), bodiesOf(assertInstanceOf(Whole.class, alone, where)), where);
    assertTrue(read.told().isPresent() != read instanceof Whole, where);
  }
}
