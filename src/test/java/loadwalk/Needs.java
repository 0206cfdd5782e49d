package loadwalk;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * What a test needs of the machine. Without it the test is skipped and counted as such; under
 * {@code CI=true}, where everything is to be there, it fails.
 *
 * <p>Call it in the test or before each, never before all: that would hide the tests of the class.
 */
public final class Needs {
  private Needs() {}

  /** Needs a command on the path. */
  public static void tool(String command) {
    boolean there =
        Stream.of(System.getenv("PATH").split(File.pathSeparator))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, command)));
    that(there, command + " is not installed");
  }

  /**
   * Needs a fact.
   *
   * @param otherwise what is said where it does not hold
   */
  public static void that(boolean holds, String otherwise) {
    if (holds) {
      return;
    }
    if ("true".equals(System.getenv("CI"))) {
      fail(otherwise + ", and under CI=true no test is skipped");
    }
    abort(otherwise);
  }
}
