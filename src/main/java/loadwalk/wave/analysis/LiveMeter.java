package loadwalk.wave.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.wave.Clipping;
import loadwalk.wave.file.AudioSource;
import loadwalk.wave.spectrum.BlockSpectrum;
import loadwalk.wave.spectrum.HarmonicBands;
import loadwalk.wave.spectrum.Peaks;
import loadwalk.wave.spectrum.Window;

/** Measures a live input: ten readings a second, each over the last ten periods or more. */
public final class LiveMeter {
  private static final int READINGS_A_SECOND = 10;
  private static final double PERIODS = 10;
  private static final double LEAST_SECONDS = 0.2;

  /** The fewest periods in a block; with fewer, the fundamental leaks into its harmonics. */
  private static final double LEAST_PERIODS = 7.5;

  private static final double SILENT_RMS = 1e-4;
  private static final int PICTURE_POINTS = 160;

  private final double rate;
  private final OptionalDouble step;
  private final BlockSpectrum spectrum;
  private final double[] row;
  private final int hop;
  private int fresh;
  private long heard;

  /**
   * Makes a meter with no samples yet.
   *
   * @param rate frames a second
   * @param hertz the expected tone, which sets the length of a block
   * @param step as {@link AudioSource#step()} says
   */
  public LiveMeter(double rate, double hertz, OptionalDouble step) {
    if (!(rate > 0) || !(hertz > 0)) {
      throw new IllegalArgumentException("rate and hertz must be above 0");
    }
    this.rate = rate;
    this.step = step;
    int frames = (int) Math.ceil(Math.max(PERIODS / hertz, LEAST_SECONDS) * rate);
    spectrum = new BlockSpectrum(Math.max(64, frames), Window.NUTTALL);
    row = new double[spectrum.frames()];
    hop = Math.max(1, (int) Math.round(rate / READINGS_A_SECOND));
  }

  /** Takes the next samples, and returns the newest reading if one is due. */
  public Optional<LiveReading> accept(double[] samples, int count) {
    Optional<LiveReading> newest = Optional.empty();
    int taken = 0;
    while (taken < count) {
      int part = Math.min(Math.min(count - taken, row.length), hop - fresh);
      System.arraycopy(row, part, row, 0, row.length - part);
      System.arraycopy(samples, taken, row, row.length - part, part);
      taken += part;
      fresh += part;
      heard += part;
      if (fresh == hop) {
        fresh = 0;
        newest = heard >= row.length ? Optional.of(read()) : newest;
      }
    }
    return newest;
  }

  private LiveReading read() {
    spectrum.take(row, 0);
    double[] power = new double[spectrum.bins()];
    int peak = 1;
    for (int k = 0; k < power.length; k++) {
      power[k] = spectrum.power(k);
      peak = k > 0 && power[k] > power[peak] ? k : peak;
    }
    double bins = Peaks.interpolate(power, peak);
    HarmonicBands bands = new HarmonicBands(power, bins, spectrum.lobe());
    double rms = Math.sqrt(bands.all());
    Rails rails = new Rails(step);
    rails.watch(row, 0, row.length);
    boolean overdriven = rails.verdict() == Clipping.Overdriven.YES;
    double turns = bins * spectrum.binWidth();
    boolean tone = rms > SILENT_RMS && bands.fundamental() > bands.all() / 2;
    if (!tone || turns * row.length < LEAST_PERIODS) {
      OptionalDouble hertz = tone ? OptionalDouble.of(turns * rate) : OptionalDouble.empty();
      return new LiveReading(
          rms, hertz, OptionalDouble.empty(), false, false, overdriven, picture(0, row.length));
    }
    double harmonics = Arrays.stream(bands.harmonics(1)).sum();
    double thd = 100 * Math.sqrt(harmonics / bands.fundamental());
    double start = Cycle.turnsToZero(row, turns);
    Cycle cycle = new Cycle();
    cycle.add(row, 0, row.length, start, turns);
    CycleShape.Judged shape = CycleShape.judge(cycle, thd);
    return new LiveReading(
        rms,
        OptionalDouble.of(turns * rate),
        OptionalDouble.of(thd),
        shape.top(),
        shape.bottom(),
        overdriven,
        picture((Math.ceil(start) - start) / turns, 2 / turns));
  }

  /** Returns evenly spaced points of a stretch of samples, interpolated linearly. */
  private List<Double> picture(double from, double length) {
    List<Double> points = new ArrayList<>(PICTURE_POINTS);
    for (int i = 0; i < PICTURE_POINTS; i++) {
      double at = Math.min(row.length - 1.0, from + length * i / (PICTURE_POINTS - 1));
      int left = Math.min((int) at, row.length - 2);
      points.add(row[left] + (at - left) * (row[left + 1] - row[left]));
    }
    return points;
  }
}
