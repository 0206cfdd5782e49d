package loadwalk.result;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;

/**
 * The raw readings of one step.
 *
 * @param stepId the step's id
 * @param kind what was done
 * @param mode how the load was connected; any value for an idle step
 * @param ohms the nominal load, ohms, above 0; NaN if none was connected
 * @param readings the readings by id
 * @param pairs points near the limit, in any order; empty if the limit was read directly
 * @param recheckOf the id of the step that this one rechecks
 * @param around how the step was read otherwise
 */
public record MeasuredStep(
    String stepId,
    Target.Kind kind,
    Mode mode,
    double ohms,
    Map<ReadingId, TakenReading> readings,
    List<LimitPair> pairs,
    Optional<String> recheckOf,
    Circumstances around) {

  /** Checks the values and copies the collections. */
  public MeasuredStep {
    Objects.requireNonNull(stepId, "stepId");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(mode, "mode");
    Objects.requireNonNull(around, "around");
    Objects.requireNonNull(recheckOf, "recheckOf");
    boolean open = Double.isNaN(ohms) && kind != Target.Kind.LOADED;
    if (!open && (!(ohms > 0) || Double.isInfinite(ohms))) {
      throw new IllegalArgumentException(
          "ohms of step " + stepId + " must be a number above 0, got " + ohms);
    }
    Map<ReadingId, TakenReading> copy = new EnumMap<>(ReadingId.class);
    copy.putAll(readings);
    copy.forEach((id, taken) -> requireSame(id, taken.id()));
    readings = Map.copyOf(copy);
    pairs = List.copyOf(pairs);
  }

  /** Returns a reading, if it was taken. */
  public Optional<TakenReading> reading(ReadingId id) {
    return Optional.ofNullable(readings.get(id));
  }

  private static void requireSame(ReadingId key, ReadingId id) {
    if (key != id) {
      throw new IllegalArgumentException(id.key() + " is filed under " + key.key());
    }
  }
}
