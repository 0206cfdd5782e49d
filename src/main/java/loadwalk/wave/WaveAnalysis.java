package loadwalk.wave;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Judges a captured tone: level, distortion, clipping, frequency. */
public final class WaveAnalysis {
  /** The samples looked at to find the tone; a capture that ends before is analysed at once. */
  private static final int HEAD = 1 << 18;

  private static final int BLOCK = 1 << 14;

  /** Below this mean square, -100 dB of full scale, a stretch is silent. */
  private static final double SILENCE = 1e-10;

  private static final double FEW_PERIODS = 40;
  private static final double LEAST_BLOCKS = 2.5;

  private final AudioSource source;
  private final int channel;
  private final double[][] block;
  private long frames;
  private boolean ended;

  private WaveAnalysis(AudioSource source, int channel) {
    this.source = source;
    this.channel = channel;
    block = new double[source.channels()][BLOCK];
  }

  /**
   * Reads a source to its end and judges one channel.
   *
   * @param channel counted from 1
   * @throws CaptureException if there is nothing that can be judged, in a sentence
   */
  public static WaveReading of(AudioSource source, int channel, Calibration calibration)
      throws IOException, CaptureException {
    if (channel < 1 || channel > source.channels()) {
      throw new CaptureException(
          "There is no channel " + channel + ": the capture has " + source.channels() + ".");
    }
    return new WaveAnalysis(source, channel - 1).measured().reading(calibration);
  }

  private Measured measured() throws IOException, CaptureException {
    double[] head = new double[HEAD];
    int filled;
    double meanSquare;
    long skipped = 0;
    while (true) {
      filled = fill(head);
      meanSquare = meanSquare(head, filled);
      if (ended || meanSquare > SILENCE) {
        break;
      }
      skipped += filled;
    }
    requireSignal(head, filled, meanSquare);
    double rate = source.samplesPerSecond();
    Optional<Double> coarse = Peaks.strongestHertz(head, filled, rate);
    double hertz =
        coarse.orElseThrow(
            () -> new CaptureException("No tone stands out of the noise in the capture."));
    Rails rails = new Rails(source.step());
    boolean few = filled * hertz / rate < FEW_PERIODS;
    boolean fewBlocks = filled < LEAST_BLOCKS * SteadyAnalysis.blockFrames(rate, hertz);
    Measured measured =
        ended && (few || fewBlocks)
            ? ShortAnalysis.of(Arrays.copyOf(head, filled), rate, hertz, rails)
            : steady(head, filled, hertz, rails);
    if (skipped > 0) {
      measured
          .notes()
          .add(String.format(Locale.ROOT, "The first %.1f s are silent.", skipped / rate));
    }
    return measured;
  }

  private Measured steady(double[] head, int filled, double hertz, Rails rails)
      throws IOException, CaptureException {
    SteadyAnalysis analysis = new SteadyAnalysis(source.samplesPerSecond(), hertz, rails);
    analysis.accept(head, filled);
    int count = ended ? -1 : source.read(block);
    while (count >= 0) {
      analysis.accept(block[channel], count);
      frames += count;
      count = source.read(block);
    }
    return analysis.finish();
  }

  private int fill(double[] head) throws IOException, CaptureException {
    int filled = 0;
    while (filled + BLOCK <= head.length) {
      int count = source.read(block);
      if (count < 0) {
        ended = true;
        break;
      }
      System.arraycopy(block[channel], 0, head, filled, count);
      filled += count;
      frames += count;
    }
    return filled;
  }

  private void requireSignal(double[] head, int filled, double meanSquare) throws CaptureException {
    if (frames == 0) {
      throw new CaptureException("The capture holds no samples.");
    }
    if (filled < 16) {
      throw new CaptureException(
          "The capture is only " + filled + " samples long: too short to judge a wave.");
    }
    if (meanSquare <= SILENCE) {
      boolean constant = Math.abs(head[0]) > 1e-4;
      throw new CaptureException(
          constant
              ? "The capture holds DC only: no wave."
              : "The capture is silent on this channel.");
    }
  }

  private static double meanSquare(double[] head, int filled) {
    double mean = 0;
    for (int i = 0; i < filled; i++) {
      mean += head[i] / filled;
    }
    double squares = 0;
    for (int i = 0; i < filled; i++) {
      squares += (head[i] - mean) * (head[i] - mean) / filled;
    }
    return squares;
  }
}
