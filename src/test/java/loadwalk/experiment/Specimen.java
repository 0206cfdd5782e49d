package loadwalk.experiment;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;

/**
 * One member of a population: what is printed, what is described, and what is really there.
 *
 * @param name population and number
 * @param amplifier what the maker printed
 * @param bench the bench as described
 * @param device the truth
 * @param meters the meters' own errors
 * @param seed what the member's scatter is drawn from
 */
record Specimen(
    String name, Amplifier amplifier, Bench bench, Device device, Meters meters, long seed) {

  /**
   * The meters' errors, standard deviations as fractions where scatter.
   *
   * @param outputGain the factor of the AC voltmeter
   * @param supplyGain the factor of the DC voltmeter
   * @param ampsGain the factor of the clamp
   * @param outputScatter scatter of output volts
   * @param supplyScatter scatter of supply volts
   * @param ampsScatter scatter of supply amps
   * @param ampsResolution the clamp's digit, amperes
   * @param showsWatts whether the operator types watts instead of volts
   */
  record Meters(
      double outputGain,
      double supplyGain,
      double ampsGain,
      double outputScatter,
      double supplyScatter,
      double ampsScatter,
      double ampsResolution,
      boolean showsWatts) {}

  /** Returns the heatsink temperature at a step: it rises as the walk goes on, unevenly. */
  double celsius(int step) {
    RandomGenerator random = random("celsius", 0);
    double start = 40 + 10 * random.nextDouble();
    double rise = 30 * random.nextDouble();
    int last = Ladder.STEPS.size() - 1;
    double uneven = 3 * random("uneven", step).nextGaussian();
    return start + rise * Math.min(step, last) / last + uneven;
  }

  /** Returns a generator for one purpose at one step. */
  RandomGenerator random(String purpose, int step) {
    return new SplittableRandom(31 * (31 * seed + purpose.hashCode()) + 7919L * step);
  }
}
