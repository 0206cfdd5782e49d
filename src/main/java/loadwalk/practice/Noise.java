package loadwalk.practice;

import java.util.Random;

/**
 * Draws numbers that depend on a seed and on what they are for, and on nothing else, so that the
 * same question always gets the same answer.
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

  /** Returns a generator of its own for a purpose. */
  static Random generator(long seed, Object... what) {
    return new Random(mix(seed, what));
  }

  /** Stirs seed and purpose; names and numbers only, whose hash codes never change. */
  private static long mix(long seed, Object... what) {
    long mixed = seed * 0x9E3779B97F4A7C15L;
    for (Object part : what) {
      mixed = Long.rotateLeft(mixed ^ part.toString().hashCode(), 29) * 0xBF58476D1CE4E5B9L;
    }
    return mixed ^ (mixed >>> 31);
  }
}
