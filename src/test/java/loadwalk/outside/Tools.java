package loadwalk.outside;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The outside tools that faults are made with. */
final class Tools {
  private Tools() {}

  /** Runs a command without a word and returns its exit code. */
  static int run(String... words) throws IOException, InterruptedException {
    return new ProcessBuilder(words)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start()
        .waitFor();
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
