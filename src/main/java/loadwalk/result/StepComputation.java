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
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** Computes the result of one step from its readings. */
final class StepComputation {
  /** The most of the input that its expanded uncertainty may be, a fraction. Set by hand. */
  private static final double MOST_OF_INPUT = 0.25;

  private final Amplifier amplifier;
  private final Bench bench;
  private final Asked asked;
  private final Wire wire;
  private final Repeatability repeatability;
  private final MeasuredStep step;
  private final List<Remark> remarks = new ArrayList<>();
  private final ReadingUncertainty readings;

  private StepComputation(
      Amplifier amplifier,
      Bench bench,
      Asked asked,
      Wire wire,
      Repeatability repeatability,
      MeasuredStep step) {
    this.amplifier = amplifier;
    this.bench = bench;
    this.asked = asked;
    this.wire = wire;
    this.repeatability = repeatability;
    this.step = step;
    this.readings = new ReadingUncertainty(bench, asked.toneHertz(), step.stepId(), remarks);
  }

  static StepResult of(
      Amplifier amplifier,
      Bench bench,
      Asked asked,
      Wire wire,
      Repeatability repeatability,
      MeasuredStep step) {
    return new StepComputation(amplifier, bench, asked, wire, repeatability, step).compute();
  }

  private StepResult compute() {
    Conditions read = Conditions.of(step, asked.limitThdPercent());
    Output output = output(read.criterion());
    Conditions conditions = output.atLimit() ? read.interpolatedAt(asked.limitThdPercent()) : read;
    Optional<Quantity> volts = readings.of(step, ReadingId.SUPPLY_VOLTS);
    Optional<Quantity> amps = readings.of(step, ReadingId.SUPPLY_AMPS);
    Optional<Quantity> input = product(volts, amps);
    Optional<Quantity> used = used(output);
    Optional<Quantity> heat = used.flatMap(out -> input.map(in -> in.minus(out)));
    boolean impossible = isImpossible(heat);
    Optional<Quantity> drop =
        volts.flatMap(v -> amps.flatMap(a -> new LeadDrop(bench, wire, remarks).of(v, a)));
    return new StepResult(
        step.stepId(),
        step.kind(),
        conditions,
        Mark.of(conditions, impossible, asked.supplyVolts()),
        output.volts(),
        output.watts(),
        output.otherWatts(),
        output.totalWatts(),
        volts,
        input,
        amps,
        step.kind() == Target.Kind.IDLE ? Optional.empty() : efficiency(used, input),
        heat,
        output.loadOhms(),
        output.otherOhms(),
        drop,
        product(drop, amps),
        rating(output, conditions, volts),
        List.copyOf(new LinkedHashSet<>(remarks)),
        output.budget());
  }

  private Output output(Criterion criterion) {
    Optional<Quantity> atLimit =
        step.pairs().isEmpty() || !(step.ohms() > 0)
            ? Optional.empty()
            : new LimitVolts(bench, readings, remarks).of(step, asked.limitThdPercent());
    int channels = amplifier.channels().orElse(Mode.STEREO.loads());
    return new OutputComputation(step, bench, channels, repeatability, readings, remarks)
        .compute(atLimit, criterion.isStated());
  }

  /**
   * Returns the watts that went into the loads while the supply was read: whether the limit was set
   * right matters to neither.
   */
  private Optional<Quantity> used(Output output) {
    return step.kind() == Target.Kind.IDLE
        ? Optional.of(Quantity.exact(0, Unit.WATT))
        : output.totalWatts().map(w -> w.without(Repeatability.source(step.stepId())));
  }

  /** Near an input of nothing the ratio has no ±: it is left out, and its range is said. */
  private Optional<Quantity> efficiency(Optional<Quantity> used, Optional<Quantity> input) {
    if (used.isEmpty() || input.isEmpty() || !(input.get().value() > ReadingUncertainty.LEAST)) {
      return Optional.empty();
    }
    Quantity in = input.get();
    if (in.expanded() <= MOST_OF_INPUT * in.value()) {
      return Optional.of(used.get().dividedBy(in, Unit.ONE));
    }
    remarks.add(
        new Remark(
            "efficiency-not-resolved",
            Sentence.of(
                "the input is {}, too little for an efficiency: it would be {}",
                Printer.UTF8.quantity(in),
                Ratio.of(Math.max(0, used.get().value()), in).range())));
    return Optional.empty();
  }

  private static Optional<Quantity> product(Optional<Quantity> volts, Optional<Quantity> amps) {
    return volts.flatMap(v -> amps.map(a -> v.times(a, Unit.WATT)));
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
      Output output, Conditions conditions, Optional<Quantity> supplyVolts) {
    if (step.kind() != Target.Kind.LOADED || output.watts().isEmpty()) {
      return Optional.empty();
    }
    Quantity one = output.watts().get();
    Optional<Quantity> lower = output.otherWatts().filter(o -> o.value() < one.value());
    Quantity least = lower.orElse(one);
    Quantity load = lower.flatMap(o -> output.otherOhms()).or(output::loadOhms).orElseThrow();
    return new Ratings(amplifier, asked).of(conditions, least, load, supplyVolts);
  }
}
