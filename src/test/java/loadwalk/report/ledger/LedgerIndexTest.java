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
import loadwalk.bench.ThdKind;
import loadwalk.journal.ByteSum;
import loadwalk.journal.Soundness;
import loadwalk.result.Circumstances;
import loadwalk.result.Conditions;
import loadwalk.result.Criterion;
import loadwalk.result.Mark;
import loadwalk.result.RatingComparison.Verdict;
import loadwalk.result.ReadBy;
import loadwalk.result.Repeatability;
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

  private static BenchRepeats repeats(int number) {
    return new BenchRepeats(
        "bench " + number,
        List.of(new Repeatability.Pair(0.001, 0.0005), new Repeatability.Pair(-0.0025, 0))
            .subList(0, number));
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
              repeats(kept.size()),
              soundness(kept.size()));
      kept.put(
          "sum of " + name, new LedgerIndex.Kept("opening of " + name, "end of " + name, entry));
    }
    return new LedgerIndex(kept);
  }

  /** Every word of every condition, and every number known and unknown. */
  private static List<LedgerEntry.Load> loads() {
    List<LedgerEntry.Load> loads = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      loads.add(load(i));
    }
    return loads;
  }

  private static LedgerEntry.Load load(int i) {
    KeptWatts one =
        new KeptWatts(1.1 + i, 2.2, i % 2 == 0 ? Double.POSITIVE_INFINITY : 5.5, -0.25 * (i % 3));
    Conditions read =
        new Conditions(
            nth(Mode.values(), i),
            0.5,
            known(i, 3.9),
            i % 3,
            known(i + 1, 40.5),
            nth(Criterion.values(), i),
            i % 3 == 0,
            known(i / 2, 1.05),
            known(i / 3, 13.25),
            around(i));
    return new LedgerEntry.Load(
        read,
        40 + i,
        1.0 / (1 + i),
        i % 5 == 0 ? List.of() : List.of(Mark.values()).subList(i % 5, i % 5 + 3),
        i % 2 == 0 ? List.of(one) : List.of(one, new KeptWatts(i, 0, 1, 0)),
        new KeptWatts(3.3, 4.4, 7 + i, -1.2),
        known(i, 0.75),
        Optional.of(nth(Verdict.values(), i)).filter(v -> i % 7 > 0),
        known(i + 1, 0.6),
        known(i / 2, 0.01));
  }

  private static Circumstances around(int i) {
    return new Circumstances(
        Optional.of(nth(Criterion.values(), i)).filter(c -> i % 4 > 0),
        i % 3 == 0 ? Optional.empty() : Optional.of(i % 3 == 1),
        known(i, 12.5),
        known(i + 1, 21.5),
        Optional.of(nth(ThdKind.values(), i)).filter(k -> i % 4 > 1),
        known(i / 2, 22000),
        Optional.of(nth(ReadBy.values(), i)).filter(r -> i % 5 > 0),
        i % 2 == 0,
        i % 3 == 0,
        i % 5 == 0);
  }

  private static OptionalDouble known(int i, double value) {
    return i % 2 == 0 ? OptionalDouble.of(value + i) : OptionalDouble.empty();
  }

  private static <T> T nth(T[] words, int i) {
    return words[i % words.length];
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
    "'[0,0.5,', '[-1,0.5,'",
    "'[0,0.5,', '[9,0.5,'",
    "'[0,0.5,', '[true,0.5,'",
    "'[0,0.5,', '[\"0\",0.5,'",
    "',false,false,false,', ',false,0,false,'",
    "',[2,3,4],', ',[2,3,40],'",
    "',[2,3,4],', ',[2,3,null],'",
    "',[2,3,4],', ',2,3,4,'",
    "',3.3,4.4,', ',3.3,null,'",
    "'3.3,4.4,7.0,-1.2,', '3.3,4.4,7.0,-1.2,7.0,'",
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
