package loadwalk.numeric;

import static loadwalk.numeric.StatisticsTest.assertClose;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Harmonics against their own samples, and against the same fit by a QR decomposition. */
class HarmonicFitTest {
  private static final long SEED = 37;
  private static final int LENGTH = 240;
  private static final double RATE = 1000;
  private static final double HERTZ = 37;
  private static final int HARMONICS = 3;
  private static final double[] PEAKS = {2, 0.5, 0.125};
  private static final double[] PHASES = {0.4, -1.1, 2.3};

  private static double angle(double hertz, int n, int k) {
    return 2 * Math.PI * hertz / RATE * n * (k - (LENGTH - 1) / 2.0);
  }

  private static double[] samples(double noise) {
    Random random = new Random(SEED);
    double[] samples = new double[LENGTH];
    for (int k = 0; k < LENGTH; k++) {
      samples[k] = 0.3 + noise * random.nextGaussian();
      for (int n = 1; n <= HARMONICS; n++) {
        samples[k] += PEAKS[n - 1] * Math.cos(angle(HERTZ, n, k) + PHASES[n - 1]);
      }
    }
    return samples;
  }

  /** The columns 1, cos, sin of every harmonic and, where wanted, the slope by the frequency. */
  private static double[][] design(double hertz, HarmonicFit about) {
    double[][] design = new double[LENGTH][2 * HARMONICS + (about == null ? 1 : 2)];
    for (int k = 0; k < LENGTH; k++) {
      design[k][0] = 1;
      for (int n = 1; n <= HARMONICS; n++) {
        design[k][2 * n - 1] = Math.cos(angle(hertz, n, k));
        design[k][2 * n] = Math.sin(angle(hertz, n, k));
        if (about != null) {
          double slope = Math.sin(angle(hertz, n, k) + about.phaseInMiddle(n));
          design[k][2 * HARMONICS + 1] -= angle(1, n, k) * about.amplitude(n) * slope;
        }
      }
    }
    return design;
  }

  private static void assertSame(DesignFit oracle, HarmonicFit fit, double relative) {
    assertClose(oracle.coefficient(0), fit.offset(), relative);
    assertClose(oracle.u(0), fit.offsetU(), relative);
    assertClose(oracle.residualSd(), fit.residualRms(), relative);
    for (int n = 1; n <= HARMONICS; n++) {
      double a = oracle.coefficient(2 * n - 1);
      double b = oracle.coefficient(2 * n);
      double peak = Math.hypot(a, b);
      assertClose(peak, fit.amplitude(n), relative);
      assertEquals(Math.atan2(-b, a), fit.phaseInMiddle(n), relative);
      double variance =
          a * a * oracle.covariance(2 * n - 1, 2 * n - 1)
              + 2 * a * b * oracle.covariance(2 * n - 1, 2 * n)
              + b * b * oracle.covariance(2 * n, 2 * n);
      assertClose(Math.sqrt(variance) / peak, fit.amplitudeU(n), relative);
    }
  }

  @Test
  void at_findsEveryHarmonicOfItsOwnSamples() {
    HarmonicFit fit = HarmonicFit.at(HERTZ, HARMONICS, samples(0), RATE);
    assertEquals(HERTZ, fit.hertz());
    assertEquals(0, fit.hertzU());
    assertEquals(0.3, fit.offset(), 1e-12);
    for (int n = 1; n <= HARMONICS; n++) {
      assertEquals(PEAKS[n - 1], fit.amplitude(n), 1e-12);
      assertEquals(PHASES[n - 1], fit.phaseInMiddle(n), 1e-11);
    }
  }

  @Test
  void at_inNoise_agreesWithTheDecomposition() {
    double[] samples = samples(0.2);
    HarmonicFit fit = HarmonicFit.at(HERTZ, HARMONICS, samples, RATE);
    assertSame(DesignFit.of(design(HERTZ, null), samples), fit, 1e-10);
  }

  @Test
  void near_inNoise_standsWhereTheFrequencyHasNothingToGain() {
    double[] samples = samples(0.2);
    HarmonicFit fit = HarmonicFit.near(HERTZ + 0.4, HARMONICS, samples, RATE);
    assertEquals(HERTZ, fit.hertz(), 4 * fit.hertzU(), "seed " + SEED);
    DesignFit oracle = DesignFit.of(design(fit.hertz(), fit), samples);
    assertSame(oracle, fit, 1e-8);
    int last = 2 * HARMONICS + 1;
    assertEquals(0, oracle.coefficient(last), 1e-8 * fit.hertzU());
    assertClose(oracle.u(last), fit.hertzU(), 1e-8);
  }

  @Test
  void near_findsTheFrequencyFromAllHarmonics() {
    HarmonicFit fit = HarmonicFit.near(HERTZ - 0.3, HARMONICS, samples(0), RATE);
    assertEquals(HERTZ, fit.hertz(), 1e-9);
    assertEquals(PEAKS[2], fit.amplitude(3), 1e-9);
  }

  @Test
  void constantSamples_haveNoSine_andAnUncertaintyOfItsPeak() {
    double[] flat = new double[50];
    HarmonicFit fit = HarmonicFit.at(40, 1, flat, RATE);
    assertEquals(0, fit.amplitude(1));
    assertEquals(0, fit.amplitudeU(1));
    String said =
        assertThrows(IllegalArgumentException.class, () -> HarmonicFit.near(40, 1, flat, RATE))
            .getMessage();
    assertEquals("no sine near 40.0 Hz settles on the samples", said);
  }

  @Test
  void searchThatLeavesTheBand_isRefused() {
    double[] beyond = new double[60];
    for (int k = 0; k < beyond.length; k++) {
      beyond[k] = Math.cos(2 * Math.PI * 252 / RATE * k);
    }
    assertThrows(IllegalArgumentException.class, () -> HarmonicFit.near(249.9, 2, beyond, RATE));
  }

  @Test
  void tooFewSamplesOrTooHighHarmonics_areRefusedWithTheirNumbers() {
    String few =
        assertThrows(
                IllegalArgumentException.class, () -> HarmonicFit.at(HERTZ, 3, new double[8], RATE))
            .getMessage();
    assertEquals("samples needs at least 9 numbers, got 8", few);
    assertEquals(0, HarmonicFit.at(110, 3, new double[9], RATE).amplitude(3));
    String high =
        assertThrows(
                IllegalArgumentException.class, () -> HarmonicFit.at(200, 3, new double[90], RATE))
            .getMessage();
    assertTrue(high.startsWith("600.0 Hz is beyond half of 1000.0"), high);
    assertThrows(
        IllegalArgumentException.class, () -> HarmonicFit.at(200, 0, new double[90], RATE));
  }
}
