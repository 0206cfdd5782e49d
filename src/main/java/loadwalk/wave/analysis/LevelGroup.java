package loadwalk.wave.analysis;

import java.util.ArrayList;
import java.util.List;

/** Sums the spectra of the blocks of one level. */
final class LevelGroup {
  /**
   * The findings for one block besides its spectrum.
   *
   * @param seconds the time of its middle
   * @param phase the phase of the fundamental there, as a cosine
   * @param hertz the frequency from the spectrum of this block
   */
  record Block(
      double seconds, double phase, double hertz, double meanSquare, double mean, double thd) {}

  final double[] power;
  final List<Block> blocks = new ArrayList<>();
  final Cycle cycle = new Cycle();
  double least = Double.POSITIVE_INFINITY;
  double greatest = Double.NEGATIVE_INFINITY;

  /** Starts with a spectrum, and adds to that same array. */
  LevelGroup(double[] power) {
    this.power = power;
  }

  /** Tells whether the first blocks of both groups have the same rms, within a fraction. */
  boolean isNear(LevelGroup other, double part) {
    double ratio = blocks.get(0).meanSquare() / other.blocks.get(0).meanSquare();
    return Math.abs(Math.log(ratio)) / 2 < part;
  }

  boolean isLouderThan(LevelGroup other) {
    return blocks.get(0).meanSquare() > other.blocks.get(0).meanSquare();
  }

  void add(LevelGroup other) {
    for (int k = 0; k < power.length; k++) {
      power[k] += other.power[k];
    }
    blocks.addAll(other.blocks);
    cycle.add(other.cycle);
    least = Math.min(least, other.least);
    greatest = Math.max(greatest, other.greatest);
  }
}
