package loadwalk.shipped;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The program as it is handed on: the jar and the launcher that the build leaves in {@code target},
 * or in the folder that the property {@code shipped} names.
 */
public final class Shipped {
  private static final Path FOLDER =
      Path.of(System.getProperty("shipped", "target")).toAbsolutePath();

  /** No process of these tests takes a tenth of it on a machine that has nothing else to do. */
  private static final long PATIENCE_SECONDS = 240;

  private Shipped() {}

  /** Returns the launcher. */
  public static Path launcher() {
    return there("loadwalk");
  }

  /** Returns the jar that holds everything. */
  public static Path jar() {
    return there("loadwalk.jar");
  }

  private static Path there(String name) {
    Path file = FOLDER.resolve(name);
    assertTrue(Files.isRegularFile(file), file + " is not there; mvn package makes it");
    return file;
  }

  /** Returns the words that run the launcher on a data home. */
  public static List<String> command(Path home, String... arguments) {
    List<String> words = new ArrayList<>(List.of(launcher().toString()));
    words.addAll(List.of(arguments));
    words.addAll(List.of("--home", home.toString()));
    return words;
  }

  /**
   * Makes an environment that runs the launcher on the Java of the tests, and on no other words.
   */
  public static void prepare(Map<String, String> environment) {
    environment.put("JAVA_HOME", System.getProperty("java.home"));
    environment.remove("JDK_JAVA_OPTIONS");
    environment.remove("JAVA_TOOL_OPTIONS");
  }

  /** Starts the launcher with one locale and its streams as pipes. */
  public static Process start(String locale, Path home, String... arguments) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command(home, arguments));
    prepare(builder.environment());
    builder.environment().put("LC_ALL", locale);
    return limited(builder);
  }

  /**
   * Starts a process that is killed, with what it has started, when it takes far too long: then
   * whoever reads its output comes to the end of it.
   */
  public static Process limited(ProcessBuilder builder) throws IOException {
    Process process = builder.start();
    process
        .onExit()
        .orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS)
        .exceptionally(
            late -> {
              process.descendants().forEach(ProcessHandle::destroyForcibly);
              process.toHandle().destroyForcibly();
              return process;
            });
    return process;
  }
}
