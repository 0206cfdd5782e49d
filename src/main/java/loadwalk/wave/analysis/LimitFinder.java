package loadwalk.wave.analysis;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loadwalk.numeric.DesignFit;
import loadwalk.numeric.LogInterpolation;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.Harmonic;
import loadwalk.wave.LevelPoint;
import loadwalk.wave.file.AudioSource;
import loadwalk.wave.spectrum.BlockMeter;

/**
 * Finds the rms at which THD reaches a limit in the capture of a rising or stepped tone, by
 * interpolating log THD against level.
 */
public final class LimitFinder {
  /** The most a level may move over a few blocks, as a fraction, and still count as one step. */
  private static final double STILL = 0.002;

  /** The curve is fitted to points within this factor of the limit. */
  private static final double REACH = 2;

  private static final double SILENT_RMS = 1e-5;
  private static final double LEAST_THD = 1e-9;
  private static final int LEAST_FOR_CURVE = 6;
  private static final int SUSTAINED = 3;
  private static final String CAPTURE = "scatter of the capture";
  private static final String CALIBRATION = "calibration";

  private final double limit;
  private final Calibration calibration;
  private final List<LevelPoint> points = new ArrayList<>();
  private final List<Portrait> portraits = new ArrayList<>();

  private LimitFinder(double limitPercent, Calibration calibration) {
    limit = limitPercent / 100;
    this.calibration = calibration;
  }

  /** One period kept where the distortion passed the limit. */
  private record Portrait(double seconds, double[] cycle, List<Double> harmonics) {}

  /**
   * Reads a source to its end.
   *
   * @param channel counted from 1
   * @param limitPercent the THD limit for harmonics 2 to 10, above 0
   * @throws CaptureException if there is no tone, in a sentence
   */
  public static LimitFinding find(
      AudioSource source, int channel, double limitPercent, Calibration calibration)
      throws IOException, CaptureException {
    if (!(limitPercent > 0 && limitPercent < 100)) {
      throw new CaptureException("The THD limit must lie between 0 and 100 %.");
    }
    ToneFinder head = ToneFinder.of(source, channel);
    double rate = source.samplesPerSecond();
    LimitFinder finder = new LimitFinder(limitPercent, calibration);
    double frames = BlockMeter.frames(rate, head.hertz());
    if (head.ended() && head.count() < frames) {
      return finder.found(head.hertz(), head.skippedSeconds());
    }
    WaveAnalysis.requireBearable(frames, rate, head.hertz());
    BlockMeter meter = new BlockMeter(rate, head.hertz());
    head.pour(
        (samples, count) ->
            meter.accept(
                samples, count, (point, block) -> finder.take(point, block, head.hertz() / rate)));
    return finder.found(head.hertz(), head.skippedSeconds());
  }

  private void take(LevelPoint point, double[] block, double turnsPerSample) {
    if (!(point.rms() > SILENT_RMS) || !Double.isFinite(point.thd())) {
      return;
    }
    boolean passes =
        !points.isEmpty() && points.get(points.size() - 1).thd() < limit && point.thd() >= limit;
    if (passes && portraits.size() < 100) {
      Cycle cycle = new Cycle();
      cycle.add(block, 0, block.length, Cycle.turnsToZero(block, turnsPerSample), turnsPerSample);
      portraits.add(new Portrait(point.seconds(), cycle.points(), point.harmonics()));
    }
    // Without the harmonics, so that hours of capture take little memory.
    points.add(new LevelPoint(point.seconds(), point.rms(), point.thd(), List.of()));
  }

  private LimitFinding found(double hertz, double skippedSeconds) {
    List<LevelPoint> rising = rising();
    List<LevelPoint> steps = steps(rising);
    Optional<Integer> above = firstAbove(steps.isEmpty() ? rising : steps, !steps.isEmpty());
    List<LevelPoint> row = steps.isEmpty() ? rising : steps;
    if (above.isEmpty() || above.get() == 0 || row.get(above.get() - 1).thd() >= limit) {
      return new LimitFinding.NotFound(missing(row, above));
    }
    int index = above.get();
    double seconds = row.get(index).seconds() + skippedSeconds;
    Optional<double[]> curve = steps.isEmpty() ? alongCurve(row, index) : Optional.empty();
    double[] rms = curve.orElseGet(() -> betweenTwo(row.get(index - 1), row.get(index)));
    String method =
        curve.isPresent()
            ? "curve of level against log THD through the blocks near the limit"
            : "interpolation of log THD between two levels";
    return report(rms, seconds, row.get(index).seconds(), hertz, method);
  }

  private LimitFinding report(
      double[] rms, double seconds, double blockSeconds, double hertz, String method) {
    double scale = calibration.voltsPerUnit();
    Portrait portrait = null;
    for (Portrait p : portraits) {
      boolean nearer =
          portrait == null
              || Math.abs(p.seconds - blockSeconds) < Math.abs(portrait.seconds - blockSeconds);
      portrait = nearer ? p : portrait;
    }
    List<Harmonic> harmonics = new ArrayList<>();
    List<Double> cycle = List.of();
    if (portrait != null) {
      for (int i = 0; i < portrait.harmonics.size(); i++) {
        harmonics.add(new Harmonic(i + 2, (i + 2) * hertz, portrait.harmonics.get(i)));
      }
      cycle = Arrays.stream(portrait.cycle).map(y -> y * scale).boxed().toList();
    }
    Quantity output =
        Quantity.of(rms[0] * scale, Unit.VOLT, CAPTURE, rms[1] * scale)
            .withPart(CALIBRATION, rms[0] * scale * calibration.relativeU());
    return new LimitFinding.Found(output, 100 * limit, seconds, method, cycle, harmonics);
  }

  private String missing(List<LevelPoint> row, Optional<Integer> above) {
    if (row.size() < 2) {
      return "The capture is too short to show a rise.";
    }
    if (above.isPresent()) {
      return Sentence.of("THD is above {} from the start. Begin at a lower level.", percent(limit));
    }
    LevelPoint last = row.get(row.size() - 1);
    return Sentence.of(
        "THD does not reach {}. It is {} at the highest level: drive the amplifier harder.",
        percent(limit),
        percent(last.thd()));
  }

  private static String percent(double part) {
    return Printer.UTF8.value(100 * part, Unit.PERCENT, 3);
  }

  /** Returns the points up to the highest level. */
  private List<LevelPoint> rising() {
    int top = 0;
    for (int i = 0; i < points.size(); i++) {
      top = points.get(i).rms() > points.get(top).rms() ? i : top;
    }
    // A clipped amplifier's level stays constant at the top, where noise alone decides the highest.
    int end = top;
    while (end + 1 < points.size() && points.get(end + 1).rms() > 0.999 * points.get(top).rms()) {
      end++;
    }
    return points.subList(0, points.isEmpty() ? 0 : end + 1);
  }

  /** Returns each step of a stepped tone as one point; none if the level rises smoothly. */
  private static List<LevelPoint> steps(List<LevelPoint> rising) {
    List<List<LevelPoint>> runs = new ArrayList<>();
    int still = 0;
    boolean open = false;
    for (int i = 2; i + 2 < rising.size(); i++) {
      double move = Math.log(rising.get(i + 2).rms() / rising.get(i - 2).rms());
      if (Math.abs(move) > STILL) {
        open = false;
        continue;
      }
      still++;
      if (!open) {
        runs.add(new ArrayList<>());
        open = true;
      }
      runs.get(runs.size() - 1).add(rising.get(i));
    }
    runs.removeIf(run -> run.size() < SUSTAINED);
    boolean stepped = still > rising.size() / 3 && runs.size() >= 2;
    return stepped ? runs.stream().map(LimitFinder::average).toList() : List.of();
  }

  private static LevelPoint average(List<LevelPoint> run) {
    double rms = run.stream().mapToDouble(LevelPoint::rms).average().orElseThrow();
    double thd = run.stream().mapToDouble(LevelPoint::thd).average().orElseThrow();
    return new LevelPoint(run.get(0).seconds(), rms, thd, run.get(0).harmonics());
  }

  /**
   * Returns the first point after the least distortion from which THD stays at or above the limit.
   */
  private Optional<Integer> firstAbove(List<LevelPoint> row, boolean single) {
    int least = 0;
    for (int i = 0; i < row.size(); i++) {
      least = row.get(i).thd() < row.get(least).thd() ? i : least;
    }
    int sustained = single ? 1 : SUSTAINED;
    for (int i = least; i < row.size(); i++) {
      boolean stays = row.get(i).thd() >= limit;
      for (int k = i; k < Math.min(row.size(), i + sustained); k++) {
        stays &= row.get(k).thd() >= limit;
      }
      if (stays) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** Fits the level as a parabola of log THD about the limit; value and standard uncertainty. */
  private Optional<double[]> alongCurve(List<LevelPoint> row, int above) {
    int from = above;
    while (from > 0 && row.get(from - 1).thd() > limit / REACH) {
      from--;
    }
    int to = above;
    while (to < row.size() && row.get(to).thd() < limit * REACH) {
      to++;
    }
    if (above - from < 2 || to - above < 2 || to - from < LEAST_FOR_CURVE) {
      return Optional.empty();
    }
    double[] logs = new double[to - from];
    double[] levels = new double[to - from];
    for (int i = from; i < to; i++) {
      logs[i - from] = Math.log(row.get(i).thd() / limit);
      levels[i - from] = row.get(i).rms();
    }
    DesignFit fit = DesignFit.polynomial(logs, levels, 2);
    // Blocks overlap by three quarters, so four of them are worth one.
    return Optional.of(new double[] {fit.coefficient(0), 2 * fit.u(0)});
  }

  private double[] betweenTwo(LevelPoint low, LevelPoint high) {
    if (!(high.rms() > low.rms())) {
      return new double[] {low.rms(), Math.abs(low.rms() - high.rms()) / Math.sqrt(3)};
    }
    LogInterpolation at =
        LogInterpolation.at(
            limit,
            List.of(
                new LogInterpolation.Point(low.rms(), 0, Math.max(low.thd(), LEAST_THD), 0),
                new LogInterpolation.Point(high.rms(), 0, high.thd(), 0)));
    // The pair lies on both sides of the limit at rising levels, so it cannot be refused.
    LogInterpolation.Found found = at.found().orElseThrow();
    return new double[] {found.volts(), found.u()};
  }
}
