package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Counts the classes that a sheet in a pipe loads, which decide how long it takes. */
class SheetEffortTest {
  /** 2120 on Java 17, 2270 on Java 25, lambdas among them. */
  private static final int CLASSES = 2700;

  /** 530 on Java 17, 520 on Java 25: each is joined when it is first met. */
  private static final int LAMBDAS = 650;

  @TempDir Path folder;

  @Test
  void sheet_loadsNoCommandLineScreenOrFormatter() throws Exception {
    List<String> loaded = loaded();
    long lambdas = loaded.stream().filter(name -> name.contains("$$Lambda")).count();
    assertTrue(lambdas > 100 && lambdas < LAMBDAS, lambdas + " lambdas");
    assertTrue(loaded.size() < CLASSES, loaded.size() + " classes");
    assertEquals(List.of(), loaded.stream().filter(SheetEffortTest::isNotNeeded).toList());
  }

  private static boolean isNotNeeded(String name) {
    return name.matches("(picocli\\.CommandLine\\$|com\\.googlecode\\.|loadwalk\\.(tui|view)\\.).*")
        || name.equals("java.util.Formatter")
        || name.matches("loadwalk\\.forecast\\.(WalkModel|StepJudge|StandardForecaster)");
  }

  private List<String> loaded() throws IOException, InterruptedException {
    Path sessions = Files.createDirectories(folder.resolve("sessions"));
    try (var shipped = Files.list(Path.of("sessions"))) {
      Path walk = shipped.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow();
      Files.copy(walk, sessions.resolve("one.jsonl"));
    }
    Path classes = folder.resolve("classes");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xlog:class+load:file=" + classes + ":tags",
                "-cp",
                System.getProperty("java.class.path"),
                "loadwalk.app.Main",
                "sheet",
                "--home",
                folder.toString())
            .redirectErrorStream(true)
            .start();
    String sheet = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), sheet);
    return Files.readAllLines(classes).stream()
        .map(line -> line.replaceFirst("^\\[[^]]*\\]\\s*", "").replaceFirst(" .*", ""))
        .toList();
  }
}
