package loadwalk.result;

import static loadwalk.result.Readings.bridged;
import static loadwalk.result.Readings.loaded;
import static loadwalk.result.Readings.named;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static loadwalk.result.Readings.walk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;

/** What pairs of runs teach of the scatter of setting the limit. */
class RepeatabilityTest {
  @Test
  void fewerThanTenPairs_leaveTheDefault() {
    assertEquals(new Repeatability(0.004, 0), Repeatability.DEFAULT);
    assertEquals(Repeatability.DEFAULT, Repeatability.pooled(List.of()));
    assertEquals(Repeatability.DEFAULT, Repeatability.pooled(pairs(9, 0.002, 0)));
    assertEquals(10, Repeatability.pooled(pairs(10, 0.002, 0)).pairs());
  }

  /** Differences of ±d have a standard deviation of d, and each of the two runs d/√2. */
  @Test
  void tenPairs_givePooledScatterOfOneRun() {
    Repeatability learned = Repeatability.pooled(pairs(12, 0.002, 0));
    assertEquals(0.002 / Math.sqrt(2), learned.relativeVolts(), 1e-12);
    assertEquals(12, learned.pairs());
  }

  /** What the digits do stands in the uncertainty already: 0.2² = 0.16² + 0.12². */
  @Test
  void meterPart_isTakenOff_andNeverLeavesLessThanNothing() {
    assertEquals(
        0.0016 / Math.sqrt(2),
        Repeatability.pooled(pairs(10, 0.002, 0.0012)).relativeVolts(),
        1e-12);
    assertEquals(new Repeatability(0, 10), Repeatability.pooled(pairs(10, 0.001, 0.002)));
  }

  @Test
  void pairThatDiffersByMoreThanScatter_isNoScatter() {
    List<Repeatability.Pair> pairs = new ArrayList<>(pairs(10, 0.002, 0));
    pairs.add(new Repeatability.Pair(0.031, 0));
    pairs.add(new Repeatability.Pair(-0.2, 0));
    assertEquals(Repeatability.pooled(pairs(10, 0.002, 0)), Repeatability.pooled(pairs));
    pairs.add(new Repeatability.Pair(0.0299, 0));
    assertEquals(11, Repeatability.pooled(pairs).pairs());
  }

  @Test
  void runsAlike_makeAPair_freeOfWhatTheyShare() {
    List<Repeatability.Pair> pairs = pairs(bridged(1, volts(20)), bridged(1, volts(20.1)));
    assertEquals(1, pairs.size());
    assertEquals(0.1 / 20, pairs.get(0).relativeVolts(), 1e-12);
    // Digits of ±0.03 V on each, rectangular; of the gain of 0.5 % only its share of 0.1 V.
    double digits = Math.sqrt(2) * 0.03 / Math.sqrt(3) / 20;
    double gain = 0.005 / Math.sqrt(3) * 0.1 / 20;
    assertEquals(Math.hypot(digits, gain), pairs.get(0).meterU(), 1e-12);
  }

  /** Runs that scatter by 1 make pairs with a variance of 2 that are independent. */
  @Test
  void threeRuns_makeTwoPairsThatScatterAlike() {
    long seed = 20260801;
    Random random = new Random(seed);
    double[] squares = new double[2];
    double product = 0;
    int draws = 4000;
    for (int i = 0; i < draws; i++) {
      List<Repeatability.Pair> pairs = pairs(drawn(random), drawn(random), drawn(random));
      for (int k = 0; k < 2; k++) {
        squares[k] += Math.pow(pairs.get(k).relativeVolts() / 1e-3, 2) / draws;
      }
      product += pairs.get(0).relativeVolts() * pairs.get(1).relativeVolts() / 1e-6 / draws;
    }
    // A variance of 2 from 4000 draws has a standard error of 2·√(2/4000) = 0.045.
    assertEquals(2, squares[0], 4 * 0.045, "seed " + seed);
    assertEquals(2, squares[1], 4 * 0.045, "seed " + seed);
    assertEquals(0, product, 4 * 2 / Math.sqrt(draws), "seed " + seed);
  }

  @Test
  void runsThatAreNotAlike_makeNoPair() {
    MeasuredStep run = bridged(1, volts(20));
    assertEquals(List.of(), pairs(run, bridged(2, volts(20))));
    assertEquals(List.of(), pairs(run, Readings.stereo(1, volts(20))));
    assertEquals(
        List.of(), pairs(run, loaded(Mode.BRIDGED, 1, Criterion.CLIPPING_ONSET, volts(20))));
    MeasuredStep below = loaded(Mode.BRIDGED, 1, Criterion.BELOW_LIMIT, volts(20));
    assertEquals(List.of(), pairs(below, below));
    MeasuredStep off = bridged(1, volts(20), Readings.of(ReadingId.SUPPLY_VOLTS, 12));
    assertEquals(List.of(), pairs(run, off));
    assertEquals(1, pairs(off, off).size());
    LimitPair[] near = {new LimitPair(19.9, 0.9), new LimitPair(20.1, 1.1)};
    MeasuredStep interpolated = Readings.withPairs(run, List.of(near));
    assertEquals(List.of(), pairs(run, interpolated));
  }

  @Test
  void nonsense_isRefused() {
    for (double wrong : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> new Repeatability(wrong, 0));
      assertThrows(IllegalArgumentException.class, () -> new Repeatability.Pair(0, wrong));
    }
    assertThrows(IllegalArgumentException.class, () -> new Repeatability(0.004, -1));
    assertThrows(IllegalArgumentException.class, () -> new Repeatability.Pair(Double.NaN, 0));
  }

  private static List<Repeatability.Pair> pairs(int count, double apart, double meterU) {
    List<Repeatability.Pair> pairs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pairs.add(new Repeatability.Pair(i % 2 == 0 ? apart : -apart, meterU));
    }
    return pairs;
  }

  private static MeasuredStep drawn(Random random) {
    return bridged(1, volts(20 * (1 + gauss(random))));
  }

  private static double gauss(Random random) {
    return 1e-3 * random.nextGaussian();
  }

  private static List<Repeatability.Pair> pairs(MeasuredStep... runs) {
    MeasuredStep[] steps = new MeasuredStep[runs.length];
    for (int i = 0; i < runs.length; i++) {
      steps[i] = named(runs[i], "run " + i);
    }
    return walk(usual(), steps).pairs();
  }
}
