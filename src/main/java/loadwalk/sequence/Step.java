package loadwalk.sequence;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.json.Shaped;

/**
 * One entry of a sequence. Each kind is a record that answers for itself whatever a caller asks of
 * a step, so that nobody needs to ask which kind it is.
 */
public sealed interface Step extends Shaped<Step>
    permits WarmUp, Idle, Measure, OpenLoad, Recheck, Music, Note {

  /** Returns what the step does, the word of its {@code do} key. */
  String verb();

  /** Returns the id before repeats are numbered: mode and ohms, or what the step does. */
  default String baseId() {
    return verb();
  }

  /** Returns what the operator is asked to connect, to do and to read, in whole sentences. */
  String instruction(StepContext context);

  /**
   * Returns what the step does to the amplifier; empty where it drives no load and reads no supply.
   *
   * @param id the step's id in the walk
   * @param context where it stands
   */
  Optional<Target> target(String id, StepContext context);

  /**
   * Returns the readings that the step asks for, in the order an operator takes them.
   *
   * @param mode how its load is connected
   */
  List<ReadingId> readings(Mode mode);

  /** Returns the readings that the step cannot be finished without; they are among those asked. */
  List<ReadingId> required();

  /** Returns the load that the step itself names. */
  default Optional<Load> load() {
    return Optional.empty();
  }

  /** Returns the warm-up that the step is, run by a clock. */
  default Optional<WarmUp> warmUp() {
    return Optional.empty();
  }

  /** Returns the step that this one measures again: its id, or {@link Recheck#HEAVIEST}. */
  default Optional<String> repeats() {
    return Optional.empty();
  }

  /** Tells whether the step is done as soon as the operator confirms its brief. */
  default boolean isConfirmed() {
    return false;
  }

  /** Tells whether the operator may pass the step over without a reason. */
  default boolean isOptional() {
    return false;
  }

  /** Returns the steps that are walked for this one, in order. */
  default List<Step> walked(Sequence sequence) {
    return List.of(this);
  }

  /**
   * Returns what keeps the step from standing behind the steps before it.
   *
   * @param measured the ids of the measure steps before it
   */
  default List<Misplaced> misplaced(List<String> measured) {
    return List.of();
  }

  /**
   * A step that cannot stand where it does.
   *
   * @param key the key at fault
   * @param sentence what is wrong
   */
  record Misplaced(String key, String sentence) {}
}
