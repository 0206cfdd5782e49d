package loadwalk.sequence;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Shape;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * A step that warms the amplifier up at part of its power, into the first load of the sequence.
 *
 * @param minutes the minimum time, minutes
 * @param powerFraction the fraction of full power, above 0 and up to 1
 * @param steadyCelsiusPerMinute the slope at or below which the heatsink counts as steady, K/min
 */
public record WarmUp(double minutes, double powerFraction, double steadyCelsiusPerMinute)
    implements Step {
  private static final double DEFAULT_POWER_FRACTION = 0.5;
  private static final double DEFAULT_STEADY_CELSIUS_PER_MINUTE = 0.5;

  /** Returns a warm-up of the given minutes, with the defaults for everything else. */
  static WarmUp lasting(double minutes) {
    return new WarmUp(minutes, DEFAULT_POWER_FRACTION, DEFAULT_STEADY_CELSIUS_PER_MINUTE);
  }

  @Override
  public Step shape(Shape in) {
    return new WarmUp(
        in.number("minutes", minutes, StepReader.LEAST_MINUTES, StepReader.MOST_MINUTES),
        in.numberOr("powerFraction", powerFraction, 0.01, 1),
        in.numberOr("steadyCelsiusPerMinute", steadyCelsiusPerMinute, 0.01, 100));
  }

  @Override
  public String verb() {
    return "warm-up";
  }

  @Override
  public String instruction(StepContext context) {
    Optional<Load> load = context.sequence().firstLoad();
    return load.isEmpty()
        ? "This sequence names no load to warm up into. Skip this step."
        : Sentence.of(
            "{} Run at about {} of full power for {} min.",
            load.get().connect(),
            Printer.UTF8.exact(100 * powerFraction, Unit.PERCENT),
            Printer.UTF8.exact(minutes, Unit.ONE));
  }

  @Override
  public Optional<Target> target(String id, StepContext context) {
    return context
        .sequence()
        .firstLoad()
        .map(l -> new Target(id, Target.Kind.WARM_UP, l.mode(), l.ohms(), powerFraction));
  }

  @Override
  public List<ReadingId> readings(Mode mode) {
    return List.of(ReadingId.SINK_CELSIUS);
  }

  @Override
  public List<ReadingId> required() {
    return List.of();
  }

  @Override
  public Optional<WarmUp> warmUp() {
    return Optional.of(this);
  }

  /** Returns the same warm-up with another minimum time, minutes. */
  WarmUp lastingInstead(double otherMinutes) {
    return new WarmUp(otherMinutes, powerFraction, steadyCelsiusPerMinute);
  }
}
