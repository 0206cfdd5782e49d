package loadwalk.journal;

import java.util.Objects;
import java.util.Optional;

/** The result of writing a record to the disk. */
public sealed interface KeepResult {
  /** Returns why the record does not count, in one sentence for the operator; empty if it does. */
  Optional<String> failure();

  /**
   * The record is on the disk and survives a power cut.
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
    /** Rejects missing parts. */
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
