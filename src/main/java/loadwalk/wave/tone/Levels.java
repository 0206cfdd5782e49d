package loadwalk.wave.tone;

/** Computes gains and fades. */
final class Levels {
  private Levels() {}

  /** Returns the factor for a level of 0 dB or below. */
  static double gain(double db) {
    if (!(db <= 0) || db < -200) {
      throw new IllegalArgumentException("level must be from -200 to 0 dB, got " + db);
    }
    return Math.pow(10, db / 20);
  }

  static void requireFade(double seconds, long frames, int samplesPerSecond) {
    if (!(seconds >= 0) || seconds * samplesPerSecond > frames / 2.0) {
      throw new IllegalArgumentException(
          "fade must be from 0 s to half of the tone or step, got " + seconds + " s");
    }
  }

  /** Returns a raised-cosine rise from 0 to 1 over a width in frames. */
  static double rise(long frame, double width) {
    return frame >= width || width == 0 ? 1 : 0.5 - 0.5 * Math.cos(Math.PI * frame / width);
  }

  /** Returns the factor of the rise at the start and the fall at the end. */
  static double fade(long frame, long frames, double width) {
    return Math.min(rise(frame, width), rise(frames - 1 - frame, width));
  }
}
