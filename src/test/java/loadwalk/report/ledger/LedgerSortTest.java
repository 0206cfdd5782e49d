package loadwalk.report.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.bench.Mode;
import loadwalk.journal.Soundness;
import loadwalk.report.ledger.LedgerEntry.Load;
import loadwalk.result.Criterion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The orders of a ledger: what comes first, what is equal, what is not known. */
class LedgerSortTest {
  /** A walk of one load; what is below zero is not known. */
  private static LedgerEntry walk(
      String name,
      long at,
      LedgerEntry.Done done,
      double watts,
      double fuse,
      double ratio,
      double efficiency) {
    Load load =
        new Load(
            Mode.BRIDGED,
            4,
            Criterion.THD_LIMIT,
            watts,
            1,
            watts,
            1,
            known(ratio),
            Optional.empty(),
            known(efficiency),
            known(efficiency),
            OptionalDouble.empty());
    return new LedgerEntry(
        name.toLowerCase(),
        name,
        false,
        true,
        0,
        at,
        done,
        known(fuse),
        Optional.empty(),
        watts < 0 ? List.of() : List.of(load),
        Soundness.WHOLE);
  }

  private static OptionalDouble known(double value) {
    return value < 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private static final List<LedgerEntry> WALKS =
      List.of(
          walk("b", 5, Entries.FULL, 100, 10, 1.2, 0.5),
          walk("A", 5, Entries.FULL, 300, 60, 0.9, 0.6),
          walk("c", 9, Entries.FULL, 200, -1, -1, -1),
          walk("d", 1, Entries.FULL, -1, 20, -1, -1),
          walk("E", 7, Entries.RATED, 900, 10, 2.0, 0.9));

  @ParameterizedTest
  @CsvSource({
    "newest, c E A b d",
    "name, A b c d E",
    "power, A c b d E",
    "watts-per-fuse-amp, b A c d E",
    "honesty, b A c d E",
    "efficiency, A b c d E"
  })
  void order_putsTheMostFirst_theUnknownLast_andRanksEachMethodByItself(
      String word, String expected) {
    LedgerSort sort = LedgerSort.ofWord(word).orElseThrow();
    for (List<LedgerEntry> given : List.of(WALKS, reversed())) {
      String sorted =
          Ledger.of(given).sorted(sort).entries().stream()
              .map(LedgerEntry::amplifier)
              .collect(Collectors.joining(" "));
      assertEquals(expected, sorted);
    }
  }

  private static List<LedgerEntry> reversed() {
    LedgerEntry[] all = WALKS.toArray(LedgerEntry[]::new);
    return Stream.iterate(all.length - 1, i -> i >= 0, i -> i - 1).map(i -> all[i]).toList();
  }

  @Test
  void word_thatNamesNoOrder_isNone() {
    assertEquals(Optional.empty(), LedgerSort.ofWord("loudness"));
    assertEquals(6, Arrays.stream(LedgerSort.values()).map(LedgerSort::word).distinct().count());
  }

  @Test
  void methods_areLettered_theMostCommonFirst() {
    LedgerEntry.Done next = new LedgerEntry.Done("full-walk", "ab".repeat(32), 40, 1, 14.4);
    LedgerEntry.Done edited = new LedgerEntry.Done("full-walk", "ff".repeat(32), 40, 1, 12);
    LedgerEntry.Done named = new LedgerEntry.Done("a-walk", "ff".repeat(32), 40, 1, 13.8);
    Ledger ledger =
        Ledger.of(
            List.of(
                walk("a", 1, edited, 1, 1, 1, 1),
                walk("b", 2, next, 1, 1, 1, 1),
                walk("c", 3, Entries.RATED, 1, 1, 1, 1),
                walk("d", 4, Entries.RATED, 1, 1, 1, 1),
                walk("e", 5, Entries.FULL, 1, 1, 1, 1),
                walk("f", 6, named, 1, 1, 1, 1)));
    String ways =
        ledger.entries().stream()
            .map(e -> e.walk() + ledger.way(e))
            .sorted()
            .collect(Collectors.joining(" "));
    assertEquals("aE bD cA dA eC fB", ways);
    assertEquals("?", Ledger.of(List.of()).way(WALKS.get(0)));
  }

  /** After Z comes AA, as in the columns of a spreadsheet. */
  @Test
  void methods_beyondTheAlphabet_haveTwoLetters() {
    List<LedgerEntry> many =
        Stream.iterate(0, i -> i < 54, i -> i + 1)
            .map(i -> new LedgerEntry.Done("s" + (100 + i), "00", 40, 1, 13.8))
            .map(done -> walk(done.sequence(), 1, done, 1, 1, 1, 1))
            .toList();
    Ledger ledger = Ledger.of(many);
    assertEquals("A", ledger.way(many.get(0)));
    assertEquals("Z", ledger.way(many.get(25)));
    assertEquals("AA", ledger.way(many.get(26)));
    assertEquals("AZ", ledger.way(many.get(51)));
    assertEquals("BA", ledger.way(many.get(52)));
  }

  @Test
  void find_isByTheWholeName() {
    Ledger ledger = Ledger.of(WALKS);
    assertEquals(Optional.of(WALKS.get(1)), ledger.find("a"));
    assertEquals(Optional.empty(), ledger.find("aa"));
  }
}
