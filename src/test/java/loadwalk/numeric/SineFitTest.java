package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SineFitTest {
  private static double[] sine(int n, double rate, double hertz, double phase, double noise) {
    Random random = new Random(40);
    double[] samples = new double[n];
    for (int k = 0; k < n; k++) {
      samples[k] =
          0.25
              + 1.5 * Math.cos(2 * Math.PI * hertz * k / rate + phase)
              + noise * random.nextGaussian();
    }
    return samples;
  }

  @Test
  void threeParameter_findsAnExactSine_overAPartOfAPeriod() {
    SineFit fit = SineFit.threeParameter(sine(400, 48_000, 40, 2, 0), 48_000, 40);
    assertEquals(1.5, fit.amplitude(), 1e-10);
    assertEquals(2, fit.phaseRadians(), 1e-10);
    assertEquals(0.25, fit.offset(), 1e-10);
    assertEquals(0, fit.residualRms(), 1e-12);
    assertEquals(0, fit.frequencyU());
    assertEquals(1.5 / Math.sqrt(2), fit.rms(), 1e-10);
  }

  @Test
  void fourParameter_findsTheFrequency_fromAWrongStart() {
    SineFit fit = SineFit.fourParameter(sine(96_000, 48_000, 40.037, -1, 0), 48_000, 40.2);
    assertEquals(40.037, fit.frequencyHertz(), 1e-9);
    assertEquals(1.5, fit.amplitude(), 1e-9);
    assertEquals(-1, fit.phaseRadians(), 1e-8);
    assertEquals(0.25, fit.offset(), 1e-9);
    assertEquals(1.5 * Math.cos(2 * Math.PI * 40.037 * 0.01 - 1) + 0.25, fit.at(0.01), 1e-8);
  }

  /** IEEE Std 1057, from memory: u(A) is near σ√(2/M). */
  @Test
  void noise_givesItsUncertainty() {
    SineFit fit = SineFit.fourParameter(sine(9600, 48_000, 1003, 0.3, 0.01), 48_000, 1003.4);
    assertEquals(0.01, fit.residualRms(), 0.0003);
    assertEquals(0.01 * Math.sqrt(2.0 / 9600), fit.amplitudeU(), 1e-5);
    assertEquals(1.5, fit.amplitude(), 4 * fit.amplitudeU());
    assertEquals(1003, fit.frequencyHertz(), 4 * fit.frequencyU());
    double bound = 0.01 / 1.5 * Math.sqrt(24.0 / 9600) / (2 * Math.PI * 0.2);
    assertEquals(bound, fit.frequencyU(), 0.05 * bound, "Cramér-Rao bound of a sine in noise");
  }

  @Test
  void badInput_isRefused() {
    double[] samples = sine(100, 48_000, 1000, 0, 0);
    assertThrows(
        IllegalArgumentException.class, () -> SineFit.threeParameter(samples, 48_000, 24_000));
    assertThrows(
        IllegalArgumentException.class, () -> SineFit.threeParameter(new double[4], 48_000, 40));
    assertThrows(
        IllegalArgumentException.class, () -> SineFit.threeParameter(new double[9], 48_000, 1e-9));
    assertThrows(
        IllegalArgumentException.class, () -> SineFit.fourParameter(new double[500], 48_000, 1000));
    samples[3] = Double.NaN;
    assertThrows(
        IllegalArgumentException.class, () -> SineFit.fourParameter(samples, 48_000, 1000));
  }
}
