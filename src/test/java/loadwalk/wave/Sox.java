package loadwalk.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Runs sox, a generator of sound files that shares no code with this project. */
public final class Sox {
  private Sox() {}

  /** Runs sox with the arguments and returns what it printed. */
  public static String run(Object... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("sox", "-R"));
    for (Object argument : arguments) {
      command.add(argument.toString());
    }
    Path log = Files.createTempFile("sox", ".log");
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(log.toFile())
              .start();
      assertEquals(0, process.waitFor(), () -> command + " failed");
      return Files.readString(log);
    } finally {
      Files.delete(log);
    }
  }
}
