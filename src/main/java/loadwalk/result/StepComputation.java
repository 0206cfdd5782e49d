package loadwalk.result;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;

/** Computes the result of one step from its readings. */
final class StepComputation {
  private final Amplifier amplifier;
  private final Bench bench;
  private final Asked asked;
  private final Wire wire;
  private final MeasuredStep step;
  private final List<Remark> remarks = new ArrayList<>();
  private final ReadingUncertainty readings;

  private StepComputation(
      Amplifier amplifier, Bench bench, Asked asked, Wire wire, MeasuredStep step) {
    this.amplifier = amplifier;
    this.bench = bench;
    this.asked = asked;
    this.wire = wire;
    this.step = step;
    this.readings = new ReadingUncertainty(bench, asked.toneHertz(), step.stepId(), remarks);
  }

  static StepResult of(
      Amplifier amplifier, Bench bench, Asked asked, Wire wire, MeasuredStep step) {
    return new StepComputation(amplifier, bench, asked, wire, step).compute();
  }

  private StepResult compute() {
    Optional<Quantity> load = load();
    Output output = load.map(this::output).orElseGet(this::noOutput);
    Optional<Quantity> watts = output.power().map(Power::watts);
    Optional<Quantity> total = watts.map(one -> total(one, output.other()));
    Optional<Quantity> volts = readings.of(step, ReadingId.SUPPLY_VOLTS);
    Optional<Quantity> amps = readings.of(step, ReadingId.SUPPLY_AMPS);
    Optional<Quantity> input = product(volts, amps);
    Optional<Quantity> used = step.kind() == Target.Kind.IDLE ? noWatts() : total;
    Optional<Quantity> efficiency =
        total.flatMap(
            out ->
                input
                    .filter(in -> in.value() > ReadingUncertainty.LEAST)
                    .map(in -> out.dividedBy(in, Unit.ONE)));
    Optional<Quantity> heat = used.flatMap(out -> input.map(in -> in.minus(out)));
    boolean impossible = isImpossible(heat);
    Conditions conditions = conditions(output);
    Optional<Quantity> drop =
        volts.flatMap(v -> amps.flatMap(a -> new LeadDrop(bench, wire, remarks).of(v, a)));
    return new StepResult(
        step.stepId(),
        step.kind(),
        conditions,
        Mark.of(conditions, impossible, asked.supplyVolts()),
        output.volts(),
        watts,
        output.other(),
        total,
        input,
        amps,
        efficiency,
        heat,
        load,
        drop,
        product(drop, amps),
        rating(output, conditions, load, volts),
        List.copyOf(new LinkedHashSet<>(remarks)),
        output.power().map(Power::budget).orElse(List.of()));
  }

  private Optional<Quantity> load() {
    boolean loaded =
        step.ohms() > 0
            && (step.reading(ReadingId.OUTPUT_VOLTS).isPresent()
                || step.reading(ReadingId.OUTPUT_WATTS).isPresent()
                || step.reading(ReadingId.LOAD_OHMS).isPresent()
                || !step.pairs().isEmpty());
    return loaded ? Optional.of(LoadChoice.of(step, bench, readings, remarks)) : Optional.empty();
  }

  private Output output(Quantity load) {
    Optional<Quantity> atLimit =
        step.pairs().isEmpty()
            ? Optional.empty()
            : new LimitVolts(bench, readings, remarks).of(step, asked.limitThdPercent());
    return Output.of(step, load, readings, atLimit, remarks);
  }

  private Output noOutput() {
    return new Output(false, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * Returns the total of the channels; twice the measured channel if both are loaded and only one
   * was measured.
   */
  private Quantity total(Quantity one, Optional<Quantity> other) {
    if (step.mode() == Mode.BRIDGED) {
      return one;
    }
    if (other.isPresent()) {
      return one.plus(other.get());
    }
    if (amplifier.channels().orElse(2) == 1) {
      remarks.add(
          new Remark("one-channel", "the amplifier has one channel: the total is its power"));
      return one;
    }
    remarks.add(
        new Remark(
            "total-is-twice-one",
            "one channel measured, both loaded: the total is twice that channel"));
    return one.scaledBy(Mode.STEREO.loads());
  }

  private static Optional<Quantity> noWatts() {
    return Optional.of(Quantity.exact(0, Unit.WATT));
  }

  private static Optional<Quantity> product(Optional<Quantity> volts, Optional<Quantity> amps) {
    return volts.flatMap(v -> amps.map(a -> v.times(a, Unit.WATT)));
  }

  private Conditions conditions(Output output) {
    Conditions read = Conditions.of(step, asked.limitThdPercent());
    return output.atLimit() ? read.interpolatedAt(asked.limitThdPercent()) : read;
  }

  /** Tells, and says, whether more comes out than goes in, beyond the uncertainty. */
  private boolean isImpossible(Optional<Quantity> heat) {
    boolean impossible = heat.isPresent() && heat.get().value() + heat.get().expanded() < 0;
    if (impossible) {
      remarks.add(
          new Remark(
              "output-above-input",
              "more comes out than goes in, beyond the uncertainty: a reading is wrong"));
    }
    return impossible;
  }

  private Optional<RatingComparison> rating(
      Output output,
      Conditions conditions,
      Optional<Quantity> load,
      Optional<Quantity> supplyVolts) {
    if (step.kind() != Target.Kind.LOADED || output.power().isEmpty()) {
      return Optional.empty();
    }
    Quantity one = output.power().get().watts();
    Quantity least = output.other().filter(o -> o.value() < one.value()).orElse(one);
    RatingJudge judge =
        new RatingJudge(conditions, asked, load.orElseThrow(), supplyVolts, amplifier.regulated());
    return amplifier.rating(step.mode(), step.ohms()).map(rated -> judge.compare(rated, least));
  }
}
