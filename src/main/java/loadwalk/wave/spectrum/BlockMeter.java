package loadwalk.wave.spectrum;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loadwalk.wave.LevelPoint;

/** Measures level and distortion of a tone of known frequency in short overlapping blocks. */
public final class BlockMeter {
  private static final double PERIODS = 8;
  private static final double LEAST_SECONDS = 0.05;

  private final double rate;
  private final double hertz;
  private final BlockSpectrum spectrum;
  private final double[] buffer;
  private final int hop;
  private int filled;
  private long bufferStart;

  /** Receives each point with the samples it was computed from. */
  public interface Sink {
    void take(LevelPoint point, double[] block);
  }

  /** Makes a meter from the frames per second and the frequency of the tone in hertz. */
  public BlockMeter(double rate, double hertz) {
    this.rate = rate;
    this.hertz = hertz;
    int frames = (int) frames(rate, hertz);
    spectrum = new BlockSpectrum(frames, Window.NUTTALL);
    buffer = new double[frames];
    hop = Math.max(1, frames / 4);
  }

  /** Returns how many frames a block has. */
  public static double frames(double rate, double hertz) {
    double periods = Math.max(PERIODS, Math.ceil(LEAST_SECONDS * hertz));
    return Math.max(64, Math.rint(periods * rate / hertz));
  }

  /** Takes the first samples of an array, and passes on the point of each full block. */
  public void accept(double[] samples, int count, Sink sink) {
    int taken = 0;
    while (taken < count) {
      int part = Math.min(count - taken, buffer.length - filled);
      System.arraycopy(samples, taken, buffer, filled, part);
      taken += part;
      filled += part;
      if (filled == buffer.length) {
        sink.take(measure(), buffer);
        System.arraycopy(buffer, hop, buffer, 0, buffer.length - hop);
        filled -= hop;
        bufferStart += hop;
      }
    }
  }

  private LevelPoint measure() {
    spectrum.take(buffer, 0);
    double[] power = new double[spectrum.bins()];
    for (int k = 0; k < power.length; k++) {
      power[k] = spectrum.power(k);
    }
    double bins = hertz / rate / spectrum.binWidth();
    HarmonicBands bands = new HarmonicBands(power, bins, spectrum.lobe());
    double[] harmonics = bands.harmonics(1);
    double fundamental = bands.fundamental();
    List<Double> percent = new ArrayList<>();
    for (double h : harmonics) {
      percent.add(100 * Math.sqrt(h / fundamental));
    }
    double seconds = (bufferStart + (buffer.length - 1) / 2.0) / rate;
    double thd = Math.sqrt(Arrays.stream(harmonics).sum() / fundamental);
    return new LevelPoint(seconds, Math.sqrt(bands.all()), thd, percent);
  }
}
