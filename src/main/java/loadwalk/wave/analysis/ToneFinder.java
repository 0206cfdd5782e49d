package loadwalk.wave.analysis;

import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.wave.CaptureException;
import loadwalk.wave.file.AudioSource;
import loadwalk.wave.spectrum.Peaks;

/** Reads the first stretch of a source that is not silent, and finds its tone. */
final class ToneFinder {
  /** The samples looked at to find the tone. */
  private static final int LONGEST = 1 << 18;

  /** A stretch that is usually long enough to find the tone. */
  private static final int ENOUGH = 1 << 15;

  /** The fewest periods that such a stretch must hold. */
  private static final double ENOUGH_PERIODS = 20;

  private static final int BLOCK = 1 << 14;

  /** A stretch is silent below this mean square, -100 dB of full scale. */
  private static final double SILENCE = 1e-10;

  private final AudioSource source;
  private final int channel;
  private final double[][] block;
  private final double[] samples = new double[LONGEST];
  private int count;
  private boolean ended;
  private long skipped;
  private double hertz;

  private ToneFinder(AudioSource source, int channel) {
    this.source = source;
    this.channel = channel;
    block = new double[source.channels()][BLOCK];
  }

  /** Takes each further stretch of samples. */
  interface Sink {
    void take(double[] samples, int count);
  }

  /**
   * Reads until the source is not silent.
   *
   * @param channel counted from 1
   * @throws CaptureException if no tone is there, in a sentence
   */
  static ToneFinder of(AudioSource source, int channel) throws IOException, CaptureException {
    if (channel < 1 || channel > source.channels()) {
      throw new CaptureException(
          Sentence.of("There is no channel {}: the capture has {}.", channel, source.channels()));
    }
    ToneFinder head = new ToneFinder(source, channel - 1);
    head.fill();
    while (!head.ended && head.meanSquare() <= SILENCE) {
      head.skipped += head.count;
      head.fill();
    }
    head.requireSignal();
    head.hertz =
        head.tone()
            .orElseThrow(
                () -> new CaptureException("No tone stands out of the noise in the capture."));
    return head;
  }

  /**
   * Finds the tone in the last part of the head, or in all of it if that part holds too few
   * periods.
   */
  private Optional<Double> tone() {
    double rate = source.samplesPerSecond();
    int part = Math.min(count, ENOUGH);
    double[] end = Arrays.copyOfRange(samples, count - part, count);
    Optional<Double> quick = Peaks.strongestHertz(end, part, rate);
    boolean enough = quick.isPresent() && quick.get() * part / rate >= ENOUGH_PERIODS;
    return enough || part == count ? quick : Peaks.strongestHertz(samples, count, rate);
  }

  double[] samples() {
    return samples;
  }

  int count() {
    return count;
  }

  /** Tells whether the source ended within the head. */
  boolean ended() {
    return ended;
  }

  /** Returns the frequency of the strongest line. */
  double hertz() {
    return hertz;
  }

  double skippedSeconds() {
    return skipped / source.samplesPerSecond();
  }

  /** Passes on the head and everything after it. */
  void pour(Sink sink) throws IOException, CaptureException {
    sink.take(samples, count);
    int read = ended ? -1 : source.read(block);
    while (read >= 0) {
      sink.take(block[channel], read);
      read = source.read(block);
    }
  }

  private void fill() throws IOException, CaptureException {
    count = 0;
    while (count + BLOCK <= LONGEST) {
      int read = source.read(block);
      if (read < 0) {
        ended = true;
        return;
      }
      System.arraycopy(block[channel], 0, samples, count, read);
      count += read;
    }
  }

  private void requireSignal() throws CaptureException {
    if (count + skipped == 0) {
      throw new CaptureException("The capture holds no samples.");
    }
    if (count + skipped < 16) {
      throw new CaptureException(
          Sentence.of("The capture is only {} samples long: too short to judge a wave.", count));
    }
    if (meanSquare() <= SILENCE) {
      boolean constant = count > 0 && Math.abs(samples[0]) > 1e-4;
      throw new CaptureException(
          constant
              ? "The capture holds DC only, no wave."
              : "The capture is silent on this channel.");
    }
  }

  private double meanSquare() {
    double mean = 0;
    for (int i = 0; i < count; i++) {
      mean += samples[i] / count;
    }
    double squares = 0;
    for (int i = 0; i < count; i++) {
      squares += (samples[i] - mean) * (samples[i] - mean) / count;
    }
    return squares;
  }
}
