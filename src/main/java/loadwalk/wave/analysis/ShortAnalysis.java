package loadwalk.wave.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loadwalk.numeric.HarmonicFit;
import loadwalk.text.Sentence;
import loadwalk.wave.CaptureException;

/** Analyses a capture of a few periods by a least-squares fit of the fundamental and harmonics. */
final class ShortAnalysis {
  private static final int MOST_HARMONICS = 40;
  private static final int REPORTED = 10;
  private static final double LEAST_PERIODS = 1.9;

  private ShortAnalysis() {}

  static MeasuredWave of(double[] samples, double rate, double coarseHertz, Rails rails)
      throws CaptureException {
    double periods = coarseHertz * samples.length / rate;
    if (periods < LEAST_PERIODS) {
      throw new CaptureException(
          "The capture holds less than two periods of its tone. Capture more.");
    }
    int harmonics = harmonics(samples.length, rate, coarseHertz);
    HarmonicFit fit;
    try {
      double start = HarmonicFit.near(coarseHertz, 1, samples, rate).hertz();
      fit = HarmonicFit.near(start, harmonics, samples, rate);
    } catch (IllegalArgumentException e) {
      throw new CaptureException(
          Sentence.of("No steady tone fits the capture: {}.", e.getMessage()));
    }
    rails.watch(samples, 0, samples.length);
    return measured(samples, rate, fit, harmonics, rails);
  }

  private static int harmonics(int length, double rate, double hertz) {
    int below = (int) Math.ceil(0.98 * rate / 2 / hertz) - 1;
    int most = length <= 20_000 ? MOST_HARMONICS : REPORTED;
    return Math.max(1, Math.min(Math.min(below, most), length / 6));
  }

  private static MeasuredWave measured(
      double[] samples, double rate, HarmonicFit fit, int harmonics, Rails rails) {
    double noise = fit.residualRms() * fit.residualRms();
    double first = fit.amplitude(1) * fit.amplitude(1) / 2;
    double[] powers = new double[Math.max(0, Math.min(harmonics, REPORTED) - 1)];
    double residual = noise;
    double thdVariance = 0;
    double thdSquare = 0;
    for (int n = 2; n <= harmonics; n++) {
      double u = fit.amplitudeU(n);
      // The square of a noisy amplitude is too large by its variance, twice for two components.
      double square = Math.max(0, fit.amplitude(n) * fit.amplitude(n) - 2 * u * u);
      residual += square / 2;
      if (n <= REPORTED) {
        powers[n - 2] = square / 2;
        thdSquare += square / 2 / first;
        thdVariance += Math.pow(Math.max(Math.sqrt(square), u) * u / (2 * first), 2);
      }
    }
    double thdU = Math.sqrt(thdVariance) / Math.max(Math.sqrt(thdSquare), 1e-9);
    double meanSquareU = 2 * fit.amplitude(1) * fit.amplitudeU(1) / 2;
    return new MeasuredWave(
        fit.hertz(),
        fit.hertzU(),
        first + residual,
        meanSquareU,
        fit.offset(),
        fit.offsetU(),
        first,
        powers,
        residual,
        Math.min(thdU, 1),
        Arrays.stream(samples).min().orElseThrow(),
        Arrays.stream(samples).max().orElseThrow(),
        cycle(samples, rate, fit),
        rails.verdict(),
        Sentence.of(
            "least-squares fit of the fundamental and {} harmonics (IEEE Std 1057 sine fit,"
                + " extended)",
            harmonics - 1),
        true,
        new ArrayList<>(List.of()));
  }

  private static Cycle cycle(double[] samples, double rate, HarmonicFit fit) {
    double turnsPerSample = fit.hertz() / rate;
    // cos(x + φ) rises through zero at x + φ = -π/2.
    double turnsInMiddle = fit.phaseInMiddle(1) / (2 * Math.PI) + 0.25;
    Cycle cycle = new Cycle();
    double first = turnsInMiddle - (samples.length - 1) / 2.0 * turnsPerSample;
    cycle.add(samples, 0, samples.length, first, turnsPerSample);
    return cycle;
  }
}
