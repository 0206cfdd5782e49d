package loadwalk.json;

import java.util.List;
import java.util.Optional;

/**
 * The outcome of reading a file: its content, or all its faults.
 *
 * @param <T> what the file holds
 */
public sealed interface Read<T> {
  /** Returns the content of the file, if it has no faults. */
  Optional<T> found();

  /** Returns all faults; empty only if there is content. */
  List<Fault> faults();

  /**
   * Makes the outcome of a reading.
   *
   * @param found what was found, present exactly when there are no faults
   * @param faults what is wrong
   */
  static <T> Read<T> of(Optional<T> found, List<Fault> faults) {
    return found.isPresent() && faults.isEmpty() ? new Good<>(found.get()) : new Bad<>(faults);
  }

  /**
   * A file without faults.
   *
   * @param value what it holds
   * @param <T> what the file holds
   */
  record Good<T>(T value) implements Read<T> {
    @Override
    public Optional<T> found() {
      return Optional.of(value);
    }

    @Override
    public List<Fault> faults() {
      return List.of();
    }
  }

  /**
   * A file with faults.
   *
   * @param faults all of them, at least one
   * @param <T> what the file would hold
   */
  record Bad<T>(List<Fault> faults) implements Read<T> {
    /** Copies the list and refuses an empty one. */
    public Bad {
      faults = List.copyOf(faults);
      if (faults.isEmpty()) {
        throw new IllegalArgumentException("a bad file needs at least one fault");
      }
    }

    @Override
    public Optional<T> found() {
      return Optional.empty();
    }
  }
}
