package loadwalk.sequence;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Shaped;

/**
 * One entry of a sequence. Each kind is a record with its own behaviour, so no caller needs to
 * check which kind it is.
 */
public sealed interface Step extends Shaped<Step>
    permits WarmUp, Idle, Measure, OpenLoad, Recheck, Music, Note {

  /** Returns the value of the step's {@code do} key, which says what it does. */
  String verb();

  /** Returns the id before repeats are numbered: mode and ohms, or the {@code do} value. */
  default String baseId() {
    return verb();
  }

  /** Returns what the operator must connect, do and read, in whole sentences. */
  String instruction(StepContext context);

  /** Returns what of the instruction still matters while the step runs. */
  default String running(StepContext context) {
    return instruction(context);
  }

  /**
   * Returns what the step does to the amplifier; empty if it drives no load and reads no supply.
   *
   * @param id the step's id in the walk
   * @param context its context in the walk
   */
  Optional<Target> target(String id, StepContext context);

  /**
   * Returns the readings that the step asks for, in the order the operator takes them.
   *
   * @param mode how its load is connected
   */
  List<ReadingId> readings(Mode mode);

  /** Returns the readings needed to finish the step; they are a subset of {@link #readings}. */
  List<ReadingId> required();

  /** Returns the load that the step itself names, if any. */
  default Optional<Load> load() {
    return Optional.empty();
  }

  /** Returns this step as a timed warm-up, if it is one. */
  default Optional<WarmUp> warmUp() {
    return Optional.empty();
  }

  /** Returns the id of the step that this one measures again, or {@link Recheck#HEAVIEST}. */
  default Optional<String> repeats() {
    return Optional.empty();
  }

  /** Tells whether the step is done as soon as the operator confirms its brief. */
  default boolean isConfirmed() {
    return false;
  }

  /** Tells whether the operator may skip the step without giving a reason. */
  default boolean isOptional() {
    return false;
  }

  /** Returns the steps that replace this one in a walk, in order. */
  default List<Step> walked(Sequence sequence) {
    return List.of(this);
  }

  /**
   * Returns the reasons why the step cannot follow the steps before it.
   *
   * @param measured the ids of the measure steps before it
   */
  default List<Misplaced> misplaced(List<String> measured) {
    return List.of();
  }

  /**
   * A reason why a step cannot be at its position.
   *
   * @param key the key at fault
   * @param sentence what is wrong
   */
  record Misplaced(String key, String sentence) {}
}
