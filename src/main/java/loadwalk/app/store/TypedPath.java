package loadwalk.app.store;

import java.nio.file.Path;
import java.util.Optional;

/** Where a path that somebody typed leads. */
sealed interface TypedPath {
  /** Returns the absolute path where it stays in the data home. */
  Optional<Path> inside();

  /** Returns why it does not, one sentence. */
  Optional<String> outside();

  /**
   * It stays in the data home.
   *
   * @param path the absolute path; nothing need be there
   */
  record Inside(Path path) implements TypedPath {
    @Override
    public Optional<Path> inside() {
      return Optional.of(path);
    }

    @Override
    public Optional<String> outside() {
      return Optional.empty();
    }
  }

  /**
   * It leads out of the data home or cannot be a path.
   *
   * @param why one sentence
   */
  record Outside(String why) implements TypedPath {
    @Override
    public Optional<Path> inside() {
      return Optional.empty();
    }

    @Override
    public Optional<String> outside() {
      return Optional.of(why);
    }
  }
}
