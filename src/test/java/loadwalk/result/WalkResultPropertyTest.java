package loadwalk.result;

import static loadwalk.result.Readings.bench;
import static loadwalk.result.Readings.load;
import static loadwalk.result.Readings.loaded;
import static loadwalk.result.Readings.meter;
import static loadwalk.result.Readings.named;
import static loadwalk.result.Readings.walk;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Quantity;
import org.junit.jupiter.api.Test;

class WalkResultPropertyTest {
  private static final long SEED = 40;
  private static final int WALKS = 2000;
  private static final double[] LOADS = {8, 4, 2, 1, 0.5};
  private static final double[] ODD = {0, 1e-9, 1e-200, 0.01, 1, 50, 1e12, -1, -1e-3, -1e12};

  @Test
  void anyReadings_giveFiniteResultsWithUncertainty() {
    SplittableRandom random = new SplittableRandom(SEED);
    int powers = 0;
    int fits = 0;
    for (int i = 0; i < WALKS; i++) {
      String seed = "seed " + SEED + ", walk " + i;
      WalkResult result = walk(anyBench(random), anySteps(random));
      for (StepResult step : result.steps()) {
        quantities(step).forEach(q -> assertTrue(q.u() >= 0 && Double.isFinite(q.u()), seed));
        double budget = 0;
        for (BudgetLine line : step.budget()) {
          budget = Math.hypot(budget, line.contribution());
        }
        double u = step.totalWatts().map(Quantity::u).orElse(0.0);
        assertEquals(u, budget, 1e-9 * Math.max(1e-12, u), seed);
        powers += step.watts().isPresent() ? 1 : 0;
      }
      fits += result.outputFit().isPresent() ? 1 : 0;
      assertTrue(result.published().size() <= result.steps().size(), seed);
    }
    assertTrue(powers > WALKS && fits > WALKS / 20, powers + " powers, " + fits + " fits");
  }

  @Test
  void gainAndLoad_neverWidenARecheck() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 500; i++) {
      double volts = 1 + 40 * random.nextDouble();
      double digits = 1 + 4 * random.nextDouble();
      MeasuredStep first = step(Mode.BRIDGED, 0.5, volts);
      MeasuredStep again = Readings.rechecking(named(first, "again"), first.stepId());
      double fine = limit(digits, 0, 0, first, again);
      // Only the second-order part of the volts' own uncertainty may follow the gain.
      double coarse = limit(digits, 2, 10, first, again);
      double u = Math.hypot(volts * 0.02, digits * 0.01) / Math.sqrt(3);
      double second = 2 * Math.sqrt(2) * Math.sqrt(2) * u * u / 0.5;
      assertTrue(coarse >= fine, "seed " + SEED + ", run " + i);
      // It is normal, so that k is nearer to 2 than the 1.92 or more of the digits alone.
      double most = Math.hypot(2 / 1.92 * fine, second);
      assertTrue(coarse <= most * (1 + 1e-9), "seed " + SEED + ", run " + i);
    }
  }

  @Test
  void measuredPower_isSpreadAsItsUncertaintySays() {
    // A meter with a fixed gain error and random digits reads the same true volts many times; the
    // interval value ± U must hold the truth about as often as two rectangular parts do.
    SplittableRandom random = new SplittableRandom(SEED);
    Bench bench = bench(List.of(meter(ReadingId.OUTPUT_VOLTS, 0.5, 5, 0.02)), List.of(load(4, 1)));
    double volts = 20;
    int runs = 4000;
    int held = 0;
    for (int i = 0; i < runs; i++) {
      double ohms = 4 * (1 + 0.01 * symmetric(random)) + 0.02 * random.nextDouble();
      double read = volts * (1 + 0.005 * symmetric(random)) + 0.1 * symmetric(random);
      MeasuredStep step =
          loaded(
              Mode.BRIDGED,
              4,
              Criterion.THD_LIMIT,
              new TakenReading(ReadingId.OUTPUT_VOLTS, read, 0.001));
      Quantity watts = Readings.step(bench, step).watts().orElseThrow();
      held += Math.abs(watts.value() - volts * volts / ohms) <= watts.expanded() ? 1 : 0;
    }
    // 95.45 % ± 4·√(p(1 − p)/4000) = 1.3 %.
    double share = (double) held / runs;
    assertTrue(share > 0.941 && share < 0.968, "seed " + SEED + ": " + share);
  }

  @Test
  void order_ofIndependentSteps_changesNothingButOrder() {
    MeasuredStep one = step(Mode.STEREO, 4, 20);
    MeasuredStep two = step(Mode.STEREO, 2, 18);
    WalkResult forth = walk(Readings.usual(), one, two);
    WalkResult back = walk(Readings.usual(), two, one);
    assertEquals(forth.step("stereo-4"), back.step("stereo-4"));
    assertEquals(
        forth.outputFit().orElseThrow().openVolts().value(),
        back.outputFit().orElseThrow().openVolts().value(),
        1e-9);
  }

  private static double limit(
      double digits, double percent, double tolerance, MeasuredStep first, MeasuredStep again) {
    Bench bench =
        bench(
            List.of(meter(ReadingId.OUTPUT_VOLTS, percent, digits, 0.01)),
            List.of(load(0.5, tolerance)));
    return walk(bench, first, again).rechecks().get(0).limitWatts();
  }

  private static MeasuredStep step(Mode mode, double ohms, double volts) {
    return loaded(
        mode, ohms, Criterion.THD_LIMIT, new TakenReading(ReadingId.OUTPUT_VOLTS, volts, 0.001));
  }

  private static double symmetric(SplittableRandom random) {
    return 2 * random.nextDouble() - 1;
  }

  private static Bench anyBench(SplittableRandom random) {
    List<Meter> meters = new ArrayList<>();
    for (ReadingId id : ReadingId.values()) {
      if (random.nextBoolean()) {
        meters.add(meter(id, random.nextInt(3), random.nextInt(4), random.nextInt(2) * 0.01));
      }
    }
    List<LoadResistor> loads = new ArrayList<>();
    for (double ohms : LOADS) {
      if (random.nextInt(3) == 0) {
        loads.add(load(ohms, random.nextInt(6)));
      }
    }
    return bench(meters, loads);
  }

  private static MeasuredStep[] anySteps(SplittableRandom random) {
    List<MeasuredStep> steps = new ArrayList<>();
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      Mode mode = Mode.values()[random.nextInt(2)];
      Criterion criterion = Criterion.values()[random.nextInt(3)];
      List<TakenReading> readings = new ArrayList<>();
      for (ReadingId id : ReadingId.values()) {
        if (random.nextInt(3) > 0) {
          double value =
              random.nextInt(4) == 0 ? ODD[random.nextInt(ODD.length)] : 60 * random.nextDouble();
          readings.add(new TakenReading(id, value, random.nextInt(2) * 0.1));
        }
      }
      double ohms = LOADS[random.nextInt(LOADS.length)];
      MeasuredStep step = Readings.loaded("step-" + i, mode, ohms, criterion, readings);
      if (random.nextInt(3) == 0) {
        step =
            Readings.withPairs(
                step,
                List.of(
                    new LimitPair(1 + 20 * random.nextDouble(), 2 * random.nextDouble() + 0.01),
                    new LimitPair(1 + 20 * random.nextDouble(), 2 * random.nextDouble() + 0.01)));
      }
      steps.add(i > 0 && random.nextInt(3) == 0 ? Readings.rechecking(step, "step-0") : step);
    }
    return steps.toArray(MeasuredStep[]::new);
  }

  private static List<Quantity> quantities(StepResult step) {
    return Stream.of(
            step.outputVolts(),
            step.watts(),
            step.otherWatts(),
            step.totalWatts(),
            step.inputWatts(),
            step.efficiency(),
            step.heatWatts(),
            step.loadOhms(),
            step.leadDropVolts(),
            step.leadWatts())
        .flatMap(Optional::stream)
        .toList();
  }
}
