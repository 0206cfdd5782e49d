package loadwalk.wave;

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

  LevelGroup(int bins) {
    power = new double[bins];
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
