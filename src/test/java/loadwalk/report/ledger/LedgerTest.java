package loadwalk.report.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.journal.Recovery;
import loadwalk.plan.StockRules;
import loadwalk.quantity.Quantity;
import loadwalk.report.page.HtmlPage;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.report.page.Walks;
import loadwalk.result.Criterion;
import loadwalk.result.Mark;
import loadwalk.walk.Results;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LedgerTest {
  private static final LedgerEntry STRONG =
      Entries.entry("w-strong", "Verrin V 4", Entries.FULL, 80, 150, 240);
  private static final LedgerEntry WEAK =
      Entries.entry("w-weak", "Tessaly T 1", Entries.FULL, 40, 60, 70);
  private static final LedgerEntry OTHER =
      Entries.entry("w-other", "Brightmoor B 2", Entries.RATED, 100);

  @Test
  void ofBodies_isTheSameAsOfTheWholeWalk() {
    for (Walks walk : List.of(Walks.practicing(1, "full-walk").toTheEnd(), Walks.eventful())) {
      List<String> bodies = new ArrayList<>();
      for (Stamped fact : walk.facts()) {
        bodies.add(FactText.body(List.of(fact)));
      }
      assertTrue(NeededRecords.needed(bodies).size() < bodies.size());
      assertEquals(
          LedgerEntry.of(walk.state(), StockRules.RULES),
          LedgerEntry.ofBodies(bodies, StockRules.RULES));
    }
  }

  /** The oldest journal kept has three doubts without an answer, raised by a later reading. */
  @Test
  void ofBodies_keepsEveryOpenDoubt() throws IOException {
    List<String> bodies = new ArrayList<>();
    try (InputStream in = LedgerTest.class.getResourceAsStream("/journals/walk-v1.jsonl")) {
      Recovery.read(in.readAllBytes()).records().forEach(r -> bodies.add(r.body()));
    }
    LedgerEntry entry = LedgerEntry.ofBodies(bodies, StockRules.RULES);
    assertEquals(3, entry.openDoubts());
    assertEquals(LedgerEntry.of(FactText.walk(bodies), StockRules.RULES), entry);
  }

  @Test
  void needed_aTextThatLooksLikeAFact_isNoFact() {
    String note =
        "{\"at\":\"2026-03-14T09:30:00Z\",\"facts\":[{\"fact\":\"skipped\",\"step\":\"idle\","
            + "\"reason\":\"{\\\"fact\\\":\\\"briefed\\\"\"}]}";
    assertTrue(NeededRecords.isNeeded(note));
    String two =
        "{\"at\":\"2026-03-14T09:30:00Z\",\"facts\":[{\"fact\":\"begun\",\"step\":\"idle\"},"
            + "{\"fact\":\"done\",\"step\":\"idle\"}]}";
    assertTrue(NeededRecords.isNeeded(two));
  }

  @Test
  void sorted_byPower_ranksWhatIsAlikeByItself() {
    LedgerEntry weakToo = Entries.entry("w-weak-too", "Verrin V 1", Entries.FULL, 4, 6, 7);
    Ledger ledger = Ledger.of(List.of(WEAK, OTHER, weakToo, STRONG)).sorted(LedgerSort.POWER);
    assertEquals(List.of(STRONG, WEAK, weakToo, OTHER), ledger.entries());
    assertEquals("A 1", ledger.places().get("w-strong"));
    assertEquals("B 1", ledger.places().get("w-other"));
  }

  /** Of four results that do not rank, each is told once, by the worst that is wrong with it. */
  @Test
  void page_saysHowManyResultsAreNotRanked_andWhy() {
    LedgerEntry walk =
        Entries.entry(
            "w-1",
            "Verrin V 4",
            Entries.FULL,
            List.of(
                read(965).marked(Mark.IMPOSSIBLE).marked(Mark.STOOD_BY).made(),
                read(500).at(Criterion.ABOVE_LIMIT).marked(Mark.ABOVE_LIMIT).made(),
                read(400).at(Criterion.NOT_KNOWN).marked(Mark.LIMIT_NOT_KNOWN).made(),
                read(300).at(Criterion.NOT_KNOWN).marked(Mark.LIMIT_NOT_KNOWN).made(),
                read(200).marked(Mark.NOT_WARM).made()));
    Page page = LedgerPage.of(Ledger.of(List.of(walk)));
    assertEquals(
        "4 results are not ranked: 1 with more out than in, 1 above the limit, 2 where nobody read"
            + " the THD or named the point.",
        page.warnings().get(0));
    assertEquals(List.of(), LedgerPage.of(Ledger.of(List.of(WEAK, OTHER))).warnings());
  }

  @Test
  void strongest_isOneThatRanks_ifAnyDoes() {
    LedgerEntry.Load impossible = read(965).marked(Mark.IMPOSSIBLE).made();
    LedgerEntry.Load sound = read(200).marked(Mark.NOT_WARM).made();
    LedgerEntry both = Entries.entry("w", "V", Entries.FULL, List.of(impossible, sound));
    LedgerEntry one = Entries.entry("w", "V", Entries.FULL, List.of(impossible));
    assertEquals(Optional.of(sound), both.strongest());
    assertEquals(Optional.of(impossible), one.strongest());
    assertEquals(OptionalDouble.empty(), one.wattsPerFuseAmp());
    assertEquals(400 / 60.0, both.wattsPerFuseAmp().getAsDouble(), 1e-9);
    List<String> lines = TextPage.lines(LedgerPage.of(Ledger.of(List.of(one))), 200, false);
    assertTrue(
        lines.stream().anyMatch(l -> l.contains("W  stereo 4 Ω (impossible)")),
        String.join("\n", lines));
  }

  private static LoadMaker read(double watts) {
    return LoadMaker.load(Mode.STEREO, 4, watts);
  }

  @Test
  void best_isAmongResultsAlike() {
    List<BestAtLoad> best = BestAtLoad.of(List.of(WEAK, OTHER, STRONG));
    BestAtLoad first = best.get(0);
    assertEquals(STRONG, first.best().walk());
    assertEquals(2, first.compared().size());
    assertTrue(
        best.stream().anyMatch(b -> b.best().walk().equals(OTHER) && b.compared().size() == 1),
        "the other conditions have a best of their own");
  }

  /** 13.3 and 13.8 V are both within 2 % of 13.55 V, and not of each other. */
  @Test
  void best_isComparedPairByPair() {
    LedgerEntry low =
        Entries.entry("low", "L", Entries.FULL, List.of(read(100).supply(13.3).made()));
    LedgerEntry middle =
        Entries.entry("middle", "M", Entries.FULL, List.of(read(90).supply(13.55).made()));
    LedgerEntry high =
        Entries.entry("high", "H", Entries.FULL, List.of(read(80).supply(13.8).made()));
    assertEquals(List.of("low"), best(low, middle, high));
    LedgerEntry higher =
        Entries.entry("higher", "H", Entries.FULL, List.of(read(95).supply(13.8).made()));
    assertEquals(List.of("low", "higher"), best(low, middle, higher));
  }

  private static List<String> best(LedgerEntry... walks) {
    return BestAtLoad.of(List.of(walks)).stream().map(b -> b.best().walk().walk()).toList();
  }

  /** What the design calls alike, a step to either side of it. */
  @ParameterizedTest
  @CsvSource({
    "4, 40, 13.5, true",
    "4.003, 40.7, 13.76, true",
    "4.005, 40, 13.5, false",
    "4, 40.9, 13.5, false",
    "4, 39.1, 13.5, false",
    "4, 40, 13.78, false",
    "4, 40, 13.22, false",
    "4, -1, 13.5, false",
    "4, 40, -1, false"
  })
  void alike_isWithinTwoPercentOfToneAndSupply(
      double ohms, double hertz, double volts, boolean alike) {
    LedgerEntry.Load other = LoadMaker.load(Mode.STEREO, ohms, 60).tone(hertz).supply(volts).made();
    assertEquals(alike, Likeness.alike(read(50).made(), other));
    assertEquals(alike, Likeness.alike(other, read(50).made()));
    assertEquals(alike ? 0 : 1, Likeness.differences(other, read(50).made()).size());
  }

  @Test
  void alike_needsTheSameWordsOfEveryCondition() {
    LedgerEntry.Load load = read(50).made();
    assertTrue(Likeness.alike(load, read(900).marked(Mark.SUPPLY_OFF).asked(1000).made()));
    LedgerEntry.Load unread = read(50).tone(-1).made();
    assertTrue(Likeness.alike(unread, read(60).tone(-1).made()));
    assertFalse(Likeness.alike(unread, read(60).tone(-1).asked(1000).made()));
    assertFalse(Likeness.alike(load, read(50).at(Criterion.CLIPPING_ONSET).made()));
    assertFalse(Likeness.alike(load, read(50).limit(0.1).made()));
    LedgerEntry.Load onset = read(50).at(Criterion.CLIPPING_ONSET).made();
    assertTrue(
        Likeness.alike(onset, read(50).at(Criterion.CLIPPING_ONSET).limit(0.1).made()),
        "the onset of clipping is at no limit");
    assertFalse(Likeness.alike(load, read(50).warm(Optional.of(false)).made()));
    assertFalse(Likeness.alike(load, read(50).warm(Optional.empty()).made()));
    assertFalse(Likeness.alike(load, read(50).practice().made()));
    assertFalse(Likeness.alike(load, LoadMaker.load(Mode.BRIDGED, 4, 50).made()));
  }

  @Test
  void best_withinUncertainty_isTooCloseToTell() {
    LedgerEntry near = Entries.entry("w-near", "Oakline Audio 7", Entries.FULL, 79);
    BestAtLoad best = BestAtLoad.of(List.of(near, STRONG)).get(0);
    assertEquals(Optional.of("too close to Oakline Audio 7 to call"), best.note());
  }

  /**
   * 160 W and 155.6 W, each ± 1 %: √(1.6² + 1.556²) = 2.23 W, twice that 4.46 W; 155.4 W is 4.6 W
   * below.
   */
  @ParameterizedTest
  @CsvSource({"79, true", "77.8, true", "77.7, false", "70, false"})
  void best_isToldFromWhatLiesBeyondTwiceTheUncertainty(double watts, boolean close) {
    LedgerEntry other = Entries.entry("w-2", "Oakline Audio 7", Entries.FULL, watts);
    for (List<LedgerEntry> given : List.of(List.of(other, STRONG), List.of(STRONG, other))) {
      BestAtLoad best = BestAtLoad.of(given).get(0);
      assertEquals(STRONG, best.best().walk());
      assertEquals(close, best.note().isPresent());
    }
  }

  @Test
  void filtered_everyWordMustBeThere() {
    Ledger ledger = Ledger.of(List.of(WEAK, OTHER, STRONG));
    assertEquals(List.of(STRONG), ledger.filtered(" verrin full ").entries());
    assertEquals(List.of(), ledger.filtered("verrin rated").entries());
  }

  @Test
  void comparison_drawsEfficiencyWithItsUncertainty() {
    Chart chart =
        ComparisonPage.of(List.of(STRONG, WEAK)).charts().stream()
            .filter(c -> c.title().startsWith("Efficiency"))
            .findFirst()
            .orElseThrow();
    for (Series series : chart.series()) {
      for (Series.Point point : series.points()) {
        assertEquals(60, point.y(), 1e-9);
        assertEquals(57.6, point.low(), 1e-9);
        assertEquals(62.4, point.high(), 1e-9);
      }
    }
    assertEquals(2, chart.series().size());
  }

  @Test
  void entry_takesTheUncertaintyOfEfficiency_fromTheResult() {
    WalkState state = Walks.practice(1, "stereo-only");
    LedgerEntry.Load load = LedgerEntry.of(state, StockRules.RULES).loads().get(0);
    Quantity efficiency =
        Results.of(state, StockRules.RULES.wire()).steps().stream()
            .filter(s -> s.mode() == load.mode() && s.ohms() == load.ohms())
            .flatMap(s -> s.efficiency().stream())
            .findFirst()
            .orElseThrow();
    assertEquals(efficiency.u(), load.efficiencyU().orElseThrow());
    assertTrue(efficiency.u() > 0);
  }

  @Test
  void comparison_oneWalkOrFive_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> ComparisonPage.of(List.of(STRONG)));
    List<LedgerEntry> five = List.of(STRONG, WEAK, OTHER, STRONG, WEAK);
    assertThrows(IllegalArgumentException.class, () -> ComparisonPage.of(five));
  }

  @Test
  void textAndHtml_areWritten() throws Exception {
    List<LedgerEntry> walks = new ArrayList<>(List.of(STRONG, WEAK, OTHER));
    for (long seed = 1; seed <= 3; seed++) {
      walks.add(LedgerEntry.of(Walks.practice(seed, "stereo-only"), StockRules.RULES));
    }
    Page page = LedgerPage.of(Ledger.of(walks));
    List<String> lines = TextPage.lines(page, 100, false);
    assertTrue(lines.stream().anyMatch(l -> l.contains("Verrin V 4")));
    Page two = ComparisonPage.of(walks.subList(3, 6));
    Files.createDirectories(Path.of("target/samples"));
    Files.writeString(Path.of("target/samples/ledger.html"), HtmlPage.html(page));
    Files.writeString(Path.of("target/samples/comparison.html"), HtmlPage.html(two));
    Files.write(Path.of("target/samples/ledger.txt"), lines);
    Files.write(Path.of("target/samples/comparison.txt"), TextPage.lines(two, 80, true));
    assertFalse(HtmlPage.html(two).contains("<script"));
    assertTrue(LedgerJson.text(Ledger.of(walks)).contains("\"loadwalk-ledger/1\""));
    assertEquals(
        LedgerCsv.text(Ledger.of(walks)).split("\r\n").length,
        1 + walks.stream().mapToInt(w -> Math.max(1, w.loads().size())).sum());
  }
}
