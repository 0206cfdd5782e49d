package loadwalk.wave.spectrum;

import java.util.Arrays;

/** Splits a power spectrum into fundamental, harmonics and the rest. */
public final class HarmonicBands {
  /** The fraction by which a frequency may swing, for tapes and discs with wow. */
  private static final double SWING = 0.003;

  private static final int REPORTED = 10;

  private final double[] power;
  private final double binsPerTone;
  private final double lobe;

  /**
   * Takes a spectrum.
   *
   * @param power mean square by bin
   * @param binsPerTone the frequency of the fundamental in bins
   * @param lobe half the width of the window's main lobe, in bins
   */
  public HarmonicBands(double[] power, double binsPerTone, double lobe) {
    this.power = power;
    this.binsPerTone = binsPerTone;
    this.lobe = lobe;
  }

  /** Returns the mean square of the fundamental. */
  public double fundamental() {
    return sum(1);
  }

  /** Returns the mean square of everything. */
  public double all() {
    return Arrays.stream(power).sum();
  }

  /**
   * Returns the mean squares of harmonics 2 to 10 below half the sample rate, less the noise in the
   * bins between them.
   *
   * @param averaged how many independent spectra were averaged, for the median of the noise
   */
  public double[] harmonics(double averaged) {
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
    int begin = last(n - 1) + 1;
    int end = Math.min(first(n + 1), power.length);
    double[] between = new double[Math.max(0, end - begin)];
    int count = 0;
    for (int k = begin; k < end; k++) {
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
    double half = lobe + 1 + SWING * n * binsPerTone;
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
