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
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.journal.Recovery;
import loadwalk.plan.StockRules;
import loadwalk.quantity.Quantity;
import loadwalk.report.page.HtmlPage;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.report.page.Walks;
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
  void sorted_byPower_ranksEachWayByItself() {
    Ledger ledger = Ledger.of(List.of(WEAK, OTHER, STRONG)).sorted(LedgerSort.POWER);
    assertEquals(List.of(STRONG, WEAK, OTHER), ledger.entries());
    assertEquals("A", ledger.way(STRONG));
    assertEquals("B", ledger.way(OTHER));
  }

  @Test
  void page_marksWaysThatDiffer() {
    Page mixed = LedgerPage.of(Ledger.of(List.of(WEAK, OTHER)));
    assertTrue(mixed.warnings().get(0).startsWith("These walks were measured by 2 methods"));
    Page alike = LedgerPage.of(Ledger.of(List.of(WEAK, STRONG)));
    assertEquals(List.of(), alike.warnings());
  }

  @Test
  void best_isAmongWalksDoneAlike() {
    List<BestAtLoad> best = BestAtLoad.of(Ledger.of(List.of(WEAK, OTHER, STRONG)));
    BestAtLoad first = best.get(0);
    assertEquals(STRONG, first.walk());
    assertEquals(2, first.compared());
    assertTrue(
        best.stream().anyMatch(b -> b.walk().equals(OTHER) && b.compared() == 1),
        "the other way has a best of its own");
  }

  @Test
  void best_withinUncertainty_isTooCloseToTell() {
    LedgerEntry near = Entries.entry("w-near", "Oakline Audio 7", Entries.FULL, 79);
    BestAtLoad best = BestAtLoad.of(Ledger.of(List.of(near, STRONG))).get(0);
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
      BestAtLoad best = BestAtLoad.of(Ledger.of(given)).get(0);
      assertEquals(STRONG, best.walk());
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
  void comparison_saysWhatWasNotAlike() {
    Page page = ComparisonPage.of(List.of(STRONG, OTHER));
    assertEquals(
        "1 Verrin V 4 and 2 Brightmoor B 2 were measured differently: sequence full-walk vs."
            + " rated-conditions, not the same file; tone 40 Hz vs. 1 kHz; supply 13.8 V vs."
            + " 14.4 V.",
        page.warnings().get(0));
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
