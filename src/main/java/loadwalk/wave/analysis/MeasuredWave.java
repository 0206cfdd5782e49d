package loadwalk.wave.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.wave.Calibration;
import loadwalk.wave.Clipping;
import loadwalk.wave.Harmonic;
import loadwalk.wave.WaveReading;

/**
 * The result of either analysis, in the units of the samples.
 *
 * @param meanSquare the mean square about the mean
 * @param meanSquareU its standard uncertainty
 * @param fundamental the mean square of the fundamental
 * @param harmonics the mean squares of harmonics 2, 3, … below half the sample rate, up to 10
 * @param residual the mean square of everything but mean and fundamental
 * @param steady whether one level fills the capture
 * @param thdU the standard uncertainty of the THD as a ratio
 */
record MeasuredWave(
    double hertz,
    double hertzU,
    double meanSquare,
    double meanSquareU,
    double mean,
    double meanU,
    double fundamental,
    double[] harmonics,
    double residual,
    double thdU,
    double least,
    double greatest,
    Cycle cycle,
    Clipping.Overdriven capture,
    String method,
    boolean steady,
    List<String> notes) {
  private static final String CAPTURE = "scatter of the capture";
  private static final String CALIBRATION = "calibration";

  /** Returns the reading in volts. */
  WaveReading reading(Calibration calibration) {
    double scale = calibration.voltsPerUnit();
    double rms = Math.sqrt(meanSquare);
    double harmonicSum = Arrays.stream(harmonics).sum();
    double thd = Math.sqrt(harmonicSum / fundamental);
    double thdNoise = Math.sqrt(residual / fundamental);
    double peak = Math.max(greatest - mean, mean - least);
    List<Harmonic> list = new ArrayList<>();
    for (int i = 0; i < harmonics.length; i++) {
      int n = i + 2;
      list.add(new Harmonic(n, n * hertz, 100 * Math.sqrt(harmonics[i] / fundamental)));
    }
    CycleShape.Judged judged = CycleShape.judge(cycle, 100 * thd);
    return new WaveReading(
        Quantity.of(hertz, Unit.HERTZ, CAPTURE, hertzU),
        Quantity.of(scale * rms, Unit.VOLT, CAPTURE, scale * meanSquareU / (2 * rms))
            .withPart(CALIBRATION, scale * rms * calibration.relativeU()),
        scale * peak,
        peak / rms,
        list.isEmpty()
            ? Optional.empty()
            : Optional.of(Quantity.of(100 * thd, Unit.PERCENT, CAPTURE, 100 * thdU)),
        list,
        Quantity.of(100 * thdNoise, Unit.PERCENT, CAPTURE, 100 * thdU),
        scale * Math.sqrt(Math.max(0, residual - harmonicSum)),
        Quantity.of(scale * mean, Unit.VOLT, CAPTURE, scale * meanU)
            .withPart(CALIBRATION, scale * Math.abs(mean) * calibration.relativeU()),
        new Clipping(judged.top(), judged.bottom(), judged.topPart(), judged.bottomPart(), capture),
        judged.shape(),
        Arrays.stream(cycle.points()).map(y -> scale * y).boxed().toList(),
        method,
        calibration,
        steady,
        notes);
  }
}
