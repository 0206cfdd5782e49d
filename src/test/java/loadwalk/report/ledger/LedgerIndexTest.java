package loadwalk.report.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loadwalk.bench.Mode;
import loadwalk.journal.ByteSum;
import loadwalk.journal.Soundness;
import loadwalk.result.Criterion;
import loadwalk.result.RatingComparison.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The index of a ledger: every value comes back, and what it does not know counts as nothing. */
class LedgerIndexTest {
  private static final String MAKER = "this program";

  /** Entries in which each value takes each of its kinds: known, unknown, first and last word. */
  private static Soundness soundness(int number) {
    return number == 1
        ? new Soundness(Soundness.Standing.TORN, "The last line was \"cut\" off.")
        : Soundness.WHOLE;
  }

  private static LedgerIndex index() {
    Map<String, LedgerIndex.Kept> kept = new LinkedHashMap<>();
    for (Optional<Boolean> rails :
        List.of(Optional.<Boolean>empty(), Optional.of(true), Optional.of(false))) {
      String name = "w-" + rails;
      LedgerEntry entry =
          new LedgerEntry(
              name,
              "Verrin \"V\" 4 \u202e",
              rails.isEmpty(),
              rails.isPresent(),
              kept.size(),
              1_773_480_600_123L + kept.size(),
              kept.size() == 1 ? Entries.RATED : Entries.FULL,
              rails.isPresent() ? OptionalDouble.of(62.5) : OptionalDouble.empty(),
              rails,
              loads(),
              soundness(kept.size()));
      kept.put(
          "sum of " + name, new LedgerIndex.Kept("opening of " + name, "end of " + name, entry));
    }
    return new LedgerIndex(kept);
  }

  private static List<LedgerEntry.Load> loads() {
    List<LedgerEntry.Load> loads = new ArrayList<>();
    for (Mode mode : Mode.values()) {
      for (Criterion criterion : Criterion.values()) {
        for (Verdict verdict : Verdict.values()) {
          loads.add(load(mode, criterion, Optional.of(verdict), OptionalDouble.of(loads.size())));
        }
        loads.add(load(mode, criterion, Optional.empty(), OptionalDouble.empty()));
      }
    }
    return loads;
  }

  private static LedgerEntry.Load load(
      Mode mode, Criterion criterion, Optional<Verdict> verdict, OptionalDouble known) {
    OptionalDouble more =
        known.isPresent() ? OptionalDouble.of(known.getAsDouble() + 0.25) : OptionalDouble.empty();
    return new LedgerEntry.Load(
        mode, 0.5, criterion, 1.1, 2.2, 3.3, 4.4, known, verdict, more, known, more);
  }

  @Test
  void everyValue_comesBack() {
    assertEquals(index(), LedgerIndex.read(index().bytes(MAKER), MAKER));
    assertEquals(LedgerIndex.empty(), LedgerIndex.read(new byte[0], MAKER));
    String name = index().kept().keySet().iterator().next().replace("sum of ", "");
    assertTrue(index().of("sum of " + name, "end of " + name).isPresent());
    assertEquals(Optional.empty(), index().of("sum of " + name, "another end"));
    assertEquals(Optional.empty(), index().of("sum of another", "end of " + name));
  }

  @Test
  void indexOfAnotherProgramTableOrFolder_countsAsEmpty() {
    assertEquals(LedgerIndex.empty(), LedgerIndex.read(index().bytes(MAKER), "another program"));
  }

  /** Of every single bit, and of every byte that goes or comes twice. */
  @Test
  void changedIndex_losesTheLineThatChanged_andAltersNone() {
    byte[] sound = index().bytes(MAKER);
    int lost = 0;
    for (int bit = 0; bit < 8 * sound.length; bit += 3) {
      byte[] changed = sound.clone();
      changed[bit / 8] ^= (byte) (1 << bit % 8);
      lost += altersNone(changed);
    }
    for (int at = 0; at < sound.length; at += 5) {
      lost += altersNone(joined(Arrays.copyOf(sound, at), from(sound, at + 1)));
      lost += altersNone(joined(Arrays.copyOf(sound, at + 1), from(sound, at)));
    }
    assertTrue(lost > sound.length, "lines lost: " + lost);
  }

  private static byte[] from(byte[] bytes, int at) {
    return Arrays.copyOfRange(bytes, at, bytes.length);
  }

  private static byte[] joined(byte[] one, byte[] other) {
    byte[] both = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, both, one.length, other.length);
    return both;
  }

  /** Holds that what is left is as it was; returns how many lines went. */
  private static int altersNone(byte[] changed) {
    Map<String, LedgerIndex.Kept> sound = index().kept();
    Map<String, LedgerIndex.Kept> left = LedgerIndex.read(changed, MAKER).kept();
    left.forEach((sum, kept) -> assertEquals(sound.get(sum), kept));
    return sound.size() - left.size();
  }

  @Test
  void linesInAnotherOrder_orCutBehindALine_areReadAsFarAsTheyGo() {
    String[] lines = new String(index().bytes(MAKER), UTF_8).split("(?<=\n)");
    byte[] turned = (lines[2] + lines[0]).getBytes(UTF_8);
    assertEquals(
        Set.of("sum of w-Optional[false]", "sum of w-Optional.empty"),
        LedgerIndex.read(turned, MAKER).kept().keySet());
  }

  /** The sum is right, and the line is still not one that this version writes. */
  @ParameterizedTest
  @CsvSource({
    "'[1,0.5,', '[-1,0.5,'",
    "'[1,0.5,', '[2,0.5,'",
    "'[1,0.5,', '[true,0.5,'",
    "'0.5,0,1.1', '0.5,3,1.1'",
    "'0.5,0,1.1', '\"0.5\",0,1.1'",
    "'4.4,0.0,0,', '4.4,0.0,3,'",
    "'4.4,0.0,0,0.25,0.0,0.25]', '4.4,0.0,0,0.25,0.0,0.25,1]'",
    "'13.8,', '13.8,\"7\",'",
    "'[\"sum of', '{\"sum of'",
    "'\"w-Optional.empty\",', ''"
  })
  void lineThatIsNoneOfOurs_countsAsNotThere(String sound, String spoilt) {
    String line = new String(index().bytes(MAKER), UTF_8).lines().findFirst().orElseThrow();
    String text = line.substring(line.indexOf(' ') + 1);
    String changed = text.replace(sound, spoilt);
    assertNotEquals(text, changed, "nothing was spoilt");
    String sum = ByteSum.of(MAKER.getBytes(UTF_8), changed.getBytes(UTF_8));
    byte[] forged = (sum + " " + changed + "\n").getBytes(UTF_8);
    assertEquals(LedgerIndex.empty(), LedgerIndex.read(forged, MAKER));
  }

  @Test
  void text_thatIsNoIndex_countsAsEmpty() {
    for (String text : List.of("\n", " \n", "{}\n", "[\"loadwalk-ledger-index/2\",[]]", "a b\n")) {
      assertEquals(LedgerIndex.empty(), LedgerIndex.read(text.getBytes(UTF_8), MAKER), text);
    }
  }
}
