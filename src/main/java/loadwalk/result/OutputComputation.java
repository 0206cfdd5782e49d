package loadwalk.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Computes the output of one step: each channel's power in its own load, and their total.
 *
 * @param step the step
 * @param bench the bench
 * @param channels how many channels the amplifier has
 * @param repeatability how well the limit is set by hand
 * @param readings gives readings their uncertainty
 * @param remarks takes what is said of the basis
 */
record OutputComputation(
    MeasuredStep step,
    Bench bench,
    int channels,
    Repeatability repeatability,
    ReadingUncertainty readings,
    List<Remark> remarks) {
  /**
   * How far the volts of a channel that was not read lie from those of one that was, as a standard
   * uncertainty, a fraction (common practice, no source).
   */
  static final double UNEQUAL_VOLTS = 0.01;

  private static final String UNEQUAL = "channels unequal, one read";

  /**
   * One channel.
   *
   * @param read its volts, or the watts that a meter showed
   * @param ohms its load while it was read
   * @param watts the power in that load
   */
  private record Channel(Quantity read, Quantity ohms, Quantity watts) {}

  /**
   * Computes the output.
   *
   * @param limitVolts the volts at the limit, where they were worked out from pairs
   * @param stated whether the output was read at a stated point
   */
  Output compute(Optional<Quantity> limitVolts, boolean stated) {
    if (!hasLoad()) {
      return Output.NONE;
    }
    Load load = LoadChoice.of(step, bench, readings, remarks);
    boolean byHand = stated && step.kind() == Target.Kind.LOADED;
    Optional<Channel> first =
        limitVolts
            .or(() -> setBy(byHand, output()))
            .map(read -> channel(read, load, step.stepId()));
    Optional<Quantity> otherRead = setBy(byHand, other(limitVolts.isPresent()));
    Optional<Channel> second = first.flatMap(one -> second(one, otherRead));
    List<Channel> all = new ArrayList<>();
    first.ifPresent(all::add);
    second.ifPresent(all::add);
    Optional<Quantity> total = all.stream().map(Channel::watts).reduce(Quantity::plus);
    List<Quantity> inputs = all.stream().flatMap(c -> List.of(c.read, c.ohms).stream()).toList();
    return new Output(
        limitVolts.isPresent(),
        first.map(one -> volts(one.read)),
        first.map(Channel::watts),
        otherRead.isPresent() ? second.map(Channel::watts) : Optional.empty(),
        total,
        Optional.of(first.map(Channel::ohms).orElse(load.cold())),
        second.map(Channel::ohms),
        total.map(watts -> Budget.of(watts, inputs)).orElse(List.of()));
  }

  private boolean hasLoad() {
    return step.ohms() > 0
        && (step.reading(ReadingId.OUTPUT_VOLTS).isPresent()
            || step.reading(ReadingId.OUTPUT_WATTS).isPresent()
            || step.reading(ReadingId.LOAD_OHMS).isPresent()
            || !step.pairs().isEmpty());
  }

  /** Returns the volts read, or the watts that a meter showed. */
  private Optional<Quantity> output() {
    Optional<Quantity> volts = readings.of(step, ReadingId.OUTPUT_VOLTS);
    return volts.isPresent()
        ? volts
        : readings.of(step, ReadingId.OUTPUT_WATTS).filter(shown -> shown.value() >= 0);
  }

  private Optional<Quantity> other(boolean interpolated) {
    Optional<Quantity> read = readings.of(step, ReadingId.OTHER_OUTPUT_VOLTS);
    if (interpolated && read.isPresent()) {
      remarks.add(
          new Remark(
              "other-channel-left-out",
              "the other channel was not read at the interpolated limit: it is left out"));
      return Optional.empty();
    }
    return read;
  }

  private Optional<Quantity> setBy(boolean hand, Optional<Quantity> read) {
    return hand ? read.map(r -> repeatability.in(r, step.stepId())) : read;
  }

  private Channel channel(Quantity read, Load load, String source) {
    Quantity ohms = load.hot(power(read, load.cold(), source).value());
    return new Channel(read, ohms, power(read, ohms, source));
  }

  private Quantity power(Quantity read, Quantity ohms, String source) {
    return read.unit() == Unit.WATT
        ? Power.ofWatts(read, step.ohms(), ohms)
        : Power.ofVolts(read, ohms, source);
  }

  private Quantity volts(Quantity read) {
    if (read.unit() == Unit.VOLT) {
      return read;
    }
    remarks.add(
        new Remark(
            "volts-from-watts",
            "watts were typed: volts are worked back from the nominal load, taken as the load set"
                + " on the meter"));
    return Power.voltsOfWatts(read, step.ohms());
  }

  /** Returns the second channel of a stereo step, read or taken to give what the first one does. */
  private Optional<Channel> second(Channel first, Optional<Quantity> read) {
    if (step.mode() == Mode.BRIDGED) {
      return Optional.empty();
    }
    if (read.isEmpty() && channels == 1) {
      remarks.add(
          new Remark("one-channel", "the amplifier has one channel: the total is its power"));
      return Optional.empty();
    }
    Load load = LoadChoice.ofOther(step, bench, readings, remarks);
    String source = Sentence.of("{} other channel", step.stepId());
    if (read.isPresent()) {
      return read.map(volts -> channel(volts, load, source));
    }
    Channel second = channel(unequal(first.read), load, source);
    sayTwice(first, second);
    return Optional.of(second);
  }

  private static Quantity unequal(Quantity read) {
    double power = read.unit() == Unit.WATT ? 2 : 1;
    double u = Math.abs(read.value()) * UNEQUAL_VOLTS * power;
    return u > 0 ? read.withPart(UNEQUAL, u) : read;
  }

  private void sayTwice(Channel first, Channel second) {
    boolean alike = first.ohms.value() == second.ohms.value();
    remarks.add(
        new Remark(
            "total-is-twice-one",
            alike
                ? "one channel measured, both loaded: the total is twice that channel"
                : "one channel measured, both loaded: the total counts its volts in both loads"));
  }
}
