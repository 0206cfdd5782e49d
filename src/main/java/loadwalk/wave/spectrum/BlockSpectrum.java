package loadwalk.wave.spectrum;

/**
 * Computes the power spectrum of a windowed block.
 *
 * <p>Powers are mean squares: summed over all bins they give the mean square of the block about its
 * mean, each sample weighted by the square of the window, whatever the frequencies are.
 */
public final class BlockSpectrum {
  private final Window shape;
  private final double[] window;
  private final double windowSum;
  private final double windowSquares;
  private final Fft fft;
  private final double[] row;
  private double mean;

  /**
   * Makes the tables.
   *
   * @param frames the length of a block, which is padded with zeros to a power of two
   */
  public BlockSpectrum(int frames, Window shape) {
    this.shape = shape;
    fft = new Fft(Fft.sizeFor(frames));
    row = new double[fft.size()];
    window = new double[frames];
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < frames; i++) {
      window[i] = shape.at((i + 0.5) / frames);
      sum += window[i];
      squares += window[i] * window[i];
    }
    windowSum = sum;
    windowSquares = squares;
  }

  /** Returns how many samples a block has. */
  public int frames() {
    return window.length;
  }

  /** Returns how many bins there are. */
  public int bins() {
    return fft.size() / 2 + 1;
  }

  /** Returns half the width of the window's main lobe, in bins of the padded block. */
  public double lobe() {
    return shape.lobe() * fft.size() / window.length;
  }

  /** Returns the width of a bin as a part of the sample rate. */
  public double binWidth() {
    return 1.0 / fft.size();
  }

  /** Transforms the frames that start at the offset. */
  public void take(double[] samples, int offset) {
    double sum = 0;
    for (int i = 0; i < window.length; i++) {
      sum += window[i] * samples[offset + i];
    }
    mean = sum / windowSum;
    for (int i = 0; i < window.length; i++) {
      row[i] = window[i] * (samples[offset + i] - mean);
    }
    fft.transform(row);
  }

  /** Returns the windowed mean of the last block. */
  public double mean() {
    return mean;
  }

  /** Returns the mean square in a bin of the last block. */
  public double power(int bin) {
    int sides = bin == 0 || bin == fft.size() / 2 ? 1 : 2;
    return sides * fft.squared(bin) / (fft.size() * windowSquares);
  }

  /** Returns the phase of the cosine at the bin, at the middle of the last block. */
  public double phaseInMiddle(int bin) {
    double angle = Math.atan2(fft.im(bin), fft.re(bin));
    return angle + 2 * Math.PI * bin * ((window.length - 1) / 2.0) / fft.size();
  }
}
