package loadwalk.wave;

import java.util.Arrays;

/** Splits a power spectrum into fundamental, harmonics and the rest. */
final class HarmonicBands {
  /** Bins to either side that hold a line under the window, with a spare one. */
  private static final double HALF_BAND_BINS = BlockSpectrum.LOBE + 1;

  /** The fundamental's side lobes matter for longer: past these bins they are below -112 dB. */
  private static final double HALF_FUNDAMENTAL_BINS = 12;

  /** The part by which a frequency may swing, for tapes and discs that wow. */
  private static final double SWING = 0.003;

  private static final int REPORTED = 10;

  private final double[] power;
  private final double binsPerTone;
  private final double padding;

  /**
   * Takes a spectrum.
   *
   * @param power mean square by bin
   * @param binsPerTone the frequency of the fundamental in bins
   * @param padding bins that one bin of the block makes
   */
  HarmonicBands(double[] power, double binsPerTone, double padding) {
    this.power = power;
    this.binsPerTone = binsPerTone;
    this.padding = padding;
  }

  /** Returns the mean square of the fundamental. */
  double fundamental() {
    return sum(1);
  }

  /** Returns the mean square of everything. */
  double all() {
    return Arrays.stream(power).sum();
  }

  /**
   * Returns the mean squares of the harmonics 2 to 10 below half the sample rate, with the noise
   * that the bins between them show taken off.
   *
   * @param averaged how many independent spectra were averaged, for the median of the noise
   */
  double[] harmonics(double averaged) {
    int count = 0;
    while (count + 2 <= REPORTED && (count + 2) * binsPerTone < 0.98 * (power.length - 1)) {
      count++;
    }
    double[] harmonics = new double[count];
    for (int i = 0; i < count; i++) {
      int n = i + 2;
      double noise = noisePerBin(n, averaged) * (last(n) - first(n) + 1);
      harmonics[i] = Math.max(0, sum(n) - noise);
    }
    return harmonics;
  }

  private double sum(int n) {
    double sum = 0;
    for (int k = first(n); k <= last(n); k++) {
      sum += power[k];
    }
    return sum;
  }

  private double noisePerBin(int n, double averaged) {
    double[] between = new double[power.length];
    int count = 0;
    int end = Math.min(first(n + 1), power.length);
    for (int k = last(n - 1) + 1; k < end; k++) {
      if (k < first(n) || k > last(n)) {
        between[count++] = power[k];
      }
    }
    if (count < 4) {
      return 0;
    }
    double[] sorted = Arrays.copyOf(between, count);
    Arrays.sort(sorted);
    // The median of a chi-square of d degrees lies near d(1 - 2/(9d))³ (Wilson and Hilferty, 1931).
    double degrees = 2 * Math.max(1, averaged);
    return sorted[count / 2] / Math.pow(1 - 2 / (9 * degrees), 3);
  }

  private double half(int n) {
    double bins = n == 1 ? HALF_FUNDAMENTAL_BINS : HALF_BAND_BINS;
    double half = bins * padding + SWING * n * binsPerTone;
    return Math.min(half, 0.5 * binsPerTone);
  }

  private int first(int n) {
    return Math.max(1, (int) Math.ceil(n * binsPerTone - half(n)));
  }

  private int last(int n) {
    // Bands that touch must not share a bin.
    int last = (int) Math.ceil(n * binsPerTone + half(n)) - 1;
    return Math.min(power.length - 1, last);
  }
}
