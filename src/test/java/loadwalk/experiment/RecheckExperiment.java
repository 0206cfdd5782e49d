package loadwalk.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.result.RecheckAgreement;
import loadwalk.result.Repeatability;
import loadwalk.result.WalkResult;

/**
 * Counts how often the recheck of an amplifier that has not changed agrees with the first run: each
 * run is set to the limit by hand with the same scatter.
 */
final class RecheckExperiment {
  private static final TrueBench BENCH =
      new TrueBench(TrueBench.USUAL, TrueBench.stock(4, 1, OptionalDouble.of(50)), 4, Mode.BRIDGED);

  private final SplittableRandom random;

  RecheckExperiment(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /**
   * Lets a bench learn, then counts its next rechecks.
   *
   * @param scatter the true scatter of one setting, a fraction of volts
   * @param pairs how many pairs each bench knows
   * @param benches how many benches
   * @param rechecks how many rechecks of each are counted
   */
  Tally run(double scatter, int pairs, int benches, int rechecks) {
    Tally tally = new Tally();
    for (int i = 0; i < benches; i++) {
      List<Repeatability.Pair> known = new ArrayList<>();
      while (known.size() < pairs) {
        known.addAll(recheck(scatter, Repeatability.DEFAULT).pairs());
      }
      addAll(tally, scatter, Repeatability.pooled(known), rechecks);
    }
    return tally;
  }

  /** Counts rechecks of benches that know nothing, whose scatters lie evenly from low to high. */
  Tally runUnknown(double low, double high, int rechecks) {
    Tally tally = new Tally();
    for (int i = 0; i < rechecks; i++) {
      double scatter = low + (high - low) * random.nextDouble();
      addAll(tally, scatter, Repeatability.pooled(List.of()), 1);
    }
    return tally;
  }

  private void addAll(Tally tally, double scatter, Repeatability repeatability, int rechecks) {
    for (int i = 0; i < rechecks; i++) {
      RecheckAgreement agreement = recheck(scatter, repeatability).rechecks().get(0);
      tally.add(agreement.outcome() == RecheckAgreement.Outcome.AGREES);
    }
  }

  private WalkResult recheck(double scatter, Repeatability repeatability) {
    TrueBench.Day day = BENCH.new Day(random);
    double limit = 16 * (1 + 0.1 * TrueBench.within(random));
    return BENCH.walk(
        List.of(
            BENCH.step(
                "run",
                Optional.empty(),
                List.of(day.read(ReadingId.OUTPUT_VOLTS, day.set(limit, scatter), 0.01))),
            BENCH.step(
                "again",
                Optional.of("run"),
                List.of(day.read(ReadingId.OUTPUT_VOLTS, day.set(limit, scatter), 0.01)))),
        repeatability);
  }
}
