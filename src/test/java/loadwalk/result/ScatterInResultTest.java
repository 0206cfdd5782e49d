package loadwalk.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import loadwalk.bench.ReadingId;
import loadwalk.numeric.Gum;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Joins type A to type B: degrees of freedom, k, and what rests on them. */
class ScatterInResultTest {
  private static final double TWO_SIGMA = 0.9545;

  /** Student's t as Hipparchus computes it; the table is JCGM 100:2008, G.2, fourth column. */
  @Test
  void coverageFactor_isStudents_neverLess_andTwoWhereDegreesAreMany() {
    for (double degrees = 1; degrees < 99.9; degrees += 0.37) {
      Quantity q = Quantity.exact(1, Unit.VOLT).withScatter("scatter", 0.1, degrees);
      double t = Gum.coverageFactor(TWO_SIGMA, degrees);
      String where = "nu = " + degrees + ", t = " + t + ", k = " + q.coverageFactor();
      assertTrue(q.coverageFactor() >= t - 1e-4, where);
      assertTrue(q.coverageFactor() <= t * (degrees < 2 ? 1.25 : degrees < 3 ? 1.05 : 1.02), where);
    }
    for (int degrees = 1; degrees <= 20; degrees++) {
      Quantity q = Quantity.exact(1, Unit.VOLT).withScatter("scatter", 0.1, degrees);
      assertEquals(Gum.coverageFactor(TWO_SIGMA, degrees), q.coverageFactor(), 5e-4);
    }
    assertEquals(2, Quantity.exact(1, Unit.VOLT).withScatter("scatter", 0.1, 100).coverageFactor());
    assertEquals(2, Quantity.of(1, Unit.VOLT, "gain", 0.1).coverageFactor());
    assertEquals(2, Quantity.exact(1, Unit.VOLT).coverageFactor());
  }

  /**
   * JCGM 100:2008, example of G.4.1: Y = b·X1·X2·X3 with relative u of 0.25, 0.57 and 0.82 % from
   * 10, 5 and 15 readings gives ν_eff = 19.0; from memory.
   */
  @Test
  void effectiveDegrees_ofTheGuidesProduct_areNineteen() {
    Quantity product =
        Quantity.exact(1, Unit.ONE)
            .withScatter("x1", 0.0025, 9)
            .times(Quantity.exact(1, Unit.ONE).withScatter("x2", 0.0057, 4), Unit.ONE)
            .times(Quantity.exact(1, Unit.ONE).withScatter("x3", 0.0082, 14), Unit.ONE);
    assertEquals(0.0103, product.u(), 1e-5);
    assertEquals(19.0, product.effectiveDegreesOfFreedom(), 0.05);
  }

  /**
   * JCGM 100:2008, H.1: the end gauge's parts in nm with their degrees of freedom; published are
   * u_c = 32 nm, ν_eff = 16 after cutting 16.7 and u(d) = 9.7 nm with 25.6. The parts were read,
   * the degrees of freedom are from memory.
   */
  @Test
  void effectiveDegrees_ofTheGuidesEndGauge_areSixteen() {
    Quantity difference =
        Quantity.exact(215, Unit.ONE)
            .withScatter("repeated", 5.8, 24)
            .withScatter("random of the comparator", 3.9, 5)
            .withScatter("systematic of the comparator", 6.7, 8);
    assertEquals(9.7, difference.u(), 0.05);
    assertEquals(25.6, difference.effectiveDegreesOfFreedom(), 0.3);
    Quantity length =
        Quantity.exact(50_000_623, Unit.ONE)
            .withScatter("standard", 25, 18)
            .plus(difference)
            .withScatter("difference of expansion", 2.9, 50)
            .withScatter("difference of temperature", 16.6, 2);
    assertEquals(50_000_838, length.value(), 1e-6);
    assertEquals(32, length.u(), 0.5);
    assertEquals(16, Math.floor(length.effectiveDegreesOfFreedom()));
    assertEquals(16.7, length.effectiveDegreesOfFreedom(), 0.1);
    // Table G.2, 95.45 %: 2.17 at 16 degrees and 2.16 at 17.
    assertEquals(2.165, length.coverageFactor(), 0.006);
    // U99 = 93 nm = 2.92 u_c (H.1.6).
    double t99 = Gum.coverageFactor(0.99, Math.floor(length.effectiveDegreesOfFreedom()));
    assertEquals(2.92, t99, 0.005);
    assertEquals(93, t99 * length.u(), 1);
  }

  @Test
  void withScatter_ofASourceThatIsThere_orNoDegrees_isRefused() {
    Quantity q = Quantity.of(1, Unit.VOLT, "gain", 0.1);
    assertThrows(IllegalArgumentException.class, () -> q.withScatter("gain", 0.1, 4));
    assertThrows(IllegalArgumentException.class, () -> q.withScatter("s", 0.1, 0.5));
    assertThrows(IllegalArgumentException.class, () -> q.withScatter("s", 0.1, Double.NaN));
  }

  private static TakenReading volts(double scatter, double degrees) {
    return new TakenReading(ReadingId.OUTPUT_VOLTS, 20, 0.001, scatter, degrees);
  }

  private static StepResult measured(TakenReading volts) {
    return Readings.step(Readings.usual(), Readings.bridged(4, volts));
  }

  @Test
  void watts_ofAReadingThatScatters_areExpandedByStudents() {
    StepResult result = measured(volts(1, 3));
    Quantity watts = result.watts().orElseThrow();
    // The scatter, 2V/R·s = 10 W, is nearly all of u, so that nu_eff is nearly 3 (G.2b).
    assertTrue(watts.effectiveDegreesOfFreedom() > 3, watts.toString());
    assertTrue(watts.effectiveDegreesOfFreedom() < 3.4, watts.toString());
    assertTrue(watts.coverageFactor() > 3.1, watts.toString());
    BudgetLine first = result.budget().get(0);
    assertEquals("DMM output volts bridged-4 scatter", first.source());
    assertEquals(3, first.degreesOfFreedom());
    assertEquals(Double.POSITIVE_INFINITY, result.budget().get(1).degreesOfFreedom());
    double sum = 0;
    for (BudgetLine line : result.budget()) {
      sum += Math.pow(line.contribution(), 4) / line.degreesOfFreedom();
    }
    assertEquals(Math.pow(watts.u(), 4) / sum, watts.effectiveDegreesOfFreedom(), 1e-9);
    Quantity total = result.totalWatts().orElseThrow();
    assertEquals(watts.coverageFactor(), total.coverageFactor(), 1e-9);
  }

  @Test
  void watts_withALittleScatter_keepTheFactorOfTheirShape() {
    Quantity watts = measured(volts(0.002, 9)).watts().orElseThrow();
    Quantity without = measured(volts(0, 9)).watts().orElseThrow();
    assertEquals(without.coverageFactor(), watts.coverageFactor(), 0.005);
    assertTrue(watts.isEstimated());
    assertFalse(without.isEstimated());
  }

  @Test
  void recheck_withFewReadings_allowsWhatTheyLeaveOpen() {
    MeasuredStep first = Readings.stereo(4, volts(0.5, 2));
    MeasuredStep again =
        Readings.rechecking(
            Readings.loaded(
                "recheck", first.mode(), 4, Criterion.THD_LIMIT, List.of(volts(0.5, 2))),
            first.stepId());
    RecheckAgreement both =
        RecheckComparison.of(
            Readings.step(Readings.usual(), first), Readings.step(Readings.usual(), again));
    double u = both.difference().orElseThrow().u();
    // Two parts alike with nu = 2 each: nu_eff = 4 (G.2b), k = 2.87 (table G.2).
    assertEquals(2.87 * u, both.limitWatts(), 0.02 * u, both.toString());
  }

  /** Draws n readings and one more: what k·s about the one covers the truth by, seed 4. */
  @Test
  void expandedScatter_coversTheTruth_asOftenAsItSays() {
    Random random = new Random(4);
    int runs = 20_000;
    int covered = 0;
    for (int run = 0; run < runs; run++) {
      double[] seen = random.doubles(4, 0, 1).map(x -> random.nextGaussian()).toArray();
      double mean = (seen[0] + seen[1] + seen[2] + seen[3]) / 4;
      double squares = 0;
      for (double x : seen) {
        squares += (x - mean) * (x - mean);
      }
      Quantity last =
          Quantity.exact(random.nextGaussian(), Unit.VOLT)
              .withScatter("scatter", Math.sqrt(squares / 3), 3);
      covered += Math.abs(last.value()) <= last.expanded() ? 1 : 0;
    }
    assertEquals(TWO_SIGMA, covered / (double) runs, 0.006, "seed 4");
  }
}
