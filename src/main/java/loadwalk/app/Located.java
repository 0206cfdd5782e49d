package loadwalk.app;

import java.nio.file.Path;

/** Where a path that somebody typed leads. */
public sealed interface Located {
  /**
   * It stays in the data home.
   *
   * @param path the absolute path; nothing need be there
   */
  record Inside(Path path) implements Located {}

  /**
   * It leads out of the data home or cannot be a path.
   *
   * @param why one sentence
   */
  record Outside(String why) implements Located {}
}
