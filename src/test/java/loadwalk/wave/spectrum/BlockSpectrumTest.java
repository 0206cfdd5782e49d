package loadwalk.wave.spectrum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import loadwalk.wave.Rows;
import org.hipparchus.complex.Complex;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;
import org.junit.jupiter.api.Test;

class BlockSpectrumTest {
  /** The transform of a general-purpose library, on noise. */
  @Test
  void fft_agreesWithTheLibrary() {
    long seed = 6;
    Random random = new Random(seed);
    for (int size : new int[] {4, 8, 64, 4096}) {
      double[] row = random.doubles(size, -1, 1).toArray();
      Complex[] expected =
          new FastFourierTransformer(DftNormalization.STANDARD)
              .transform(row, TransformType.FORWARD);
      Fft fft = new Fft(size);
      fft.transform(row);
      for (int k = 0; k <= size / 2; k++) {
        assertEquals(expected[k].getReal(), fft.re(k), 1e-10, "bin " + k + ", seed " + seed);
        assertEquals(expected[k].getImaginary(), fft.im(k), 1e-10, "bin " + k + ", seed " + seed);
      }
    }
    assertThrows(IllegalArgumentException.class, () -> new Fft(48));
  }

  @Test
  void sineBetweenBins_leaksBelowTheSideLobes() {
    assertTrue(leak(Window.SEVEN_TERMS) < 1e-15, "" + leak(Window.SEVEN_TERMS));
    assertTrue(leak(Window.NUTTALL) < 5e-9, "" + leak(Window.NUTTALL));
  }

  /** Returns the part of a sine's power outside of the main lobe and a bin. */
  private static double leak(Window window) {
    int frames = 1 << 14;
    BlockSpectrum spectrum = new BlockSpectrum(frames, window);
    double bins = 34.37;
    double[] row = Rows.wave(frames, 1, bins, x -> Math.sin(x) + 0.5);
    spectrum.take(row, 0);
    double all = 0;
    double outside = 0;
    for (int k = 0; k < spectrum.bins(); k++) {
      all += spectrum.power(k);
      outside += Math.abs(k - bins) > spectrum.lobe() + 1 ? spectrum.power(k) : 0;
    }
    assertEquals(0.5, all, 2e-6);
    assertEquals(0.5, spectrum.mean(), 2e-6);
    return outside / all;
  }

  @Test
  void phase_isThatOfTheMiddle() {
    int frames = 3000;
    BlockSpectrum spectrum = new BlockSpectrum(frames, Window.SEVEN_TERMS);
    double[] row = new double[frames];
    double omega = 2 * Math.PI * 30.4 / frames;
    for (int i = 0; i < frames; i++) {
      row[i] = Math.cos(omega * (i - (frames - 1) / 2.0) + 0.7);
    }
    spectrum.take(row, 0);
    int bin = (int) Math.round(30.4 * 4096 / frames);
    assertEquals(0, Math.IEEEremainder(spectrum.phaseInMiddle(bin) - 0.7, 2 * Math.PI), 1e-9);
  }
}
