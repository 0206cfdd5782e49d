package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Changes of what Loadwalk has derived from journals, and of journals behind the back of it: no
 * number that is printed is another, unless that is said.
 */
final class Derived {
  private static final int EACH = 2000;
  private static final int JOURNALS = 100;

  /** The longest piece of an index that is overwritten, left out or repeated, bytes. */
  private static final int LONGEST = 600;

  private Derived() {}

  /** Makes other bytes of the ones given. */
  private interface Change {
    byte[] of(byte[] bytes, Random random);
  }

  static List<Fault> all(Learned learned, Random random) {
    KnownHomes homes = new KnownHomes(learned.program());
    List<Fault> all = new ArrayList<>();
    for (int i = 0; i < EACH; i++) {
      all.add(index(homes, "bit of the index", random.nextLong(), Derived::bit));
    }
    List<Change> longer =
        List.of(Derived::overwritten, Derived::leftOut, Derived::repeated, Derived::otherDigit);
    for (int i = 0; i < EACH; i++) {
      Change change = longer.get(i % longer.size());
      all.add(index(homes, "change " + i % longer.size(), random.nextLong(), change));
    }
    for (int i = 0; i < JOURNALS; i++) {
      all.add(journal(homes, random.nextLong()));
      all.add(end(homes, random.nextLong()));
    }
    return all;
  }

  /** What tells where a journal ends is spoiled: that is told, or changes nothing. */
  private static Fault end(KnownHomes homes, long seed) {
    return new Fault(
        "bit of what tells a journal's end, seed " + seed,
        folder ->
            homes.lend(
                folder,
                home -> {
                  Random random = new Random(seed);
                  Path journal = Journal.in(home.path()).get(random.nextInt(3));
                  String name = journal.getFileName().toString().replace(".jsonl", ".end");
                  Path end = journal.resolveSibling("." + name);
                  byte[] sound = Files.readAllBytes(end);
                  Files.write(end, bit(sound.clone(), random));
                  try {
                    Ran ran = homes.ledger(home).isPlain();
                    if (ran.code() == 0) {
                      assertEquals(home.ledger(), ran.out());
                    } else {
                      ran.ends(4).says("end|missing|damaged");
                    }
                  } finally {
                    Files.write(end, sound);
                  }
                }));
  }

  private static Fault index(KnownHomes homes, String name, long seed, Change change) {
    return new Fault(
        name + ", seed " + seed,
        folder ->
            homes.lend(
                folder,
                home -> {
                  Files.write(home.indexFile(), change.of(home.index().clone(), new Random(seed)));
                  assertEquals(home.ledger(), homes.ledger(home).ends(0).out());
                }));
  }

  private static byte[] bit(byte[] bytes, Random random) {
    bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
    return bytes;
  }

  private static byte[] overwritten(byte[] bytes, Random random) {
    byte[] piece = new byte[1 + random.nextInt(LONGEST)];
    random.nextBytes(piece);
    int at = random.nextInt(bytes.length - piece.length);
    System.arraycopy(piece, 0, bytes, at, piece.length);
    return bytes;
  }

  private static byte[] leftOut(byte[] bytes, Random random) {
    int at = random.nextInt(bytes.length);
    int end = Math.min(bytes.length, at + 1 + random.nextInt(LONGEST));
    return joined(bytes, at, end);
  }

  private static byte[] repeated(byte[] bytes, Random random) {
    int at = random.nextInt(bytes.length);
    return joined(bytes, at, Math.max(0, at - random.nextInt(LONGEST)));
  }

  /** Every digit of one kind is another: as a ratio of 1.57 becomes one of 9.57. */
  private static byte[] otherDigit(byte[] bytes, Random random) {
    byte from = (byte) ('0' + random.nextInt(10));
    byte to = (byte) ('0' + random.nextInt(10));
    int first = random.nextInt(bytes.length);
    int last = Math.min(bytes.length, first + LONGEST);
    for (int at = first; at < last; at++) {
      bytes[at] = bytes[at] == from ? to : bytes[at];
    }
    return bytes;
  }

  private static byte[] joined(byte[] bytes, int end, int from) {
    byte[] joined = Arrays.copyOf(bytes, end + bytes.length - from);
    System.arraycopy(bytes, from, joined, end, bytes.length - from);
    return joined;
  }

  /** A bit of a journal that the index knows turns, and the file has its size and time. */
  private static Fault journal(KnownHomes homes, long seed) {
    return new Fault(
        "bit of a known journal, seed " + seed,
        folder ->
            homes.lend(
                folder,
                home -> {
                  Random random = new Random(seed);
                  Path journal = Journal.in(home.path()).get(random.nextInt(3));
                  byte[] sound = Files.readAllBytes(journal);
                  byte[] changed = bit(sound.clone(), random);
                  FileTime time = Files.getLastModifiedTime(journal);
                  try {
                    write(journal, changed, time);
                    homes.ledger(home).ends(4).says("damaged|not a Loadwalk journal|newer");
                  } finally {
                    write(journal, sound, time);
                  }
                }));
  }

  /** Writes over the file that is there, as a tool does that changes it in place. */
  private static void write(Path file, byte[] bytes, FileTime time) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      out.write(bytes);
    }
    Files.setLastModifiedTime(file, time);
  }
}
