package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.journal.Soundness;
import loadwalk.plan.StockRules;
import loadwalk.report.Documents;
import loadwalk.report.FrozenWalks;
import loadwalk.report.page.HtmlPage;
import loadwalk.report.page.MarkdownPage;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.result.Criterion;
import loadwalk.result.Mark;
import org.junit.jupiter.api.Test;

/** Whole ledgers and comparisons of kept walks and of invented ones, in every format. */
class LedgerSnapshotTest {
  private static final LedgerEntry STRONG =
      Entries.entry("w-strong", "Verrin V 4", Entries.FULL, 80, 150, 240);
  private static final LedgerEntry NEAR =
      Entries.entry("w-near", "Oakline, Audio 7", Entries.FULL, 79, 148, 200);
  private static final LedgerEntry NEXT =
      Entries.entry("w-next", "Brightmoor B 1", Entries.FULL, 79.5, 120, 239);
  private static final LedgerEntry OTHER =
      Entries.entry("w-other", "Brightmoor B 2", Entries.RATED, 100);

  /** The strongest of all, but with a doubt open, unfinished, and nothing else known. */
  private static LedgerEntry doubted() {
    LedgerEntry.Load load =
        LoadMaker.load(Mode.BRIDGED, 4, 999)
            .u(9, 3)
            .at(Criterion.CLIPPING_ONSET)
            .tone(-1)
            .supply(-1)
            .warm(Optional.empty())
            .marked(Mark.IN_DOUBT)
            .made();
    return new LedgerEntry(
        "w-doubted",
        "=Tessaly \"T\" 2",
        false,
        false,
        2,
        1_773_480_000_000L,
        Entries.FULL,
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(load),
        Entries.REPEATS,
        Soundness.WHOLE);
  }

  /** More out than in, and stood by. */
  private static LedgerEntry impossible() {
    LedgerEntry.Load load =
        LoadMaker.load(Mode.STEREO, 4, 482.5)
            .marked(Mark.IMPOSSIBLE)
            .marked(Mark.STOOD_BY)
            .efficiency(1.157)
            .made();
    return Entries.entry("w-impossible", "Verrin V 9", Entries.FULL, List.of(load));
  }

  private static List<LedgerEntry> all() {
    List<LedgerEntry> all =
        new ArrayList<>(List.of(NEAR, OTHER, STRONG, NEXT, doubted(), impossible()));
    all.add(LedgerEntry.of(FrozenWalks.eventful(), StockRules.RULES).under("w-eventful"));
    all.add(LedgerEntry.of(FrozenWalks.left(), StockRules.RULES).under("w-left"));
    all.add(LedgerEntry.of(FrozenWalks.practice(), StockRules.RULES).under("w-practice"));
    all.add(LedgerEntry.of(FrozenWalks.begun(), StockRules.RULES).under("w-begun"));
    return all;
  }

  @Test
  void ledger_isAsKept() {
    Page page = LedgerPage.of(Ledger.of(all()));
    Documents.same("ledger.txt", TextPage.lines(page, 132, false));
    Documents.same("ledger-ascii.txt", TextPage.lines(page, 60, true));
    Documents.same("ledger.html", Documents.bones(HtmlPage.html(page)));
    Documents.same("ledger.md", MarkdownPage.text(page));
  }

  @Test
  void ledgerByPower_isAsKept() {
    Page page = LedgerPage.of(Ledger.of(all()).sorted(LedgerSort.POWER));
    Documents.same("ledger-power.txt", TextPage.lines(page, 132, false));
  }

  @Test
  void ledgerForMachines_isAsKept() {
    Ledger ledger = Ledger.of(all());
    Documents.same("ledger.json", Documents.nineDigits(LedgerJson.text(ledger)));
    String csv = LedgerCsv.text(ledger).replace("\r\n", "␍\n");
    Documents.same("ledger.csv", Documents.nineDigits(csv));
  }

  @Test
  void emptyLedger_isAsKept() {
    Ledger none = Ledger.of(List.of());
    Documents.same("ledger-empty.txt", TextPage.lines(LedgerPage.of(none), 80, false));
    Documents.same("ledger-empty.json", LedgerJson.text(none));
  }

  @Test
  void comparison_isAsKept() {
    Page page =
        ComparisonPage.of(
            List.of(
                STRONG,
                LedgerEntry.of(FrozenWalks.eventful(), StockRules.RULES),
                doubted(),
                LedgerEntry.of(FrozenWalks.practice(), StockRules.RULES)));
    Documents.same("comparison.txt", TextPage.lines(page, 110, false));
    Documents.same("comparison-charts.txt", Documents.numbers(page.charts()));
  }

  @Test
  void comparisonOfPracticeWalks_isAsKept() {
    LedgerEntry practice = LedgerEntry.of(FrozenWalks.practice(), StockRules.RULES);
    LedgerEntry left = LedgerEntry.of(FrozenWalks.left(), StockRules.RULES);
    Page two = ComparisonPage.of(List.of(practice, left));
    Documents.same("comparison-practice.md", MarkdownPage.text(two));
    Page three = ComparisonPage.of(List.of(practice, NEAR, left));
    Documents.same("comparison-mixed.md", MarkdownPage.text(three));
  }
}
