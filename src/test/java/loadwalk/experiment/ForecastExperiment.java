package loadwalk.experiment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.Verdict;

/**
 * Takes a forecaster through full-walk's loads on a whole population and counts.
 *
 * <p>A step at which the supply gives way or a fuse opens is briefed and its brief counted, but it
 * yields no readings.
 *
 * <p>Every walk is taken once honestly, each entry judged as the program does: while others of its
 * step are still to come, then with the whole step. A doubted entry feeds no later forecast. Then
 * each slip is made once at a step drawn by seed, on what was honestly known before that step. One
 * that raises no doubt stays in the walk, which goes on honestly until a later entry is doubted.
 *
 * @param population who is drawn
 * @param seed the seed of the draw
 * @param count how many are drawn
 */
record ForecastExperiment(Population population, long seed, int count) {
  private static final Evidence.Conditions CONDITIONS = new Evidence.Conditions(40, 1, 13.8);

  /** Runs a forecaster over the population. */
  Results run(String name, Forecaster forecaster, Arrangement arrangement) {
    Results results = new Results(name, population.name(), arrangement);
    for (int number = 0; number < count; number++) {
      Specimen specimen = population.specimen(seed, number);
      new Walk(forecaster, number, new Entries(specimen, arrangement), results).take();
    }
    return results;
  }

  /** One amplifier's walk and its slips. */
  private static final class Walk {
    private final Forecaster forecaster;
    private final int number;
    private final Entries entries;
    private final Results results;
    private final List<Evidence> before = new ArrayList<>();
    private final List<Map<ReadingId, Double>> honest = new ArrayList<>();

    Walk(Forecaster forecaster, int number, Entries entries, Results results) {
      this.forecaster = forecaster;
      this.number = number;
      this.entries = entries;
      this.results = results;
    }

    void take() {
      List<Observation> known = new ArrayList<>();
      for (int step = 0; step < entries.arrangement().steps(); step++) {
        Specimen specimen = entries.specimen();
        Evidence evidence = new Evidence(specimen.amplifier(), specimen.bench(), CONDITIONS, known);
        before.add(evidence);
        Map<ReadingId, Double> typed = entries.canRun(step) ? entries.honest(step) : Map.of();
        honest.add(typed);
        known = new ArrayList<>(known);
        known.addAll(honestStep(evidence, step, typed));
      }
      for (Slip slip : Slip.values()) {
        if (SlipMaker.makes(slip)) {
          slipOnce(slip);
        }
      }
    }

    /** Counts one honest step and returns what later forecasts may rest on. */
    private List<Observation> honestStep(
        Evidence evidence, int step, Map<ReadingId, Double> typed) {
      Target target = Ladder.at(step);
      Forecast forecast = forecaster.forecast(evidence, target);
      String supply = supplyLimits(step) ? "supply limiting" : "supply holding";
      countBands(forecast, step, supply, typed);
      countVerdict(forecast, step);
      if (step >= Ladder.FIRST_LOADED) {
        results.run.add(!typed.isEmpty());
      }
      Set<ReadingId> out = new HashSet<>();
      Entries.asTyped(typed)
          .forEach(
              (id, soFar) -> {
                boolean whole = soFar.size() == typed.size();
                List<Doubt> doubts =
                    whole
                        ? forecaster.judge(evidence, target, soFar)
                        : forecaster.judgeSoFar(evidence, target, soFar);
                results.honestDoubted.add(!doubts.isEmpty());
                Results.in(results.honestBy, supply).add(!doubts.isEmpty());
                Results.in(results.honestBy, target.stepId()).add(!doubts.isEmpty());
                if (!doubts.isEmpty()) {
                  miss(step, "honest " + id.key(), "doubted as " + words(doubts));
                }
                doubts.forEach(doubt -> out.addAll(implicated(doubt, soFar)));
              });
      Map<ReadingId, Double> kept = new HashMap<>(typed);
      kept.keySet().removeAll(out);
      return kept.isEmpty() ? List.of() : List.of(new Observation(target, kept));
    }

    /** A wrong load makes every reading of the step false. */
    private static Set<ReadingId> implicated(Doubt doubt, Map<ReadingId, Double> typed) {
      boolean load = doubt.slip() == Slip.LOAD_DOUBLE || doubt.slip() == Slip.LOAD_HALF;
      return load ? typed.keySet() : Set.of(doubt.reading());
    }

    private void countBands(
        Forecast forecast, int step, String supply, Map<ReadingId, Double> typed) {
      Target target = Ladder.at(step);
      typed.forEach(
          (id, value) -> {
            if (forecast.band(id).isEmpty()) {
              results.unforetold.merge(id, 1, Integer::sum);
              return;
            }
            Band band = forecast.band(id).get();
            Results.in(results.halfWidths, id.key() + " " + target.stepId(), relative(band));
            if (!band.holds(value)) {
              String side = value > band.high() ? "above" : "below";
              miss(step, "band of " + id.key(), side);
            }
            results.inside.computeIfAbsent(id, i -> new Tally()).add(band.holds(value));
            Results.in(results.insideBy, id.key() + " " + target.stepId()).add(band.holds(value));
            Results.in(results.insideBy, id.key() + ", " + supply).add(band.holds(value));
          });
      if (target.mode() == Mode.BRIDGED && stereoEqualKnown(target)) {
        forecast
            .band(ReadingId.OUTPUT_VOLTS)
            .ifPresent(b -> results.bridgedHalfWidths.add(relative(b)));
      }
    }

    private static double relative(Band band) {
      return (band.high() - band.low()) / 2 / band.middle();
    }

    private void miss(int step, String what, String came) {
      results.misses.add(new Results.Miss(number, what + ", " + Ladder.at(step).stepId(), came));
    }

    private static String words(List<Doubt> doubts) {
      return doubts.stream()
          .map(
              doubt ->
                  doubt.slip().code()
                      + " of "
                      + doubt.reading().key()
                      + doubt.earlierStep().map(earlier -> " in " + earlier).orElse(""))
          .collect(Collectors.joining(" and "));
    }

    private boolean stereoEqualKnown(Target bridged) {
      for (int step = Ladder.FIRST_LOADED; step < honest.size(); step++) {
        Target target = Ladder.at(step);
        boolean equal = target.mode() == Mode.STEREO && target.ohms() == bridged.ohms() / 2;
        if (equal && !honest.get(step).isEmpty()) {
          return true;
        }
      }
      return false;
    }

    private void countVerdict(Forecast forecast, int step) {
      if (step < Ladder.FIRST_LOADED) {
        return;
      }
      boolean clear = forecast.verdict() == Verdict.CLEAR;
      results.clear.add(clear);
      if (asksTooMuch(step)) {
        results.clearThoughExceeding.add(clear);
        if (clear) {
          miss(step, "brief", "clear, though the step asks too much");
        }
      }
    }

    /** Returns the true current the amplifier would draw from supplies without a limit. */
    private double demandAmps(int step) {
      Target target = Ladder.at(step);
      Specimen specimen = entries.specimen();
      return specimen
          .device()
          .unlimited()
          .at(target.mode(), target.ohms(), specimen.celsius(step))
          .supplyAmps();
    }

    private boolean supplyLimits(int step) {
      boolean loaded = step >= Ladder.FIRST_LOADED;
      return loaded
          && entries.truth(step, Ladder.at(step).ohms()).supplyAmps() < 0.99 * demandAmps(step);
    }

    /** Tells whether the current the amplifier would draw exceeds usable supply or any fuse. */
    private boolean asksTooMuch(int step) {
      Specimen specimen = entries.specimen();
      double amps = demandAmps(step);
      Bench bench = specimen.bench();
      return DoubleStream.of(
              orEndless(bench.usableAmps()),
              orEndless(bench.fuseAmps()),
              orEndless(specimen.amplifier().fuseAmps()))
          .anyMatch(borne -> amps > borne);
    }

    private static double orEndless(OptionalDouble amps) {
      return amps.orElse(Double.POSITIVE_INFINITY);
    }

    private void slipOnce(Slip slip) {
      List<Integer> steps =
          SlipMaker.stepsFor(slip, entries.arrangement()).stream()
              .filter(s -> !honest.get(s).isEmpty())
              .toList();
      if (steps.isEmpty()) {
        results.leftOut.merge(slip.code() + ": no such step can be run", 1, Integer::sum);
        return;
      }
      int draw = entries.specimen().random("step " + slip.code(), 0).nextInt(steps.size());
      int step = steps.get(draw);
      SlipMaker.Outcome outcome = new SlipMaker(entries).make(slip, step, honest.get(step - 1));
      if (outcome instanceof SlipMaker.LeftOut left) {
        results.leftOut.merge(slip.code() + ": " + left.reason(), 1, Integer::sum);
      } else if (outcome instanceof SlipMaker.Made made) {
        Target target = Ladder.at(step);
        List<Doubt> doubts = forecaster.judge(before.get(step), target, made.entries());
        results.doubted.get(slip).add(!doubts.isEmpty());
        boolean right =
            !doubts.isEmpty()
                && doubts.get(0).slip() == slip
                && doubts.get(0).earlierStep().isEmpty();
        results.named.get(slip).add(right);
        results.confuse(slip, target.stepId(), doubts);
        results
            .breakdown
            .computeIfAbsent(slip.code() + ", " + made.how(), k -> new Results.Row())
            .add(
                Results.Standing.of(step, s -> !honest.get(s).isEmpty()), !doubts.isEmpty(), right);
        Later.Catch when = doubts.isEmpty() ? follow(slip, step, made) : Later.Catch.AT_ENTRY;
        results.later.add(slip, when);
        if (!right) {
          String taken = doubts.isEmpty() ? "passed, " + when.words : "taken for " + words(doubts);
          miss(step, slip.code() + ", " + made.how(), taken);
        }
      }
    }

    /** Goes on honestly after a slip that raised no doubt, up to the first doubt. */
    private Later.Catch follow(Slip slip, int slipped, SlipMaker.Made made) {
      List<Observation> known = new ArrayList<>(before.get(slipped).observations());
      known.add(new Observation(Ladder.at(slipped), made.entries()));
      int readings = 0;
      for (int step = slipped + 1; step < entries.arrangement().steps(); step++) {
        Map<ReadingId, Double> typed = honest.get(step);
        if (!typed.isEmpty()) {
          readings++;
          Evidence evidence =
              new Evidence(
                  entries.specimen().amplifier(), entries.specimen().bench(), CONDITIONS, known);
          Target target = Ladder.at(step);
          List<Doubt> doubts = forecaster.judge(evidence, target, typed);
          if (!doubts.isEmpty()) {
            results.later.point(slip, Ladder.at(slipped).stepId(), doubts.get(0));
            boolean inTime = step < Ladder.STEPS.size() - 1;
            return readings == 1 && inTime
                ? Later.Catch.NEXT_READING
                : inTime ? Later.Catch.IN_TIME : Later.Catch.TOO_LATE;
          }
          known = new ArrayList<>(known);
          known.add(new Observation(target, typed));
        }
      }
      return Later.Catch.NEVER;
    }
  }
}
