package loadwalk.report.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.journal.Soundness;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.result.Criterion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two walks read at other supply volts: from where on the power is estimated, and how. */
class ComparisonTest {
  private static LedgerEntry walk(String name, double ohms, double volts, Optional<Boolean> rails) {
    LedgerEntry.Load load =
        new LedgerEntry.Load(
            Mode.STEREO,
            ohms,
            Criterion.THD_LIMIT,
            50,
            0.5,
            100,
            1,
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            volts < 0 ? OptionalDouble.empty() : OptionalDouble.of(volts));
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
        Soundness.WHOLE);
  }

  private static List<String> estimates(LedgerEntry... walks) {
    Page page = ComparisonPage.of(List.of(walks));
    List<String> lines = TextPage.lines(page, 400, false);
    return lines.stream().filter(l -> l.startsWith("• ")).toList();
  }

  /** 2 % of 13.5 V is 0.27 V; 100 W · (13.5 / 13.0)² = 107.8 W. */
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

  @Test
  void everyDifferenceOfMethod_isNamed() {
    LedgerEntry.Done one = new LedgerEntry.Done("one", "00", 40, 1, 13.8);
    LedgerEntry.Done other = new LedgerEntry.Done("two", "11", 1000, 0.1, 14.4);
    assertEquals(
        List.of(
            "sequence one vs. two, not the same file",
            "tone 40 Hz vs. 1 kHz",
            "limit 1 % vs. 0.1 %",
            "supply 13.8 V vs. 14.4 V"),
        ComparisonPage.differences(one, other));
    assertEquals(List.of(), ComparisonPage.differences(one, one));
  }
}
