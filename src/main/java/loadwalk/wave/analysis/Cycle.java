package loadwalk.wave.analysis;

/** Averages a wave over its periods, by the phase of the fundamental. */
final class Cycle {
  static final int POINTS = 256;

  private final double[] sums = new double[POINTS];
  private final long[] counts = new long[POINTS];

  /**
   * Adds samples.
   *
   * @param turnsAtFrom periods since a rising zero crossing, at the first sample
   * @param turnsPerSample periods a sample
   */
  void add(double[] samples, int from, int to, double turnsAtFrom, double turnsPerSample) {
    for (int i = from; i < to; i++) {
      double turns = turnsAtFrom + (i - from) * turnsPerSample;
      int point = (int) ((turns - Math.floor(turns)) * POINTS) & (POINTS - 1);
      sums[point] += samples[i];
      counts[point]++;
    }
  }

  /** Returns the periods since a rising zero crossing of the fundamental, at the first sample. */
  static double turnsToZero(double[] block, double turnsPerSample) {
    double re = 0;
    double im = 0;
    for (int i = 0; i < block.length; i++) {
      double angle = 2 * Math.PI * turnsPerSample * i;
      re += block[i] * Math.cos(angle);
      im += block[i] * Math.sin(angle);
    }
    return Math.atan2(re, im) / (2 * Math.PI);
  }

  /** Adds the samples of another average. */
  void add(Cycle other) {
    for (int i = 0; i < POINTS; i++) {
      sums[i] += other.sums[i];
      counts[i] += other.counts[i];
    }
  }

  /** Returns how many points of the period have samples. */
  int met() {
    int met = 0;
    for (long count : counts) {
      met += count > 0 ? 1 : 0;
    }
    return met;
  }

  /**
   * Returns the averaged period; points without samples lie on straight lines between those with.
   */
  double[] points() {
    double[] points = new double[POINTS];
    if (met() == 0) {
      return points;
    }
    for (int i = 0; i < POINTS; i++) {
      int before = 0;
      while (counts[Math.floorMod(i - before, POINTS)] == 0) {
        before++;
      }
      int after = 0;
      while (counts[(i + after) % POINTS] == 0) {
        after++;
      }
      double low = mean(Math.floorMod(i - before, POINTS));
      double high = mean((i + after) % POINTS);
      points[i] = before == 0 ? low : low + (high - low) * before / (before + after);
    }
    return points;
  }

  private double mean(int point) {
    return sums[point] / counts[point];
  }
}
