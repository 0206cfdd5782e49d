package loadwalk.sequence;

import java.util.Optional;

/**
 * Where a step stands.
 *
 * @param sequence the sequence it belongs to
 * @param repeated the step that it measures again, where it measures one again
 */
public record StepContext(Sequence sequence, Optional<PlannedStep> repeated) {
  /** Returns the load of the step that is measured again. */
  Optional<Load> repeatedLoad() {
    return repeated.flatMap(planned -> planned.step().load());
  }
}
