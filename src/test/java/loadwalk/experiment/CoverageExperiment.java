package loadwalk.experiment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Quantity;
import loadwalk.result.Ratio;
import loadwalk.result.Repeatability;
import loadwalk.result.StepResult;
import loadwalk.result.TakenReading;
import loadwalk.result.WalkResult;

/**
 * Counts how often the truth lies within the range that a result states (JCGM 101:2008): true
 * values are drawn, readings made of them, and the results computed from the readings alone.
 */
final class CoverageExperiment {
  private static final OptionalDouble PPM_50 = OptionalDouble.of(50);
  private static final OptionalDouble PPM_100 = OptionalDouble.of(100);
  private static final double SCATTER = 0.004;

  /** What is drawn and read in one case. */
  private record Case(
      String name, TrueBench bench, double limitVolts, double typed, List<ReadingId> read) {}

  private final long seed;
  private final int draws;
  private final Map<String, Tally> tallies = new LinkedHashMap<>();

  CoverageExperiment(long seed, int draws) {
    this.seed = seed;
    this.draws = draws;
  }

  /** Returns how often the truth was covered, by case. */
  Map<String, Tally> run() {
    cases().forEach(this::totals);
    dampingFactor(Mode.BRIDGED);
    return tallies;
  }

  private static List<Case> cases() {
    ReadingId ohms = ReadingId.LOAD_OHMS;
    ReadingId otherOhms = ReadingId.OTHER_LOAD_OHMS;
    ReadingId other = ReadingId.OTHER_OUTPUT_VOLTS;
    Meter percentOnly = new Meter("analyzer", ReadingId.OUTPUT_VOLTS, 0.5, 0, 0, Optional.empty());
    List<Case> cases = new ArrayList<>();
    cases.add(new Case("plain, load measured", bridged(4, 1, PPM_50), 20, 0.01, List.of(ohms)));
    cases.add(new Case("load from stock at 1 %", bridged(4, 1, PPM_50), 20, 0.01, List.of()));
    cases.add(new Case("load from stock at 5 %", bridged(4, 5, PPM_50), 20, 0.01, List.of()));
    cases.add(new Case("lead before 0.5 ohm at 1 %", bridged(0.5, 1, PPM_50), 9, 0.01, List.of()));
    cases.add(
        new Case(
            "second load not measured, 5 %", stereo(5, PPM_50), 20, 0.01, List.of(ohms, other)));
    cases.add(
        new Case(
            "hot loads, 100 ppm/K, up to 150 K",
            stereo(1, PPM_100),
            Math.sqrt(200 * 4),
            0.01,
            List.of(ohms, otherOhms, other)));
    cases.add(
        new Case(
            "hot load from stock, 100 ppm/K",
            bridged(4, 1, PPM_100),
            Math.sqrt(290 * 4),
            0.01,
            List.of()));
    cases.add(
        new Case(
            "hot load, ppm/K not known",
            bridged(4, 1, OptionalDouble.empty()),
            Math.sqrt(290 * 4),
            0.01,
            List.of(ohms)));
    cases.add(
        new Case(
            "one of two channels read", stereo(1, PPM_50), 20, 0.01, List.of(ohms, otherOhms)));
    for (double typed : new double[] {1, 0.1, 0.01}) {
      cases.add(
          new Case(
              String.format(Locale.ROOT, "percent-only meter, typed to %s V", typed),
              new TrueBench(percentOnly, TrueBench.stock(4, 1, PPM_50), 4, Mode.BRIDGED),
              16.4,
              typed,
              List.of(ohms)));
    }
    return cases;
  }

  private static TrueBench bridged(double ohms, double tolerance, OptionalDouble ppm) {
    return new TrueBench(
        TrueBench.USUAL, TrueBench.stock(ohms, tolerance, ppm), ohms, Mode.BRIDGED);
  }

  private static TrueBench stereo(double tolerance, OptionalDouble ppm) {
    return new TrueBench(TrueBench.USUAL, TrueBench.stock(4, tolerance, ppm), 4, Mode.STEREO);
  }

  /**
   * Reads the total at the limit: the true one is what the channels give when set without error.
   */
  private void totals(Case now) {
    SplittableRandom random = new SplittableRandom(seed);
    Tally tally = new Tally();
    for (int i = 0; i < draws; i++) {
      TrueBench.Day day = now.bench.new Day(random);
      // Readings land anywhere between two digits.
      double limit = now.limitVolts * (1 + 0.05 * TrueBench.within(random));
      double set = day.set(limit, SCATTER) / limit;
      double truth = 0;
      List<TakenReading> readings = new ArrayList<>();
      for (int channel = 0; channel < now.bench.mode().loads(); channel++) {
        double unequal = channel == 0 ? 1 : 1 + 0.01 * random.nextGaussian();
        double volts = limit * unequal;
        double cold = day.coldOhms();
        truth += volts * volts / day.hotOhms(cold, volts * volts / cold);
        ReadingId id = channel == 0 ? ReadingId.OUTPUT_VOLTS : ReadingId.OTHER_OUTPUT_VOLTS;
        ReadingId load = channel == 0 ? ReadingId.LOAD_OHMS : ReadingId.OTHER_LOAD_OHMS;
        if (channel == 0 || now.read.contains(id)) {
          readings.add(day.read(id, volts * set, now.typed));
        }
        if (now.read.contains(load)) {
          readings.add(day.readOhms(load, cold));
        }
      }
      WalkResult result =
          now.bench.walk(
              List.of(now.bench.step("run", Optional.empty(), readings)), Repeatability.DEFAULT);
      Quantity total = result.step("run").flatMap(StepResult::totalWatts).orElseThrow();
      tally.add(Math.abs(total.value() - truth) <= total.expanded());
    }
    tallies.put(now.name, tally);
  }

  /** A source of 19.6 mΩ below 4 Ω: a damping factor of 204, read with digits of 0.01 V. */
  private void dampingFactor(Mode mode) {
    TrueBench bench = bridged(4, 1, PPM_50);
    SplittableRandom random = new SplittableRandom(seed);
    Tally tally = new Tally();
    for (int i = 0; i < draws; i++) {
      TrueBench.Day day = bench.new Day(random);
      double volts = 20 * (1 + 0.05 * TrueBench.within(random));
      double cold = day.coldOhms();
      double source = 4.0 / 204;
      double open = volts * (1 + source / day.hotOhms(cold, volts * volts / cold));
      WalkResult result =
          bench.walk(
              List.of(
                  bench.step(
                      "run",
                      Optional.empty(),
                      List.of(
                          day.read(ReadingId.OUTPUT_VOLTS, volts, 0.01),
                          day.read(ReadingId.OPEN_VOLTS, open, 0.01)))),
              Repeatability.DEFAULT);
      if (result.dampingFactor().isPresent()) {
        Ratio factor = result.dampingFactor().get();
        tally.add(factor.low() <= 204 && 204 <= factor.high().orElse(Double.POSITIVE_INFINITY));
      } else {
        Quantity ohms = result.sourceResistance().orElseThrow();
        tally.add(source <= Math.max(0, ohms.value()) + ohms.expanded());
      }
    }
    tallies.put("damping factor of 204", tally);
  }

  static String table(Map<String, Tally> tallies) {
    StringBuilder table = new StringBuilder();
    tallies.forEach(
        (name, tally) ->
            table.append(
                String.format(
                    Locale.ROOT, "%-40s %6.2f %%%n", name, 100.0 * tally.hits() / tally.tries())));
    return table.toString();
  }
}
