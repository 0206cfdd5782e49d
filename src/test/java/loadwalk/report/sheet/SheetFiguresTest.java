package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.plan.StockRules;
import loadwalk.report.FrozenWalks;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.result.Criterion;
import loadwalk.walk.fact.FactsOfStep;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;

/** Figures of a kept sheet, worked out by hand from the readings that stand beside them. */
class SheetFiguresTest {
  private static List<String> lines(WalkState state) {
    return Sheets.lines(Sheet.of(state, SheetOptions.DEFAULT, StockRules.RULES), 132, false);
  }

  private static void assertRow(String row) {
    assertRow(row, lines(FrozenWalks.eventful()));
  }

  private static void assertRow(String row, List<String> lines) {
    List<String> cells = List.of(row.split(" \\| "));
    boolean found = lines.stream().anyMatch(l -> List.of(l.split("  +")).equals(cells));
    assertTrue(found, row + " is no row of\n" + String.join("\n", lines));
  }

  private static void assertTold(String words) {
    assertTold(words, lines(FrozenWalks.eventful()));
  }

  private static void assertTold(String words, List<String> lines) {
    String all = String.join(" ", lines).replaceAll("\\s+", " ");
    assertTrue(all.contains(words), words + " is not in\n" + all);
  }

  /**
   * 15.90² / 3.98 = 63.520 W and 15.42² / 3.98 = 59.743 W make 123.263 W; 10 lg of their ratio is
   * −0.266 dB.
   *
   * <p>u of the sum: gain of the voltmeter 0.5 % / √3, in both channels alike, 2 · 123.263 W ·
   * 0.0028868 = 0.7117 W; load 3.98 Ω ± (1 % + 0.02 Ω), its parts 0.02298 Ω and 0.01155 Ω, makes
   * 123.263 / 3.98 · 0.02572 = 0.7965 W; 0.02 V / √3 of each channel, 0.0923 W and 0.0895 W. In
   * quadrature 1.0758 W; U = 2 u = 2.2 W, per load 1.1 W. Of the balance only the digits count:
   * 4.343 dB · √(0.0923² / 63.52² + 0.0895² / 59.74²) = 0.0091 dB.
   *
   * <p>The weaker channel stands beside 50 W at 14.4 V; at 13.60 V and an unknown distortion it is
   * no verdict. At 14.4 V it would be 59.743 · (14.4 / 13.6)² = 66.98 W.
   */
  @Test
  void bothChannels_theirSumTheirBalanceAndTheWeakerOne() {
    assertRow(
        "stereo 4 Ω | 123.3 ± 2.2 | 63.5 ± 1.1 | 59.7 ± 1.1 | -0.266 ± 0.018"
            + " | not warm, THD not read");
    assertRow("stereo 4 Ω | 59.7 ± 1.1 | 50 | other conditions | 67.0 ± 1.3");
    assertTold("stereo 4 Ω: the rating is set against the weaker channel, 59.7 ± 1.1 W.");
  }

  /**
   * 13.60 V · 13.2 A = 179.52 W; 123.263 / 179.52 = 68.66 %; 179.52 − 123.263 = 56.26 W of heat.
   * 13.8 V set − 13.60 V = 0.20 V lost, · 13.2 A = 2.64 W.
   */
  @Test
  void inputEfficiencyHeatAndLoss() {
    assertRow("stereo-4 | 123.3 ± 2.2 W | 179.5 ± 4.5 W | 68.7 ± 2.1 % | 56.3 ± 5.0 W");
    assertRow("stereo-4 | 0.20 ± 0.17 V | 2.6 ± 2.2 W");
  }

  /**
   * Volts against ln THD, from 14.2 V at 0.31 % to 15.3 V at 2.4 %: 14.2 + 1.1 · ln(1/0.31) /
   * ln(2.4/0.31) = 14.829 V; 14.829² / 2 = 109.96 W, twice that in all.
   */
  @Test
  void limitBetweenTwoPoints() {
    assertRow("stereo 2 Ω | 220 ± 10 | 110.0 ± 5.1 | not read | not warm, supply off");
    assertTold("worked out from readings near it: stereo 2 Ω (0.31 % to 2.4 %).");
    assertTold(
        "One channel read, both loaded: stereo 2 Ω, stereo 1 Ω. The total is twice channel 1.");
  }

  /** 22.0² / 4 = 121 W of 190 W, below the limit: no miss, and no ratio that reads as one. */
  @Test
  void readBelowTheLimit_missesNothing() {
    assertRow("bridged 4 Ω | 121.0 ± 2.1 | 190 | other conditions");
  }

  /**
   * 17.94² = 321.84 W, then 16.20² = 262.44 W: the lower one stands. Its scatter, 0.1 V of 6
   * readings, is 32.4 W/V · 0.1 V = 3.24 W of u = 3.90 W, so ν = 5 · (3.90 / 3.24)⁴ = 10.5.
   */
  @Test
  void recheckThatDisagrees_theLowerOneStands() {
    WalkState state = FrozenWalks.eventful();
    for (String step : List.of("bridged-1", "recheck")) {
      state = new FactsOfStep.CriterionSet(step, Criterion.THD_LIMIT).applyTo(state, Walks.START);
    }
    List<String> lines = lines(state);
    assertRow("bridged 1 Ω | 262.4 ± 8.9 | not warm, supply off", lines);
    assertTold(
        "bridged 1 Ω: runs disagree, with totals from 262.4 ± 8.9 W to 322 ± 22 W."
            + " The headline is the lowest, from recheck.",
        lines);
    assertTold("ν_eff = 10;", lines);
  }

  /** 3.98 Ω · (16.52 / 15.90 − 1) = 0.1552 Ω; 4 Ω / 0.1552 Ω = 25.8. */
  @Test
  void sourceResistance_andDampingFactor() {
    assertTold("Source resistance: 0.1552 ± 0.0086 Ω.");
    assertTold("Damping factor: 25.8 ± 1.4.");
  }

  /** Seven temperatures at 100 s each: 700 s. */
  @Test
  void warmUp_lastedAsLongAsItsClock() {
    assertTold("warm-up (done): 11 min 40 s of 15 min.");
    assertTold("8 temperatures, from 27.0 °C to 51.7 °C.");
  }

  /**
   * Watts, then volts, are one reading: each is shown, in the order typed; the same volts typed
   * again change nothing.
   */
  @Test
  void readingTypedInWattsFirst_isAmendedAllTheSame() {
    assertTold("stereo-2, output volts: 1130 W → 150 V → 15.0 V.");
    assertTold("stereo-2, output watts typed as 1130 W: a slipped decimal point.");
  }
}
