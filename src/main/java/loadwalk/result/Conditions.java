package loadwalk.result;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;

/**
 * The conditions that a result was really reached under: what was read, never what was asked for;
 * what nobody read is empty.
 *
 * @param mode how the load was connected
 * @param ohms the nominal load, ohms
 * @param ohmsRead the load measured, ohms
 * @param channelsRead how many loads had their output read
 * @param hertz the test tone read
 * @param criterion the point at which the output really was
 * @param said whether that point is the operator's word alone, with no distortion read
 * @param thdPercent the distortion read at the output, percent
 * @param supplyVolts the volts read at the amplifier's terminals
 * @param around how the step was read otherwise
 */
public record Conditions(
    Mode mode,
    double ohms,
    OptionalDouble ohmsRead,
    int channelsRead,
    OptionalDouble hertz,
    Criterion criterion,
    boolean said,
    OptionalDouble thdPercent,
    OptionalDouble supplyVolts,
    Circumstances around) {
  /** The word for a step in which every channel plays. */
  public static final String ALL_DRIVEN = "all";

  /**
   * How far tones and supply volts may differ between results alike, a fraction of the larger. Set
   * by the design.
   */
  public static final double SAME_READING = 0.02;

  private static final double ROUNDING = 1e-9;

  /** Rejects missing parts. */
  public Conditions {
    Objects.requireNonNull(mode, "mode");
    Objects.requireNonNull(criterion, "criterion");
    Objects.requireNonNull(around, "around");
  }

  /**
   * Gathers the conditions of a step.
   *
   * @param limitThdPercent the limit that the step was to be read at, percent
   */
  static Conditions of(MeasuredStep step, double limitThdPercent) {
    boolean interpolated = !step.pairs().isEmpty();
    OptionalDouble thd = interpolated ? OptionalDouble.empty() : read(step, ReadingId.THD_PERCENT);
    Optional<Criterion> said = step.around().said();
    return new Conditions(
        step.mode(),
        step.ohms(),
        read(step, ReadingId.LOAD_OHMS),
        channelsRead(step),
        read(step, ReadingId.FREQUENCY_HERTZ),
        Criterion.reached(thd, limitThdPercent, said),
        thd.isEmpty() && said.isPresent(),
        thd,
        read(step, ReadingId.SUPPLY_VOLTS),
        step.around());
  }

  /** Returns the conditions of an output that was worked out at the limit from pairs near it. */
  Conditions interpolatedAt(double limitThdPercent) {
    return new Conditions(
        mode,
        ohms,
        ohmsRead,
        channelsRead,
        hertz,
        Criterion.THD_LIMIT,
        false,
        OptionalDouble.of(limitThdPercent),
        supplyVolts,
        around);
  }

  /**
   * Returns the conditions of the mean of runs into one load at one point: the mean of what was
   * read in every run, the shortest time that power was held; what differs between them in kind is
   * not known, and the mean is warm only if every run was.
   */
  static Conditions ofMean(List<Conditions> runs) {
    Conditions first = runs.get(0);
    return new Conditions(
        first.mode,
        first.ohms,
        mean(runs, Conditions::ohmsRead),
        runs.stream().mapToInt(Conditions::channelsRead).min().orElseThrow(),
        mean(runs, Conditions::hertz),
        first.criterion,
        runs.stream().anyMatch(Conditions::said),
        mean(runs, Conditions::thdPercent),
        mean(runs, Conditions::supplyVolts),
        Circumstances.ofMean(runs.stream().map(Conditions::around).toList()));
  }

  /** Returns the mean of what was read; empty where one of them did not read it. */
  static <T> OptionalDouble mean(List<T> runs, Function<T, OptionalDouble> read) {
    return runs.stream().map(read).allMatch(OptionalDouble::isPresent)
        ? runs.stream().mapToDouble(run -> read.apply(run).getAsDouble()).average()
        : OptionalDouble.empty();
  }

  /** Tells whether a run of the same walk and load was reached under like conditions. */
  boolean isLike(Conditions other) {
    return criterion == other.criterion
        && sameReading(hertz, other.hertz)
        && sameReading(supplyVolts, other.supplyVolts)
        && around.warm().equals(other.around.warm());
  }

  /** Tells whether two readings are alike; what nobody read is alike only to what nobody read. */
  public static boolean sameReading(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() && other.isPresent()
        ? within(SAME_READING, one.getAsDouble(), other.getAsDouble())
        : one.isEmpty() && other.isEmpty();
  }

  /** Tells whether two values differ by no more than a fraction of the larger. */
  public static boolean within(double fraction, double one, double other) {
    double most = Math.max(Math.abs(one), Math.abs(other));
    return Math.abs(one - other) <= (fraction + ROUNDING) * most;
  }

  /** Tells whether a value differs from what was asked by no more than a fraction of that. */
  public static boolean isNear(double value, double asked, double fraction) {
    return Math.abs(value - asked) <= (fraction + ROUNDING) * asked;
  }

  private static int channelsRead(MeasuredStep step) {
    boolean one =
        step.reading(ReadingId.OUTPUT_VOLTS).isPresent()
            || step.reading(ReadingId.OUTPUT_WATTS).isPresent()
            || !step.pairs().isEmpty();
    boolean other = step.reading(ReadingId.OTHER_OUTPUT_VOLTS).isPresent();
    return (one ? 1 : 0) + (other ? 1 : 0);
  }

  private static OptionalDouble read(MeasuredStep step, ReadingId id) {
    Optional<TakenReading> taken = step.reading(id);
    return taken.isPresent() ? OptionalDouble.of(taken.get().value()) : OptionalDouble.empty();
  }
}
