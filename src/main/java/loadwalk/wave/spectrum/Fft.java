package loadwalk.wave.spectrum;

/** Transforms rows of real numbers whose length is a power of two; the tables are made once. */
final class Fft {
  private final int size;
  private final double[] cos;
  private final double[] sin;
  private final int[] reversed;
  private final double[] re;
  private final double[] im;

  /**
   * Makes the tables.
   *
   * @param size a power of two, 4 or more
   */
  Fft(int size) {
    if (size < 4 || Integer.bitCount(size) != 1) {
      throw new IllegalArgumentException("size must be a power of two from 4, got " + size);
    }
    this.size = size;
    int half = size / 2;
    cos = new double[half + 1];
    sin = new double[half + 1];
    for (int k = 0; k <= half; k++) {
      cos[k] = Math.cos(2 * Math.PI * k / size);
      sin[k] = Math.sin(2 * Math.PI * k / size);
    }
    reversed = new int[half];
    int shift = Integer.numberOfLeadingZeros(half) + 1;
    for (int i = 0; i < half; i++) {
      reversed[i] = Integer.reverse(i) >>> shift;
    }
    re = new double[half + 1];
    im = new double[half + 1];
  }

  /** Returns the smallest power of two that is not less than a length. */
  static int sizeFor(long least) {
    int size = 4;
    while (size < least) {
      size = Math.multiplyExact(size, 2);
    }
    return size;
  }

  int size() {
    return size;
  }

  /** Transforms the row; afterwards {@link #re} and {@link #im} give bins 0 to size/2. */
  void transform(double[] row) {
    int half = size / 2;
    for (int i = 0; i < half; i++) {
      int from = reversed[i];
      re[i] = row[2 * from];
      im[i] = row[2 * from + 1];
    }
    butterflies(half);
    split(half);
  }

  double re(int bin) {
    return re[bin];
  }

  double im(int bin) {
    return im[bin];
  }

  double squared(int bin) {
    return re[bin] * re[bin] + im[bin] * im[bin];
  }

  private void butterflies(int half) {
    for (int span = 1; span < half; span *= 2) {
      int stride = size / (2 * span);
      for (int start = 0; start < half; start += 2 * span) {
        for (int k = 0; k < span; k++) {
          double c = cos[k * stride];
          double s = -sin[k * stride];
          int a = start + k;
          int b = a + span;
          double x = re[b] * c - im[b] * s;
          double y = re[b] * s + im[b] * c;
          re[b] = re[a] - x;
          im[b] = im[a] - y;
          re[a] += x;
          im[a] += y;
        }
      }
    }
  }

  /** Separates the transform of even samples + i·odd samples. */
  private void split(int half) {
    double first = re[0];
    re[0] = first + im[0];
    re[half] = first - im[0];
    im[0] = 0;
    im[half] = 0;
    for (int k = 1; k <= half / 2; k++) {
      int m = half - k;
      double evenRe = (re[k] + re[m]) / 2;
      double evenIm = (im[k] - im[m]) / 2;
      double oddRe = (im[k] + im[m]) / 2;
      double oddIm = (re[m] - re[k]) / 2;
      double c = cos[k];
      double s = -sin[k];
      double x = oddRe * c - oddIm * s;
      double y = oddRe * s + oddIm * c;
      re[k] = evenRe + x;
      im[k] = evenIm + y;
      re[m] = evenRe - x;
      im[m] = y - evenIm;
    }
  }
}
