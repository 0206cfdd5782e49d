package loadwalk.result;

import static loadwalk.result.Readings.bench;
import static loadwalk.result.Readings.bridged;
import static loadwalk.result.Readings.load;
import static loadwalk.result.Readings.loaded;
import static loadwalk.result.Readings.meter;
import static loadwalk.result.Readings.named;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.says;
import static loadwalk.result.Readings.stereo;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static loadwalk.result.Readings.walk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.numeric.LinearFit;
import loadwalk.numeric.MonteCarlo;
import org.junit.jupiter.api.Test;

class WalkResultTest {
  @Test
  void bridge_meetsTheTable() throws IOException {
    // Ideal bridging: reference/bridging.csv, computed from the textbook formulas.
    for (double[] row : table("bridging.csv")) {
      double channel = row[0];
      double ohms = row[1];
      WalkResult result =
          walk(
              exactBench(ohms),
              stereo(ohms / 2, volts(channel)),
              bridged(ohms, volts(2 * channel)));
      StepResult half = result.steps().get(0);
      StepResult bridged = result.steps().get(1);
      assertEquals(row[4], bridged.totalWatts().orElseThrow().value(), row[4] * 1e-5);
      assertEquals(row[6], half.watts().orElseThrow().value(), row[6] * 1e-5);
      assertEquals(row[7], half.totalWatts().orElseThrow().value(), row[7] * 1e-5);
      assertEquals(row[5], Mode.BRIDGED.channelOhms(ohms));
      BridgeComparison comparison = result.bridges().get(0);
      assertEquals(1, comparison.ratio().value(), 1e-12);
      assertTrue(comparison.withinUncertainty());
    }
  }

  @Test
  void bridge_offByMoreThanItsUncertainty_isTold() {
    WalkResult result = walk(usual(), stereo(2, volts(15)), bridged(4, volts(28)));
    BridgeComparison comparison = result.bridges().get(0);
    assertEquals("stereo-2", comparison.stereoId());
    assertEquals(28.0 / 30, comparison.ratio().value(), 1e-12);
    assertFalse(comparison.withinUncertainty());
    // The gain of the one meter cancels: only digits stay.
    double digit = 0.03 / Math.sqrt(3);
    double u = 28.0 / 30 * Math.hypot(digit / 15, digit / 28);
    assertEquals(u, without(comparison, "load"), 1e-9);
  }

  @Test
  void bridge_countsLoadsThatAreNotExact() {
    // V = E·R/(R + r): dV/V = r/(R + r)·dR/R, with E = 24 V and r = 0.4 ohm.
    WalkResult result =
        walk(usual(), stereo(2, volts(20)), stereo(4, volts(24 * 4 / 4.4)), bridged(4, volts(40)));
    double relative = 0.01 / Math.sqrt(3) * 0.4 / 2.4;
    assertEquals(
        relative,
        Math.abs(result.bridges().get(0).ratio().contributions().get("load 4.0 ohm")),
        1e-6);
  }

  /** k = 1.94 of 0.9333·√((0.0173/15)² + (0.0173/28)²), the digits of 0.03 V on both. */
  @Test
  void bridge_isToldInFull() {
    assertEquals(
        "bridged-4 gives 0.9333 ± 0.0023 times twice the volts of stereo-2, unlike two equal"
            + " channels",
        walk(usual(), stereo(2, volts(15)), bridged(4, volts(28))).bridges().get(0).text());
    assertTrue(
        walk(usual(), stereo(2, volts(15)), bridged(4, volts(30)))
            .bridges()
            .get(0)
            .text()
            .endsWith(" times twice the volts of stereo-2, as two equal channels do"));
  }

  @Test
  void bridge_isComparedWithTheStereoStepOfHalfItsLoad() {
    WalkResult result =
        walk(usual(), stereo(4, volts(16)), stereo(2, volts(15)), bridged(4, volts(30)));
    assertEquals(
        List.of("stereo-2"), result.bridges().stream().map(BridgeComparison::stereoId).toList());
    assertEquals(List.of(), walk(usual(), stereo(4, volts(16)), bridged(4, volts(30))).bridges());
  }

  @Test
  void bridge_ofStepsBelowTheLimitOrWithoutVolts_isNotCompared() {
    assertEquals(
        List.of(),
        walk(
                usual(),
                loaded(Mode.STEREO, 2, Criterion.BELOW_LIMIT, volts(15)),
                loaded(Mode.BRIDGED, 4, Criterion.BELOW_LIMIT, volts(30)))
            .bridges());
    assertEquals(List.of(), walk(usual(), stereo(2, volts(0)), bridged(4, volts(30))).bridges());
  }

  @Test
  void step_isFoundByItsId() {
    WalkResult result = walk(usual(), stereo(4, volts(16)), stereo(2, volts(15)));
    assertEquals("stereo-2", result.step("stereo-2").orElseThrow().stepId());
    assertEquals(Optional.empty(), result.step("bridged-2"));
  }

  /**
   * V = E·R/(R + r) with the point at 1 Ω 2 % low: the fit is off the worst point by a fraction.
   */
  @Test
  void outputFit_tellsItsWorstPoint() {
    OutputFit fit =
        walk(
                usual(),
                stereo(4, volts(24 * 4 / 4.4)),
                stereo(2, volts(24 * 2 / 2.4)),
                stereo(1, volts(0.98 * 24 / 1.4)))
            .outputFit()
            .orElseThrow();
    double worst = 0;
    double[] read = {24 * 4 / 4.4, 24 * 2 / 2.4, 0.98 * 24 / 1.4};
    double[] ohms = {4, 2, 1};
    for (int i = 0; i < 3; i++) {
      worst = Math.max(worst, Math.abs(fit.voltsAt(ohms[i]) / read[i] - 1));
    }
    assertEquals(worst, fit.worstResidual(), 1e-9);
    assertTrue(worst > 0.002, "worst " + worst);
  }

  @Test
  void outputFit_leavesOutStepsWithoutVolts() {
    OutputFit fit =
        walk(usual(), stereo(4, volts(20)), stereo(8, volts(0)), stereo(2, volts(18)))
            .outputFit()
            .orElseThrow();
    assertEquals(List.of("stereo-4", "stereo-2"), fit.stepIds());
  }

  @Test
  void outputFit_ofVoltsThatNoSourceGives_isLeftOut() {
    // Volts that fall tenfold from 2 to 1 Ω would need a source without end: 1/E < 0.
    assertEquals(
        Optional.empty(), walk(usual(), stereo(2, volts(20)), stereo(1, volts(2))).outputFit());
  }

  @Test
  void outputFit_ofEqualNumbersOfLoads_takesTheThdLimitAndSaysSo() {
    WalkResult result =
        walk(
            usual(),
            loaded(Mode.STEREO, 4, Criterion.CLIPPING_ONSET, volts(20)),
            loaded(Mode.STEREO, 2, Criterion.CLIPPING_ONSET, volts(18)),
            stereo(1, volts(15)),
            bridged(1, volts(20)));
    assertEquals(List.of("stereo-1", "bridged-1"), result.outputFit().orElseThrow().stepIds());
    assertTrue(
        result.remarks().stream()
            .anyMatch(
                r -> r.text().equals("the output fit uses only the steps read at the THD limit")),
        result.remarks().toString());
  }

  @Test
  void outputFit_neverUsesStepsBelowTheLimit() {
    assertEquals(
        Optional.empty(),
        walk(
                usual(),
                stereo(4, volts(20)),
                loaded(Mode.STEREO, 2, Criterion.BELOW_LIMIT, volts(18)))
            .outputFit());
    assertFalse(
        says(
            walk(
                    usual(),
                    stereo(4, volts(20)),
                    loaded(Mode.STEREO, 2, Criterion.BELOW_LIMIT, volts(18)))
                .remarks(),
            "fit-one-criterion"));
  }

  @Test
  void bridge_ofDifferentCriteria_isNotCompared() {
    WalkResult result =
        walk(
            usual(),
            loaded(Mode.STEREO, 2, Criterion.CLIPPING_ONSET, volts(15)),
            bridged(4, volts(30)));
    assertEquals(List.of(), result.bridges());
  }

  @Test
  void sourceResistance_meetsTheVector() throws IOException {
    for (double[] row : table("source-resistance.csv")) {
      Bench exact =
          bench(List.of(meter(ReadingId.OUTPUT_VOLTS, 0.5, 1, 0.001)), List.of(load(row[2], 0)));
      MeasuredStep step =
          stereo(
              row[2],
              new TakenReading(ReadingId.OUTPUT_VOLTS, row[1], 0.001),
              new TakenReading(ReadingId.OPEN_VOLTS, row[0], 0.001));
      WalkResult result = walk(exact, step);
      assertEquals(row[3], result.sourceResistance().orElseThrow().value(), 5e-7);
      assertEquals(row[4], result.dampingFactor().orElseThrow().value(), 1e-9 * row[4]);
      // Gain cancels: u = R/V·sqrt(u(V0)² + (V0/V·u(V))²) of the digits alone.
      double digit = 0.001 / Math.sqrt(3);
      double u = row[2] / row[1] * digit * Math.hypot(1, row[0] / row[1]);
      // The load behind its lead of 0 to 20 mΩ: Rs goes with it.
      double lead = (row[0] / row[1] - 1) * 0.02 / Math.sqrt(3);
      assertEquals(Math.hypot(u, lead), result.sourceResistance().orElseThrow().u(), 1e-9);
      assertFalse(says(result.remarks(), "source-resistance-other-step"));
    }
  }

  @Test
  void sourceResistance_ofAnotherStep_saysSo() {
    MeasuredStep open =
        Readings.below(
            "open-load",
            Target.Kind.OPEN_LOAD,
            Mode.STEREO,
            Double.NaN,
            of(ReadingId.OPEN_VOLTS, 22));
    WalkResult result = walk(usual(), stereo(2, volts(18)), stereo(4, volts(20)), open);
    assertEquals(0.4, result.sourceResistance().orElseThrow().value(), 1e-12);
    Remark remark =
        result.remarks().stream()
            .filter(r -> r.code().equals("source-resistance-other-step"))
            .findFirst()
            .orElseThrow();
    assertTrue(remark.text().contains("stereo-4"), remark.text());
  }

  @Test
  void dampingFactor_notResolved_isLeftOutWithABound() {
    WalkResult result = walk(usual(), stereo(4, volts(20), of(ReadingId.OPEN_VOLTS, 19.99)));
    assertTrue(result.sourceResistance().orElseThrow().value() < 0);
    assertEquals(Optional.empty(), result.dampingFactor());
    assertTrue(says(result.remarks(), "damping-factor-not-resolved"));
  }

  @Test
  void outputFit_findsSourceAndResistance() {
    // V = E·R/(R + r) with E = 24 V and r = 0.4 ohm, written to full precision.
    WalkResult result =
        walk(
            usual(),
            stereo(4, volts(24 * 4 / 4.4)),
            stereo(2, volts(24 * 2 / 2.4)),
            bridged(2, volts(2 * 24 * 1 / 1.4)));
    OutputFit fit = result.outputFit().orElseThrow();
    assertEquals(24, fit.openVolts().value(), 1e-9);
    assertEquals(0.4, fit.seriesOhms().value(), 1e-9);
    assertEquals(24 * 0.5 / 0.9, fit.voltsAt(0.5), 1e-9);
    assertEquals(0, fit.worstResidual(), 1e-12);
    assertEquals(List.of("stereo-4", "stereo-2", "bridged-2"), fit.stepIds());
    // A meter that reads everything high by its gain moves E alone.
    double gain = 24 * 0.005 / Math.sqrt(3);
    assertEquals(gain, fit.openVolts().contributions().get("DMM output volts gain"), 1e-9);
    assertEquals(0, fit.seriesOhms().contributions().get("DMM output volts gain"), 1e-9);
  }

  @Test
  void outputFit_uncertainty_meetsAFiniteDifference() {
    double[] r = {4, 2, 1};
    double[] v = {21.8, 20.1, 16.9};
    OutputFit fit = fit(r, v);
    double step = 1e-4;
    double[] moved = v.clone();
    moved[1] += step;
    OutputFit other = fit(r, moved);
    double digit = 0.03 / Math.sqrt(3);
    String source = "DMM output volts stereo-2 digit";
    assertEquals(
        (other.openVolts().value() - fit.openVolts().value()) / step * digit,
        fit.openVolts().contributions().get(source),
        1e-5);
    assertEquals(
        (other.seriesOhms().value() - fit.seriesOhms().value()) / step * digit,
        fit.seriesOhms().contributions().get(source),
        1e-5);
    assertTrue(fit.seriesOhms().contributions().containsKey("scatter about the fit"));
    // One load 1 % high reads as another slope. To first order: the fit of the true loads.
    OutputFit shifted = fit(new double[] {4, 2 * (1 + step), 1}, v);
    double load = 0.02 / Math.sqrt(3);
    assertEquals(
        (shifted.seriesOhms().value() - fit.seriesOhms().value()) / (2 * step) * load,
        fit.seriesOhms().contributions().get("load 2.0 ohm"),
        // The line is not exact through these points: their residuals enter the difference.
        0.05 * load);
  }

  @Test
  void outputFit_scatter_meetsMonteCarlo() {
    // Scatter in 1/V of the size the fit finds, drawn anew: the spread of r is what it says.
    double[] r = {4, 2, 1};
    double[] v = {21.8, 20.1, 16.9};
    double[] x = {0.25, 0.5, 1};
    LinearFit line = LinearFit.line(x, new double[] {1 / v[0], 1 / v[1], 1 / v[2]});
    List<MonteCarlo.Input> inputs = new ArrayList<>();
    for (double at : x) {
      inputs.add(new MonteCarlo.Normal(line.at(at), line.residualSd()));
    }
    MonteCarlo drawn =
        MonteCarlo.of(
            y -> {
              LinearFit again = LinearFit.line(x, y);
              return again.slope() / again.intercept();
            },
            inputs,
            50_000,
            7,
            0.95);
    double stated = fit(r, v).seriesOhms().contributions().get("scatter about the fit");
    assertEquals(drawn.u(), stated, 0.03 * drawn.u(), "seed 7");
  }

  @Test
  void outputFit_needsTwoLoads() {
    MeasuredStep step = stereo(4, volts(20));
    assertEquals(Optional.empty(), walk(usual(), step).outputFit());
    assertEquals(Optional.empty(), walk(usual(), step, named(step, "stereo-4#2")).outputFit());
    // Each channel of 8 ohm bridged sees 4 ohm: the same load again.
    assertEquals(Optional.empty(), walk(usual(), step, bridged(8, volts(40))).outputFit());
  }

  @Test
  void outputFit_neverMixesCriteria() {
    WalkResult result =
        walk(
            usual(),
            stereo(4, volts(20)),
            loaded(Mode.STEREO, 2, Criterion.CLIPPING_ONSET, volts(18)),
            loaded(Mode.STEREO, 1, Criterion.CLIPPING_ONSET, volts(15)));
    assertEquals(List.of("stereo-2", "stereo-1"), result.outputFit().orElseThrow().stepIds());
    assertTrue(says(result.remarks(), "fit-one-criterion"));
  }

  @Test
  void emptyWalk_hasEmptyResults() {
    WalkResult result = walk(usual());
    assertEquals(List.of(), result.steps());
    assertTrue(result.published().isEmpty());
    assertEquals(Optional.empty(), result.outputFit());
    assertEquals(Optional.empty(), result.sourceResistance());
  }

  private static OutputFit fit(double[] r, double[] v) {
    Bench bench =
        bench(
            List.of(
                meter(ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01), meter(ReadingId.LOAD_OHMS, 0, 0, 0)),
            List.of());
    MeasuredStep[] steps = new MeasuredStep[r.length];
    Bench named =
        bench(
            List.of(meter(ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01)),
            List.of(load(4, 1), load(2, 1), load(1, 1)));
    boolean nominal = r[1] == 2;
    for (int i = 0; i < r.length; i++) {
      double nominalOhms = Math.rint(r[i]);
      steps[i] =
          nominal
              ? stereo(nominalOhms, volts(v[i]))
              : stereo(nominalOhms, volts(v[i]), new TakenReading(ReadingId.LOAD_OHMS, r[i], 0));
    }
    return walk(nominal ? named : bench, steps).outputFit().orElseThrow();
  }

  private static double without(BridgeComparison comparison, String prefix) {
    return Math.sqrt(
        comparison.ratio().contributions().entrySet().stream()
            .filter(e -> !e.getKey().startsWith(prefix))
            .mapToDouble(e -> e.getValue() * e.getValue())
            .sum());
  }

  private static Bench exactBench(double ohms) {
    return bench(
        List.of(meter(ReadingId.OUTPUT_VOLTS, 0.5, 1, 0.01)),
        List.of(load(ohms, 0), load(ohms / 2, 0)));
  }

  private static List<double[]> table(String name) throws IOException {
    try (InputStream in = WalkResultTest.class.getResourceAsStream("/reference/" + name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines()
          .filter(line -> !line.isEmpty() && Character.isDigit(line.charAt(0)))
          .map(line -> List.of(line.split(",")).stream().mapToDouble(Double::parseDouble).toArray())
          .toList();
    }
  }
}
