package loadwalk.wave.analysis;

import java.io.IOException;
import java.util.Arrays;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.WaveReading;
import loadwalk.wave.file.AudioSource;

/** Judges a captured tone: level, distortion, clipping, frequency. */
public final class WaveAnalysis {
  private static final double FEW_PERIODS = 40;
  private static final double LEAST_BLOCKS = 2.5;

  /** A tone of 20 Hz at a million samples a second takes half of it. */
  private static final double MOST_FRAMES = 1 << 21;

  private WaveAnalysis() {}

  /**
   * Reads a source to its end and judges one channel.
   *
   * @param channel counted from 1
   * @throws CaptureException if there is nothing to judge, in a sentence
   */
  public static WaveReading of(AudioSource source, int channel, Calibration calibration)
      throws IOException, CaptureException {
    ToneFinder head = ToneFinder.of(source, channel);
    double rate = source.samplesPerSecond();
    Rails rails = new Rails(source.step());
    boolean few = head.count() * head.hertz() / rate < FEW_PERIODS;
    double block = SteadyAnalysis.blockFrames(rate, head.hertz());
    boolean fewBlocks = head.count() < LEAST_BLOCKS * block;
    if (head.ended() && (few || fewBlocks)) {
      double[] samples = Arrays.copyOf(head.samples(), head.count());
      return ShortAnalysis.of(samples, rate, head.hertz(), rails).reading(calibration);
    }
    requireBearable(block, rate, head.hertz());
    SteadyAnalysis analysis = new SteadyAnalysis(rate, head.hertz(), rails);
    head.pour(analysis::accept);
    MeasuredWave measured = analysis.finish();
    if (head.skippedSeconds() > 0) {
      String seconds = Printer.UTF8.reading(head.skippedSeconds(), Unit.SECOND, 0.1);
      measured.notes().add(Sentence.of("The first {} are silent.", seconds));
    }
    return measured.reading(calibration);
  }

  /**
   * Checks that blocks of so many samples can be held: what a file states of its rate decides it.
   *
   * @throws CaptureException if they cannot, in a sentence
   */
  static void requireBearable(double block, double rate, double hertz) throws CaptureException {
    if (!(block <= MOST_FRAMES)) {
      throw new CaptureException(
          Sentence.of(
              "The capture has {} samples per second: too many to judge a tone of {}. Export"
                  + " fewer.",
              Math.round(rate),
              Printer.UTF8.value(hertz, Unit.HERTZ, 3)));
    }
  }
}
