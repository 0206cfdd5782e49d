package loadwalk.sequence;

import java.util.Optional;

/**
 * The context of a step in a walk.
 *
 * @param sequence the sequence it belongs to
 * @param repeated the step that it measures again, if any
 */
public record StepContext(Sequence sequence, Optional<PlannedStep> repeated) {
  /** Returns the load of the step that is measured again, if any. */
  Optional<Load> repeatedLoad() {
    return repeated.flatMap(planned -> planned.step().load());
  }
}
