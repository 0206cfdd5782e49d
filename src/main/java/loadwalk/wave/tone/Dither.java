package loadwalk.wave.tone;

import java.util.SplittableRandom;

/**
 * Makes dither evenly spread over nearly one step, so that rounding adds almost no harmonics, with
 * most of its power near half the sample rate, outside the audio band.
 *
 * <p>With a width of w steps the noise is (1 + w²)/12 squared steps, -95.5 dB under a full-scale
 * 16-bit sine, where triangular dither would raise it to -93.3 dB; the remaining harmonics of
 * rounding lie below -119 dB together (first Fourier term of the mean error, sin(πw)/(π²w) steps).
 */
final class Dither {
  private static final double WIDTH = 0.9;

  /** How far a value strays from the mirror image of the one before, in widths. */
  private static final double STRAY = 0.1;

  private final SplittableRandom random;
  private double last;

  Dither(long seed) {
    random = new SplittableRandom(seed);
    last = random.nextDouble() - 0.5;
  }

  /** Returns the next value in steps. */
  double next() {
    double next = -last + STRAY * (2 * random.nextDouble() - 1);
    last = next - Math.rint(next);
    return WIDTH * last;
  }
}
