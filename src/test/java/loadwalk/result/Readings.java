package loadwalk.result;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import loadwalk.bench.Amplifier;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;

/** Makes the benches, amplifiers and readings of the tests in this package. */
final class Readings {
  static final double LIMIT = 1;
  static final double SUPPLY = 14.4;
  static final double TONE = 40;
  static final Wire WIRE = new Wire(Tables.stock());

  /** A bench on which the limit is set without any scatter, which leaves the other parts alone. */
  static final Repeatability EXACTLY_SET = new Repeatability(0, 0);

  private Readings() {}

  static TakenReading volts(double value) {
    return new TakenReading(ReadingId.OUTPUT_VOLTS, value, 0.01);
  }

  static TakenReading of(ReadingId id, double value) {
    return new TakenReading(id, value, 0.01);
  }

  static MeasuredStep stereo(double ohms, TakenReading... readings) {
    return loaded(Mode.STEREO, ohms, Criterion.THD_LIMIT, readings);
  }

  static MeasuredStep bridged(double ohms, TakenReading... readings) {
    return loaded(Mode.BRIDGED, ohms, Criterion.THD_LIMIT, readings);
  }

  static MeasuredStep loaded(
      Mode mode, double ohms, Criterion criterion, TakenReading... readings) {
    String number = ohms == Math.rint(ohms) ? String.valueOf((long) ohms) : String.valueOf(ohms);
    return loaded(mode.word() + "-" + number, mode, ohms, criterion, List.of(readings));
  }

  static MeasuredStep loaded(
      String stepId, Mode mode, double ohms, Criterion criterion, List<TakenReading> readings) {
    return new MeasuredStep(
        stepId,
        Target.Kind.LOADED,
        mode,
        ohms,
        byId(readings),
        List.of(),
        Optional.empty(),
        Circumstances.UNKNOWN.saying(criterion));
  }

  /** Returns a step in which the amplifier is not driven to the limit. */
  static MeasuredStep below(
      String stepId, Target.Kind kind, Mode mode, double ohms, TakenReading... readings) {
    return new MeasuredStep(
        stepId,
        kind,
        mode,
        ohms,
        byId(List.of(readings)),
        List.of(),
        Optional.empty(),
        Circumstances.UNKNOWN.saying(Criterion.BELOW_LIMIT));
  }

  static Map<ReadingId, TakenReading> byId(List<TakenReading> readings) {
    return readings.stream().collect(Collectors.toMap(TakenReading::id, Function.identity()));
  }

  /** Returns a step marked as a recheck of an earlier one. */
  static MeasuredStep rechecking(MeasuredStep step, String earlierId) {
    return new MeasuredStep(
        step.stepId(),
        step.kind(),
        step.mode(),
        step.ohms(),
        step.readings(),
        step.pairs(),
        Optional.of(earlierId),
        step.around());
  }

  /** Returns a step with points near the limit. */
  static MeasuredStep withPairs(MeasuredStep step, List<LimitPair> points) {
    return new MeasuredStep(
        step.stepId(),
        step.kind(),
        step.mode(),
        step.ohms(),
        step.readings(),
        points,
        step.recheckOf(),
        step.around());
  }

  /** Returns a copy of a step under another id. */
  static MeasuredStep named(MeasuredStep step, String id) {
    return new MeasuredStep(
        id,
        step.kind(),
        step.mode(),
        step.ohms(),
        step.readings(),
        step.pairs(),
        step.recheckOf(),
        step.around());
  }

  static Meter meter(ReadingId reads, double percent, double digits, double resolution) {
    return new Meter("DMM", reads, percent, digits, resolution, Optional.empty());
  }

  /** Returns a load that heat does not change. */
  static LoadResistor load(double ohms, double tolerancePercent) {
    return new LoadResistor(ohms + " ohm", ohms, tolerancePercent, 300, 8, OptionalDouble.of(0));
  }

  static Bench bench(List<Meter> meters, List<LoadResistor> loads) {
    return bench(meters, loads, List.of());
  }

  static Bench bench(List<Meter> meters, List<LoadResistor> loads, List<Supply> supplies) {
    return new Bench(
        "North bench", supplies, List.of(), OptionalDouble.empty(), loads, meters, 0.9);
  }

  /** Returns a bench whose volts have u = sqrt(gain² + digit²) of rectangular parts. */
  static Bench usual() {
    return bench(
        List.of(
            meter(ReadingId.OUTPUT_VOLTS, 0.5, 3, 0.01),
            meter(ReadingId.SUPPLY_VOLTS, 0.3, 2, 0.01),
            meter(ReadingId.SUPPLY_AMPS, 1, 3, 0.1),
            meter(ReadingId.THD_PERCENT, 5, 0, 0.01)),
        List.of(load(4, 1), load(2, 1), load(1, 1), load(0.5, 1)));
  }

  static Amplifier plain() {
    return Amplifier.named("Halvorsen & Pike", "HP 240");
  }

  static Amplifier rated(Rating... ratings) {
    return BareAmplifier.rated(ratings);
  }

  static Rating rating(Mode mode, double ohms, double watts, double supplyVolts, double thd) {
    return new Rating(mode, ohms, watts, OptionalDouble.of(supplyVolts), OptionalDouble.of(thd));
  }

  static WalkResult walk(Bench bench, MeasuredStep... steps) {
    return walk(plain(), bench, steps);
  }

  static WalkResult walk(Amplifier amplifier, Bench bench, MeasuredStep... steps) {
    return ResultComputation.walk(
        amplifier, bench, LIMIT, SUPPLY, TONE, WIRE, EXACTLY_SET, List.of(steps));
  }

  static StepResult step(Bench bench, MeasuredStep step) {
    return walk(bench, step).steps().get(0);
  }

  static boolean says(List<Remark> remarks, String code) {
    return remarks.stream().anyMatch(r -> r.code().equals(code));
  }
}
