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
   * 15.90² / 3.98 = 63.520 W in the load that was measured and 15.42² / 4 = 59.444 W in the other
   * one make 122.964 W; 10 lg of their ratio is −0.288 dB.
   *
   * <p>u of the sum: gain of the voltmeter 0.5 % / √3, in both channels alike, 2 · 122.964 W ·
   * 0.0028868 = 0.710 W; load 3.98 Ω ± (1 % + 0.02 Ω), 63.52 / 3.98 · 0.0257 = 0.410 W; the other
   * one ± 1 %, 59.444 / 4 · 0.0231 = 0.343 W; 0.02 V / √3 of each channel, 0.092 W and 0.089 W;
   * heat of up to 9.5 mΩ in both and up to 20 mΩ of lead before the other, a half of it 0.291 W
   * that is not corrected for, 0.082 W and 0.086 W. In quadrature 0.952 W, U = 1.93 u = 1.8 W.
   *
   * <p>The weaker channel stands beside 50 W at 14.4 V; at 13.60 V and an unknown distortion it is
   * no verdict. At 14.4 V it would be 59.444 · (14.4 / 13.6)² = 66.64 W.
   */
  @Test
  void bothChannels_theirSumTheirBalanceAndTheWeakerOne() {
    assertRow(
        "stereo 4 Ω | 123.0 ± 1.8 | 63.5 ± 1.1 | 59.4 ± 1.1 | -0.288 ± 0.079"
            + " | not warm, THD not read");
    assertRow("stereo 4 Ω | 59.4 ± 1.1 | 50 | other conditions | 66.6 ± 1.3");
    assertTold("stereo 4 Ω: the rating is set against the weaker channel, 59.4 ± 1.1 W.");
  }

  /**
   * 13.60 V · 13.2 A = 179.52 W; 122.964 / 179.52 = 68.50 %; 179.52 − 122.964 = 56.56 W of heat.
   * 13.8 V set − 13.60 V = 0.20 V lost, · 13.2 A = 2.64 W.
   */
  @Test
  void inputEfficiencyHeatAndLoss() {
    assertRow("stereo-4 | 123.0 ± 1.8 W | 179.5 ± 4.3 W | 68.5 ± 2.0 % | 56.6 ± 4.7 W");
    assertRow("stereo-4 | 0.20 ± 0.15 V | 2.6 ± 2.0 W");
  }

  /**
   * Volts against ln THD, from 14.2 V at 0.31 % to 15.3 V at 2.4 %: 14.2 + 1.1 · ln(1/0.31) /
   * ln(2.4/0.31) = 14.829 V; 14.829² / 2 = 109.96 W, twice that in all.
   */
  @Test
  void limitBetweenTwoPoints() {
    assertRow("stereo 2 Ω | 220 ± 11 | 110.0 ± 5.3 | not read | not warm, supply off");
    assertTold("worked out from readings near it: stereo 2 Ω (0.31 % to 2.4 %).");
    assertTold(
        "One channel read, both loaded: stereo 2 Ω, stereo 1 Ω. The total is twice channel 1.");
  }

  /** 22.0² / 4 = 121 W of 190 W, below the limit: no miss, and no ratio that reads as one. */
  @Test
  void readBelowTheLimit_missesNothing() {
    assertRow("bridged 4 Ω | 121.0 ± 2.4 | 190 | other conditions, stood by");
  }

  /**
   * 17.94² = 321.84 W, then 16.20² = 262.44 W: the lower one stands. Its scatter, 0.1 V of 6
   * readings, is 32.4 W/V · 0.1 V = 3.24 W of u = 5.39 W, of which 0.4 % of volts for setting the
   * limit is 2.10 W; so ν = 5 · (5.39 / 3.24)⁴ = 38.
   */
  @Test
  void recheckThatDisagrees_theLowerOneStands() {
    WalkState state = FrozenWalks.eventful();
    for (String step : List.of("bridged-1", "recheck")) {
      state = new FactsOfStep.CriterionSet(step, Criterion.THD_LIMIT).applyTo(state, Walks.START);
    }
    List<String> lines = lines(state);
    assertRow("bridged 1 Ω | 262 ± 11 | not warm, supply off", lines);
    assertTold(
        "bridged 1 Ω: runs disagree, with totals from 262 ± 11 W to 322 ± 22 W."
            + " The headline is the lowest, from recheck.",
        lines);
    assertTold("ν_eff = 38;", lines);
  }

  /**
   * 3.98 Ω · (16.52 / 15.90 − 1) = 0.1552 Ω; 4 Ω / 0.1552 Ω = 25.8; 4/0.1635 = 24.5, 4/0.1469 =
   * 27.2.
   */
  @Test
  void sourceResistance_andDampingFactor() {
    assertTold("Source resistance: 0.1552 ± 0.0082 Ω.");
    assertTold("Damping factor: 25.8, from 24 to 27.");
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
