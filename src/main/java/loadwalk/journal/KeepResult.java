package loadwalk.journal;

import java.util.Objects;
import java.util.Optional;

/** Whether a record is on the disk. */
public sealed interface KeepResult {
  /** Returns why the record does not count, one sentence for the operator; empty where it does. */
  Optional<String> failure();

  /**
   * The record is on the disk and outlasts a power cut.
   *
   * @param seq its number
   */
  record Kept(long seq) implements KeepResult {
    @Override
    public Optional<String> failure() {
      return Optional.empty();
    }
  }

  /**
   * The record does not count; the walk must hold, and the same body may be tried again.
   *
   * @param kind why the disk refused
   * @param why one sentence for the operator
   */
  record NotKept(FaultKind kind, String why) implements KeepResult {
    /** Checks that nothing is missing. */
    public NotKept {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(why, "why");
    }

    @Override
    public Optional<String> failure() {
      return Optional.of(why);
    }
  }
}
