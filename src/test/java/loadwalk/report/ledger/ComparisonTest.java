package loadwalk.report.ledger;

import static loadwalk.report.ledger.LoadMaker.load;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.journal.Soundness;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.result.Criterion;
import loadwalk.result.Mark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two walks read at other supply volts: from where on the power is estimated, and how. */
class ComparisonTest {
  private static LedgerEntry walk(String name, double ohms, double volts, Optional<Boolean> rails) {
    LedgerEntry.Load load = load(Mode.STEREO, ohms, 50).supply(volts).made();
    return walk(name, rails, load);
  }

  private static LedgerEntry walk(String name, Optional<Boolean> rails, LedgerEntry.Load load) {
    return new LedgerEntry(
        name,
        name,
        false,
        true,
        0,
        0,
        Entries.FULL,
        OptionalDouble.empty(),
        rails,
        List.of(load),
        Entries.REPEATS,
        Soundness.WHOLE);
  }

  private static List<String> estimates(LedgerEntry... walks) {
    Page page = ComparisonPage.of(List.of(walks));
    List<String> lines = TextPage.lines(page, 400, false);
    return lines.stream().filter(l -> l.startsWith("• ") && l.contains("estimate")).toList();
  }

  /** 2 % of 13.5 V is 0.27 V, of 13.77 V 0.2754 V; 100 W · (13.5 / 13.0)² = 107.8 W. */
  @ParameterizedTest
  @CsvSource({
    "13.50, 13.50, false",
    "13.50, 13.76, false",
    "13.50, 13.78, true",
    "13.50, 13.24, false",
    "13.50, 13.22, true",
    "13.50, 0, false",
    "13.50, -1, false",
    "-1, 12.0, false"
  })
  void estimate_isMadeBeyondTwoPercentOfTheVolts(double first, double other, boolean made) {
    List<String> found =
        estimates(walk("a", 4, first, Optional.empty()), walk("b", 4, other, Optional.empty()));
    assertEquals(made ? 1 : 0, found.size(), String.join("\n", found));
  }

  @ParameterizedTest
  @CsvSource({
    "true, '• 2 b, stereo 4 Ω: 100.0 ± 2.0 W at 13.5 V,'",
    "false, '• 2 b, stereo 4 Ω: 107.8 ± 2.2 W at 13.5 V,'"
  })
  void estimate_goesByTheRails(boolean regulated, String expected) {
    String found =
        estimates(walk("a", 4, 13.5, Optional.empty()), walk("b", 4, 13, Optional.of(regulated)))
            .get(0);
    assertEquals(expected, found.substring(0, Math.min(expected.length(), found.length())), found);
  }

  /** Loads that differ by at most one in a thousand are one rung. */
  @ParameterizedTest
  @CsvSource({"4, 1", "4.003, 1", "3.997, 1", "4.005, 2", "3.995, 2"})
  void loadsNearlyAlike_shareARow(double ohms, int rows) {
    Page page =
        ComparisonPage.of(
            List.of(walk("a", 4, 13.5, Optional.empty()), walk("b", ohms, 13.5, Optional.empty())));
    long found =
        TextPage.lines(page, 100, false).stream().filter(l -> l.matches("stereo .* W.*")).count();
    assertEquals(rows, found);
  }

  private static String said(LoadMaker first, LoadMaker other) {
    Page page =
        ComparisonPage.of(
            List.of(
                walk("a", Optional.empty(), first.made()),
                walk("b", Optional.empty(), other.made())));
    return TextPage.lines(page, 400, false).stream()
        .filter(l -> l.startsWith("• 2 b, stereo 4 Ω: "))
        .map(l -> l.substring("• 2 b, stereo 4 Ω: ".length()))
        .findFirst()
        .orElseThrow();
  }

  private static LoadMaker read(double watts) {
    return load(Mode.STEREO, 4, watts);
  }

  /** 100 W and 104 W, each ± 1 %: twice √(1² + 1.04²) = 2.885 W. */
  @Test
  void difference_isStatedOnlyWhereItIsShown() {
    assertEquals("4.00 W more, 4.0 %.", said(read(50), read(52)));
    assertEquals("4.00 W less, 3.8 %.", said(read(52), read(50)));
    assertEquals("too close to call, 2.00 W apart, within 2.86 W.", said(read(50), read(51)));
  }

  /**
   * 1 W and 1.034 W with 3 degrees of freedom each: u = 1.438 W, ν = u⁴ / (1⁴/3 + 1.034⁴/3) = 5.99,
   * and t at 95.45 % is 2.52 (JCGM 100:2008, table G.2, 6 degrees). With k = 2 it were 2.88 W.
   */
  @Test
  void difference_fromFewReadings_takesTheirOwnCoverageFactor() {
    LoadMaker first = read(50).u(0.5, 3);
    assertEquals("4.00 W more, 4.0 %.", said(read(50), read(52)));
    assertEquals(
        "too close to call, 3.40 W apart, within 3.62 W.", said(first, read(51.7).u(0.517, 3)));
  }

  @Test
  void otherConditions_areNamed_andNoDifferenceIsStated() {
    assertEquals(
        "other conditions, tone 40.0 Hz vs. 1.00 kHz; read at 1 % THD vs. at the onset of"
            + " clipping; supply 13.50 V vs. 14.40 V; warm-up done vs. not known.",
        said(
            read(50),
            read(70).tone(1000).at(Criterion.CLIPPING_ONSET).supply(14.4).warm(Optional.empty())));
    assertEquals(
        "other conditions, tone 40.0 Hz vs. 40 Hz asked for, not read; read at 1 % THD vs. at 0.1 %"
            + " THD; supply 13.50 V vs. not read; amplifier real vs. simulated.",
        said(read(50), read(70).tone(-1).limit(0.1).supply(-1).practice()));
  }

  @Test
  void whatDoesNotRank_isNotCompared() {
    assertEquals(
        "not ranked, impossible.",
        said(read(50), read(500).marked(Mark.IMPOSSIBLE).marked(Mark.STOOD_BY)));
    assertEquals(
        "not compared: the first is not ranked, THD not read.",
        said(
            read(500).at(Criterion.NOT_KNOWN).marked(Mark.LIMIT_NOT_KNOWN),
            read(50).at(Criterion.NOT_KNOWN).marked(Mark.LIMIT_NOT_KNOWN)));
  }
}
