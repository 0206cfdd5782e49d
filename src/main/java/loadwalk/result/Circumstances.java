package loadwalk.result;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import loadwalk.bench.ThdKind;

/**
 * How a step was read, apart from its readings; whatever nobody recorded is empty.
 *
 * @param said the point that the operator named for the output
 * @param warm whether the warm-up before the step was done and the amplifier still warm
 * @param heldSeconds how long the step had run when its output was read, s
 * @param ambientCelsius the temperature of the air around the amplifier, °C
 * @param thdKind what the distortion read counts
 * @param thdBandwidthHertz the upper end of the band in which it was read, hertz
 * @param readBy how the output came into the record
 * @param practice whether the amplifier is simulated
 * @param stoodBy whether the operator stood by a doubted reading of the step
 * @param inDoubt whether a doubt on a reading of the step has no answer
 */
public record Circumstances(
    Optional<Criterion> said,
    Optional<Boolean> warm,
    OptionalDouble heldSeconds,
    OptionalDouble ambientCelsius,
    Optional<ThdKind> thdKind,
    OptionalDouble thdBandwidthHertz,
    Optional<ReadBy> readBy,
    boolean practice,
    boolean stoodBy,
    boolean inDoubt) {
  /** Nothing is known but the readings. */
  public static final Circumstances UNKNOWN =
      new Circumstances(
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          false,
          false,
          false);

  /** Rejects missing parts. */
  public Circumstances {
    Objects.requireNonNull(said, "said");
    Objects.requireNonNull(warm, "warm");
    Objects.requireNonNull(thdKind, "thdKind");
    Objects.requireNonNull(readBy, "readBy");
  }

  /** Returns those of the mean of runs, as {@link Conditions#ofMean} has it. */
  static Circumstances ofMean(List<Circumstances> runs) {
    boolean held = runs.stream().allMatch(run -> run.heldSeconds.isPresent());
    return new Circumstances(
        same(runs, Circumstances::said),
        same(runs, Circumstances::warm),
        held
            ? runs.stream().mapToDouble(run -> run.heldSeconds.getAsDouble()).min()
            : OptionalDouble.empty(),
        Conditions.mean(runs, Circumstances::ambientCelsius),
        same(runs, Circumstances::thdKind),
        Conditions.mean(runs, Circumstances::thdBandwidthHertz),
        same(runs, Circumstances::readBy),
        runs.stream().anyMatch(Circumstances::practice),
        runs.stream().anyMatch(Circumstances::stoodBy),
        runs.stream().anyMatch(Circumstances::inDoubt));
  }

  /** Returns what all runs have in common. */
  private static <T> Optional<T> same(
      List<Circumstances> runs, Function<Circumstances, Optional<T>> of) {
    Optional<T> first = of.apply(runs.get(0));
    return runs.stream().allMatch(run -> of.apply(run).equals(first)) ? first : Optional.empty();
  }

  /** Returns the same with the operator's word for the point at which the output was read. */
  public Circumstances saying(Criterion criterion) {
    return new Circumstances(
        Optional.of(criterion),
        warm,
        heldSeconds,
        ambientCelsius,
        thdKind,
        thdBandwidthHertz,
        readBy,
        practice,
        stoodBy,
        inDoubt);
  }
}
