package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Counts the classes that a sheet in a pipe loads, which decide how long it takes. */
class SheetEffortTest {
  /** 2120 on Java 17, 2270 on Java 25, lambdas among them. */
  private static final int CLASSES = 2700;

  /** 530 on Java 17, 520 on Java 25: each is joined when it is first met. */
  private static final int LAMBDAS = 650;

  /** 635 on Java 17, 816 on Java 25, of which Java itself needs 420 to start. */
  private static final int CLASSES_OF_A_KEPT_SHEET = 900;

  @TempDir Path folder;

  @BeforeEach
  void furnish() throws IOException {
    Path sessions = Files.createDirectories(folder.resolve("sessions"));
    try (var shipped = Files.list(Path.of("sessions"))) {
      Path walk = shipped.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow();
      Files.copy(walk, sessions.resolve("one.jsonl"));
    }
  }

  @Test
  void sheet_loadsNoCommandLineScreenOrFormatter() throws Exception {
    List<String> loaded = loaded(System.getProperty("java.class.path"));
    long lambdas = loaded.stream().filter(name -> name.contains("$$Lambda")).count();
    assertTrue(lambdas > 100 && lambdas < LAMBDAS, lambdas + " lambdas");
    assertTrue(loaded.size() < CLASSES, loaded.size() + " classes");
    assertEquals(List.of(), loaded.stream().filter(SheetEffortTest::isNotNeeded).toList());
  }

  @Test
  void keptSheet_loadsNothingThatReadsOrLaysOutAWalk_andNoLambda() throws Exception {
    String paths = jarOfTheProgram() + File.pathSeparator + System.getProperty("java.class.path");
    assertTrue(loaded(paths).contains("loadwalk.walk.FactReader"));
    List<String> loaded = loaded(paths);
    String maker = Files.readAllLines(folder.resolve("sessions").resolve(".one.sheet")).get(0);
    for (String property : List.of("java.vm.version", "os.name", "os.arch")) {
      assertTrue(maker.contains(System.getProperty(property)), maker);
    }
    assertEquals(List.of(), loaded.stream().filter(SheetEffortTest::isOwnLambda).toList());
    assertTrue(loaded.size() < CLASSES_OF_A_KEPT_SHEET, loaded.size() + " classes");
    assertEquals(
        List.of(),
        loaded.stream()
            .filter(
                name -> name.matches("(loadwalk\\.(?!app\\.|cli\\.|journal\\.Storage)|com\\.).*"))
            .toList());
  }

  /** Only a program in a jar can be told from every other build, so only its sheets are kept. */
  private Path jarOfTheProgram() throws IOException {
    Path classes = Path.of("target", "classes");
    Path jar = folder.resolve("program.jar");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
        var files = Files.walk(classes)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        out.putNextEntry(new ZipEntry(classes.relativize(file).toString().replace('\\', '/')));
        Files.copy(file, out);
        out.closeEntry();
      }
    }
    return jar;
  }

  private static boolean isOwnLambda(String name) {
    return name.startsWith("loadwalk.") && name.contains("$$Lambda");
  }

  private static boolean isNotNeeded(String name) {
    return name.matches("(picocli\\.CommandLine\\$|com\\.googlecode\\.|loadwalk\\.(tui|view)\\.).*")
        || name.equals("java.util.Formatter")
        || name.matches("loadwalk\\.forecast\\.(WalkModel|StepJudge|StandardForecaster)");
  }

  private List<String> loaded(String paths) throws IOException, InterruptedException {
    Path classes = folder.resolve("classes");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xlog:class+load:file=" + classes + ":tags",
                "-cp",
                paths,
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
