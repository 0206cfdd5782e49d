package loadwalk.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import loadwalk.bench.Amplifier;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.caution.StepCautions;
import loadwalk.plan.wiring.WiringLoadBank;
import loadwalk.sequence.Measure;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.Step;

/** Benches and steps, foretold by a forecast that says what it is told to. */
public final class PlanExample {
  /** The stock tables. */
  public static final Tables TABLES = Tables.stock();

  /** How loads are wired. */
  static final WiringLoadBank BANK = new WiringLoadBank(TABLES);

  /** What warns of a step. */
  public static final StepCautions CAUTIONS = new StepCautions(TABLES, BANK);

  /** An amplifier with two fuses of 30 A. */
  public static final Amplifier AMPLIFIER =
      BareAmplifier.limited(OptionalDouble.of(2), OptionalDouble.of(4), List.of(30.0, 30.0));

  /** 50 A and 30 A supplies, 2 m of AWG 4 each way, 60 A fuse, eight 8 Ω and four 4 Ω of 100 W. */
  public static final Bench BENCH =
      new Bench(
          "North bench",
          List.of(new Supply(13.8, 50), new Supply(13.8, 30)),
          List.of(
              new Lead("plus", new Lead.Awg(4), 2, 1).insulatedFor(105),
              new Lead("minus", new Lead.Awg(4), 2, 1).insulatedFor(105)),
          OptionalDouble.of(60),
          List.of(
              new LoadResistor("8 ohm", 8, 5, 100, 8, OptionalDouble.empty()),
              new LoadResistor("4 ohm", 4, 5, 100, 4, OptionalDouble.empty())),
          List.of(),
          0.9);

  /** One step at 4 Ω. */
  public static final Sequence STEREO_4 =
      new Sequence(
          "one-step", "One step", 1000, 1, 13.8, List.of(new Measure(Mode.STEREO, 4, false)), "0");

  /**
   * Foretells 40 A, at worst 81 A, and 100 W, at worst 144 W, into each load, whatever is asked.
   */
  public static final Forecaster FORETELLS = foretelling(any -> Told.amps(30, 40, 81).watts(144));

  private PlanExample() {}

  /**
   * What is foretold of a step.
   *
   * @param readings the bands of its readings
   * @param loadWatts the watts in each load
   */
  record Told(Map<ReadingId, Band> readings, Optional<Band> loadWatts) {
    /** Nothing at all. */
    static final Told NOTHING = new Told(Map.of(), Optional.empty());

    /** Foretells a supply current, and 20 V, at worst 24 V. */
    static Told amps(double low, double middle, double high) {
      return new Told(
          Map.of(
              ReadingId.SUPPLY_AMPS, new Band(low, middle, high),
              ReadingId.OUTPUT_VOLTS, new Band(18, 20, 24)),
          Optional.empty());
    }

    /** Foretells this supply current at worst, and half of it. */
    static Told worstAmps(double worst) {
      return amps(0, worst / 2, worst);
    }

    /** Foretells the watts in each load as well, at worst and 100/144 of that. */
    Told watts(double worst) {
      return new Told(readings, Optional.of(new Band(worst * 81 / 144, worst * 100 / 144, worst)));
    }
  }

  /** Returns a forecaster that tells what it is told to, with the cautions of the walk. */
  static Forecaster foretelling(Function<Target, Told> told) {
    return new Forecaster() {
      @Override
      public Forecast forecast(Evidence evidence, Target target) {
        Told now = told.apply(target);
        Forecast.Demand demand =
            new Forecast.Demand(
                now.loadWatts(),
                now.loadWatts().map(w -> new Band(2 * w.low(), 2 * w.middle(), 2 * w.high())),
                Optional.empty(),
                Optional.empty());
        StepCautions.Outcome outcome = CAUTIONS.of(evidence, target, now.readings(), demand);
        return new Forecast(
            target.stepId(),
            0.95,
            now.readings(),
            demand,
            outcome.cautions(),
            outcome.verdict(),
            CAUTIONS.givesFirst(evidence, target, now.readings(), demand),
            "as told");
      }

      @Override
      public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
        return List.of();
      }
    };
  }

  /** Returns a bench with the things that a plan reckons with. */
  static Bench bench(
      List<Supply> supplies, List<Lead> leads, OptionalDouble fuse, LoadResistor... loads) {
    return new Bench("North bench", supplies, leads, fuse, List.of(loads), List.of(), 0.9);
  }

  /** Returns a sequence of steps at 13.8 V. */
  static Sequence sequence(Step... steps) {
    return new Sequence("steps", "Steps", 1000, 1, 13.8, List.of(steps), "0");
  }

  /** Returns the plan of a sequence, foretold step by step. */
  static BenchPlan plan(
      Sequence sequence, Amplifier amplifier, Bench bench, Function<Target, Told> told) {
    return new BenchPlanner(foretelling(told), CAUTIONS, TABLES, BANK)
        .plan(sequence, amplifier, bench, List.of());
  }

  /** Returns the plan of a sequence. */
  public static BenchPlan plan(Sequence sequence, Amplifier amplifier, Bench bench) {
    return new BenchPlanner(FORETELLS, CAUTIONS, TABLES, BANK)
        .plan(sequence, amplifier, bench, List.of());
  }
}
