package loadwalk.wave.tone;

/**
 * A whole number of periods of a sine in a whole number of sample frames, so that the piece repeats
 * without a step in phase.
 *
 * @param samplesPerSecond the sample rate
 * @param count the whole periods, 1 or more
 * @param frames the frames they fill, more than two a period
 */
record Periods(int samplesPerSecond, long count, long frames) {
  private static final double EXACT = 1e-9;

  Periods {
    if (samplesPerSecond < 1 || count < 1 || frames <= 2 * count) {
      throw new IllegalArgumentException(
          count + " periods do not fit " + frames + " frames: too high for the sample rate");
    }
  }

  /**
   * Returns the number of periods nearest to the duration that fills whole frames; if there is none
   * nearby, the frequency shifts by at most half a frame over the whole piece.
   */
  static Periods near(double hertz, int samplesPerSecond, double seconds) {
    if (!(hertz > 0) || !(hertz < samplesPerSecond / 2.0)) {
      throw new IllegalArgumentException(
          "frequency must be above 0 and below half of "
              + samplesPerSecond
              + " samples per second, got "
              + hertz
              + " Hz");
    }
    if (!(seconds > 0) || seconds > 86_400) {
      throw new IllegalArgumentException(
          "duration must be above 0 and at most 86400 s, got " + seconds + " s");
    }
    double framesPerPeriod = samplesPerSecond / hertz;
    long wanted = Math.max(1, Math.round(seconds * hertz));
    long reach = Math.min(Math.max(1, wanted / 20), 2000);
    for (long away = 0; away <= reach; away++) {
      for (long count : new long[] {wanted - away, wanted + away}) {
        double frames = count * framesPerPeriod;
        if (count >= 1 && Math.abs(frames - Math.rint(frames)) <= EXACT * frames) {
          return new Periods(samplesPerSecond, count, Math.round(frames));
        }
      }
    }
    return new Periods(samplesPerSecond, wanted, Math.round(wanted * framesPerPeriod));
  }

  /** Returns the frequency that results from the whole periods. */
  double hertz() {
    return (double) count * samplesPerSecond / frames;
  }

  /** Returns the sine at a frame, its phase reduced in whole numbers so that it never drifts. */
  double sineAt(long frame) {
    long part = frame % frames * count % frames;
    return Math.sin(2 * Math.PI * part / frames);
  }
}
