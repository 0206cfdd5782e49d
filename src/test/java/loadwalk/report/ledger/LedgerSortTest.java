package loadwalk.report.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.bench.Mode;
import loadwalk.journal.Soundness;
import loadwalk.result.Mark;
import loadwalk.result.RatingComparison.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The orders of a ledger: what comes first, what is equal, what is not known. */
class LedgerSortTest {
  /** A walk of one result; what is below zero is not known. */
  private static LedgerEntry walk(
      String name, long at, double fuse, double ratio, LoadMaker... results) {
    return walk(name, at, fuse, ratio, Soundness.WHOLE, results);
  }

  private static LedgerEntry walk(
      String name, long at, double fuse, double ratio, Soundness soundness, LoadMaker... results) {
    Verdict verdict = ratio > 1 ? Verdict.MEETS : Verdict.MISSES;
    return new LedgerEntry(
        name.toLowerCase(Locale.ROOT),
        name,
        false,
        true,
        0,
        at,
        Entries.FULL,
        LoadMaker.known(fuse),
        Optional.empty(),
        Arrays.stream(results).map(r -> (ratio < 0 ? r : r.rated(ratio, verdict)).made()).toList(),
        Entries.REPEATS,
        soundness);
  }

  private static LoadMaker read(double watts, double efficiency) {
    return LoadMaker.load(Mode.BRIDGED, 4, watts).efficiency(efficiency);
  }

  private static final List<LedgerEntry> WALKS =
      List.of(
          walk("b", 5, 10, 1.2, read(100, 0.5)),
          walk("A", 5, 60, 0.9, read(300, 0.6)),
          walk("c", 9, -1, -1, read(200, -1)),
          walk("d", 1, 20, -1),
          walk("E", 7, 10, 2.0, read(900, 0.9).tone(1000).supply(14.2)),
          walk("f", 3, 10, 3.0, read(950, 1.2).marked(Mark.IMPOSSIBLE).marked(Mark.STOOD_BY)),
          walk("G", 4, 10, 4.0, read(990, 0.95).practice()));

  @ParameterizedTest
  @CsvSource({
    "newest, c E A b G f d",
    "name, A b c d E f G",
    "power, A c b E G d f",
    "watts-per-fuse-amp, b A E G c d f",
    "honesty, E b A G c d f",
    "efficiency, A b E G c d f"
  })
  void order_ranksAmongAlike_thePracticeBehindTheReal_andLastWhatDoesNotRank(
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
  void places_nameTheListAndThePlaceInIt() {
    assertEquals(
        Map.of("a", "A 1", "c", "A 2", "b", "A 3", "e", "B 1", "g", "C 1"),
        Ledger.of(WALKS).sorted(LedgerSort.POWER).places());
    assertEquals(
        Map.of("e", "A 1", "b", "A 2", "a", "A 3", "g", "B 1"),
        Ledger.of(WALKS).sorted(LedgerSort.HONESTY).filtered("a").places());
    assertEquals(Map.of(), Ledger.of(WALKS).places());
  }

  /** 13.3 and 13.8 V are both within 2 % of 13.55 V, and not of each other: 3.6 %. */
  @Test
  void list_holdsNoTwoThatAreUnlike() {
    LedgerEntry low = walk("low", 1, 10, -1, read(100, -1).supply(13.3));
    LedgerEntry middle = walk("middle", 1, 10, -1, read(110, -1).supply(13.55));
    LedgerEntry high = walk("high", 1, 10, -1, read(80, -1).supply(13.8));
    Ledger ledger = Ledger.of(List.of(high, middle, low)).sorted(LedgerSort.POWER);
    assertEquals(Map.of("middle", "A 1", "low", "A 2", "high", "B 1"), ledger.places());
  }

  @Test
  void whyAWalkIsNotRanked_isTheWorstOfItsStrongestResult() {
    Soundness bad = new Soundness(Soundness.Standing.DAMAGED, "A record is gone.");
    LedgerEntry damaged = walk("x", 1, 10, 2, bad, read(10, 0.5));
    LedgerEntry unread = walk("y", 1, -1, -1, read(10, -1));
    Map<String, LedgerEntry> walks = new HashMap<>();
    WALKS.forEach(w -> walks.put(w.amplifier(), w));
    assertEquals("impossible", LedgerSort.POWER.unranked(walks.get("f")));
    assertEquals("nothing measured", LedgerSort.POWER.unranked(walks.get("d")));
    assertEquals("journal damaged", LedgerSort.HONESTY.unranked(damaged));
    assertEquals("fuses not known", LedgerSort.FUSE.unranked(unread));
    assertEquals("input not read", LedgerSort.EFFICIENCY.unranked(unread));
    assertEquals("no rating under like conditions", LedgerSort.HONESTY.unranked(unread));
    LedgerEntry stepwise = walk("z", 1, 10, 2, bad, read(10, 0.5));
    assertEquals(Map.of(), Ledger.of(List.of(stepwise)).sorted(LedgerSort.POWER).places());
  }

  @Test
  void word_thatNamesNoOrder_isNone() {
    assertEquals(Optional.empty(), LedgerSort.ofWord("loudness"));
    assertEquals(6, Arrays.stream(LedgerSort.values()).map(LedgerSort::word).distinct().count());
  }

  /** After Z comes AA, as in the columns of a spreadsheet. */
  @Test
  void lists_beyondTheAlphabet_haveTwoLetters() {
    List<LedgerEntry> many = new ArrayList<>();
    for (int i = 0; i < 54; i++) {
      String name = "w" + (100 + i);
      many.add(walk(name, 1, 10, -1, read(1000 - i, -1).tone(20 * Math.pow(1.1, i))));
    }
    Map<String, String> places = Ledger.of(many).sorted(LedgerSort.POWER).places();
    assertEquals("A 1", places.get("w100"));
    assertEquals("Z 1", places.get("w125"));
    assertEquals("AA 1", places.get("w126"));
    assertEquals("AZ 1", places.get("w151"));
    assertEquals("BA 1", places.get("w152"));
  }

  @Test
  void find_isByTheWholeName() {
    Ledger ledger = Ledger.of(WALKS);
    assertEquals(Optional.of(WALKS.get(1)), ledger.find("a"));
    assertEquals(Optional.empty(), ledger.find("aa"));
  }
}
