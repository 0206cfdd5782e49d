package loadwalk.outside;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The outside tools that faults are made with. */
final class Tools {
  private static final long PATIENCE_SECONDS = 60;

  private Tools() {}

  /** Runs a command without a word and returns its exit code. */
  static int run(String... words) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(words)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError(List.of(words) + " did not end");
    }
    return process.exitValue();
  }

  /** Tells whether a command is there. */
  static boolean has(String name) {
    for (String folder : System.getenv("PATH").split(":")) {
      if (Files.isExecutable(Path.of(folder, name))) {
        return true;
      }
    }
    return false;
  }
}
