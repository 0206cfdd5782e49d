package loadwalk.wave.analysis;

import java.util.ArrayList;
import java.util.List;

/** Sums what the blocks of one level show. */
final class LevelGroup {
  /**
   * What one block shows beyond its spectrum.
   *
   * @param seconds the time of its middle
   * @param phase of the fundamental there, as a cosine
   * @param hertz the frequency its own spectrum gives
   */
  record Block(
      double seconds, double phase, double hertz, double meanSquare, double mean, double thd) {}

  final double[] power;
  final List<Block> blocks = new ArrayList<>();
  final Cycle cycle = new Cycle();
  double least = Double.POSITIVE_INFINITY;
  double greatest = Double.NEGATIVE_INFINITY;

  /** Begins with a spectrum, which it goes on to change. */
  LevelGroup(double[] power) {
    this.power = power;
  }

  /** Tells whether the first blocks of both have the same rms within a part. */
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
