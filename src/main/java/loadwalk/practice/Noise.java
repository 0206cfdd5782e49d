package loadwalk.practice;

import java.util.Random;

/**
 * Draws random numbers that depend only on a seed and a purpose, so that the same question always
 * gets the same answer.
 */
final class Noise {
  private Noise() {}

  /** Returns a draw from the standard normal distribution. */
  static double normal(long seed, Object... what) {
    return new Random(mix(seed, what)).nextGaussian();
  }

  /** Returns a draw from the uniform distribution from -1 to 1. */
  static double signed(long seed, Object... what) {
    return 2 * new Random(mix(seed, what)).nextDouble() - 1;
  }

  /** Returns a separate generator for each purpose. */
  static Random generator(long seed, Object... what) {
    return new Random(mix(seed, what));
  }

  /**
   * Mixes seed and purpose; a purpose holds only names and numbers, whose hash codes never change.
   */
  private static long mix(long seed, Object... what) {
    long mixed = seed * 0x9E3779B97F4A7C15L;
    for (Object part : what) {
      mixed = Long.rotateLeft(mixed ^ part.toString().hashCode(), 29) * 0xBF58476D1CE4E5B9L;
    }
    return mixed ^ (mixed >>> 31);
  }
}
