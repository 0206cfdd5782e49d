package loadwalk.wave.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loadwalk.numeric.LinearFit;
import loadwalk.numeric.Statistics;
import loadwalk.text.Sentence;
import loadwalk.wave.spectrum.BlockSpectrum;
import loadwalk.wave.spectrum.HarmonicBands;
import loadwalk.wave.spectrum.Peaks;
import loadwalk.wave.spectrum.Window;

/**
 * Analyses a long capture block by block under a window, in memory that does not grow with its
 * length. Blocks are grouped by level; the reading is that of the level that lasted longest.
 */
final class SteadyAnalysis {
  private static final double LEAST_PERIODS = 24;
  private static final double LEAST_SECONDS = 0.25;
  private static final double LEVEL_STEP = 0.01;

  /** Neighbouring blocks of one level differ by less than this part. */
  private static final double STILL = 0.005;

  private static final int MOST_GROUPS = 40;
  private static final int OVERLAPPED_BLOCKS = 32;

  private final double rate;
  private final double coarseHertz;
  private final BlockSpectrum spectrum;
  private final double[] buffer;
  private final Rails rails;
  private final Map<Integer, LevelGroup> groups = new TreeMap<>();
  private LevelGroup before;
  private LevelGroup current;
  private LevelGroup loudest;
  private int settled;
  private int filled;
  private long bufferStart;
  private int blocks;

  SteadyAnalysis(double rate, double coarseHertz, Rails rails) {
    this.rate = rate;
    this.coarseHertz = coarseHertz;
    this.rails = rails;
    spectrum = new BlockSpectrum((int) blockFrames(rate, coarseHertz), Window.SEVEN_TERMS);
    buffer = new double[spectrum.frames()];
  }

  /** Returns how many frames a block has. */
  static double blockFrames(double rate, double hertz) {
    double frames = Math.max(LEAST_PERIODS * rate / hertz, LEAST_SECONDS * rate);
    return Math.ceil(Math.max(frames, 1024));
  }

  /** Takes the next samples. */
  void accept(double[] samples, int count) {
    int taken = 0;
    while (taken < count) {
      int part = Math.min(count - taken, buffer.length - filled);
      System.arraycopy(samples, taken, buffer, filled, part);
      taken += part;
      filled += part;
      if (filled == buffer.length) {
        block();
        // Overlap makes the most of a short capture; a long one has enough blocks without it.
        int hop = blocks < OVERLAPPED_BLOCKS ? buffer.length / 4 : buffer.length;
        System.arraycopy(buffer, hop, buffer, 0, buffer.length - hop);
        filled -= hop;
        bufferStart += hop;
        blocks++;
      }
    }
  }

  private void block() {
    spectrum.take(buffer, 0);
    double[] power = new double[spectrum.bins()];
    for (int k = 0; k < power.length; k++) {
      power[k] = spectrum.power(k);
    }
    int peak = peakNear(power, coarseHertz / rate / spectrum.binWidth());
    double bins = Peaks.interpolate(power, peak);
    HarmonicBands bands = new HarmonicBands(power, bins, spectrum.lobe());
    double meanSquare = bands.all();
    double harmonics = 0;
    for (double h : bands.harmonics(1)) {
      harmonics += h;
    }
    double seconds = (bufferStart + (buffer.length - 1) / 2.0) / rate;
    double phase = spectrum.phaseInMiddle(peak);
    double thd = Math.sqrt(harmonics / bands.fundamental());
    double hertz = bins * spectrum.binWidth() * rate;
    LevelGroup single = new LevelGroup(power);
    single.blocks.add(
        new LevelGroup.Block(seconds, phase, hertz, meanSquare, spectrum.mean(), thd));
    addSamples(single, phase, hertz);
    rails.watch(buffer, 0, buffer.length);
    settle(single);
  }

  /**
   * Adds the previous block to its level if both its neighbours have that level too: in a block
   * with a start, a fade or an end, the change of level looks like distortion.
   */
  private void settle(LevelGroup next) {
    if (before != null && current != null) {
      boolean still = before.isNear(current, STILL) && current.isNear(next, STILL);
      if (still) {
        groupOf(current.blocks.get(0).meanSquare()).add(current);
        settled++;
      }
    }
    before = current;
    current = next;
    boolean louder = loudest == null || !loudest.isLouderThan(next);
    loudest = louder ? next : loudest;
  }

  private void addSamples(LevelGroup group, double phase, double hertz) {
    for (double sample : buffer) {
      group.least = Math.min(group.least, sample);
      group.greatest = Math.max(group.greatest, sample);
    }
    double turnsPerSample = hertz / rate;
    int from = buffer.length * 3 / 8;
    double middle = (buffer.length - 1) / 2.0;
    double turns = phase / (2 * Math.PI) + 0.25 - (middle - from) * turnsPerSample;
    group.cycle.add(buffer, from, buffer.length * 5 / 8, turns, turnsPerSample);
  }

  private LevelGroup groupOf(double meanSquare) {
    int level = (int) Math.floor(0.5 * Math.log(Math.max(meanSquare, 1e-30)) / LEVEL_STEP);
    if (!groups.containsKey(level) && groups.size() >= MOST_GROUPS) {
      groups.entrySet().stream()
          .min(Comparator.comparingInt(e -> e.getValue().blocks.size()))
          .map(Map.Entry::getKey)
          .ifPresent(groups::remove);
    }
    return groups.computeIfAbsent(level, key -> new LevelGroup(new double[spectrum.bins()]));
  }

  private static int peakNear(double[] power, double bins) {
    int best = (int) Math.round(bins);
    int reach = (int) Math.ceil(0.02 * bins) + 2;
    for (int k = Math.max(2, best - reach); k <= Math.min(power.length - 2, best + reach); k++) {
      best = power[k] > power[best] ? k : best;
    }
    return best;
  }

  /** Returns the reading of the level that lasted longest. */
  MeasuredWave finish() {
    LevelGroup longest = settled == 0 ? loudest : longest();
    int count = longest.blocks.size();
    // Blocks that overlap by three quarters share samples: about every second one is independent.
    double independent = Math.max(1, count > OVERLAPPED_BLOCKS ? count - 16 : (count + 1) / 2.0);
    double[] power = longest.power.clone();
    for (int k = 0; k < power.length; k++) {
      power[k] /= count;
    }
    double[] frequency = frequency(longest.blocks, independent);
    double bins = frequency[0] / rate / spectrum.binWidth();
    HarmonicBands bands = new HarmonicBands(power, bins, spectrum.lobe());
    double fundamental = bands.fundamental();
    double[] squares = longest.blocks.stream().mapToDouble(LevelGroup.Block::meanSquare).toArray();
    double[] means = longest.blocks.stream().mapToDouble(LevelGroup.Block::mean).toArray();
    double[] thds = longest.blocks.stream().mapToDouble(LevelGroup.Block::thd).toArray();
    return new MeasuredWave(
        frequency[0],
        frequency[1],
        bands.all(),
        scatter(squares, independent),
        Statistics.mean(means),
        scatter(means, independent),
        fundamental,
        bands.harmonics(independent),
        bands.all() - fundamental,
        scatter(thds, independent),
        longest.least,
        longest.greatest,
        longest.cycle,
        rails.verdict(),
        Sentence.of(
            "power spectrum under a seven-term window, {} blocks of {}", count, buffer.length),
        settled > 0 && !moves(count),
        notes(count));
  }

  private boolean moves(int used) {
    return used < 0.9 * (blocks - 2);
  }

  private List<String> notes(int used) {
    List<String> notes = new ArrayList<>();
    if (settled == 0) {
      notes.add("The level never holds steady. The reading is its loudest moment only.");
    } else if (moves(used)) {
      notes.add(
          Sentence.of(
              "The level moves. The reading is the level that lasted longest, {} of {} blocks.",
              used,
              blocks));
    }
    return notes;
  }

  private LevelGroup longest() {
    int best = 0;
    int most = -1;
    for (int level : groups.keySet()) {
      int size = 0;
      for (int near = level - 1; near <= level + 1; near++) {
        size += groups.containsKey(near) ? groups.get(near).blocks.size() : 0;
      }
      // Of two that last equally long, the louder one counts; levels come in rising order.
      if (size >= most) {
        most = size;
        best = level;
      }
    }
    LevelGroup sum = new LevelGroup(new double[spectrum.bins()]);
    for (int near = best - 1; near <= best + 1; near++) {
      if (groups.containsKey(near)) {
        sum.add(groups.get(near));
      }
    }
    sum.blocks.sort(Comparator.comparingDouble(LevelGroup.Block::seconds));
    return sum;
  }

  private static double scatter(double[] values, double independent) {
    return values.length < 2 ? 0 : Statistics.standardDeviation(values) / Math.sqrt(independent);
  }

  /**
   * Returns the frequency and its standard uncertainty from the advance of phase over the blocks.
   */
  private static double[] frequency(List<LevelGroup.Block> blocks, double independent) {
    double mean = Statistics.mean(blocks.stream().mapToDouble(LevelGroup.Block::hertz).toArray());
    if (blocks.size() < 3) {
      return new double[] {mean, 0.01 * mean / LEAST_PERIODS};
    }
    double[] seconds = new double[blocks.size()];
    double[] turns = new double[blocks.size()];
    for (int i = 0; i < turns.length; i++) {
      seconds[i] = blocks.get(i).seconds();
      double ahead = blocks.get(i).phase() / (2 * Math.PI) - mean * seconds[i];
      turns[i] = i == 0 ? ahead : turns[i - 1] + Math.IEEEremainder(ahead - turns[i - 1], 1);
    }
    LinearFit line = LinearFit.line(seconds, turns);
    double u = line.slopeU() * Math.sqrt(turns.length / independent);
    return new double[] {mean + line.slope(), u};
  }
}
