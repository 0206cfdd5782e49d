package loadwalk.shipped;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Jar and launcher alone in an empty folder, without class archive and with an empty environment,
 * on every Java that is found.
 */
class BareFolderIT {
  private static final List<String> PLACES =
      List.of("/usr/lib/jvm", "/Library/Java/JavaVirtualMachines");
  private static final int OLDEST = 17;

  @TempDir Path bare;

  /** What a command printed, and its exit code. */
  private record Ran(int code, String said) {}

  @BeforeEach
  void copyBoth() throws IOException {
    Files.copy(Shipped.jar(), bare.resolve("loadwalk.jar"));
    assertTrue(
        Files.copy(Shipped.launcher(), bare.resolve("loadwalk")).toFile().setExecutable(true));
    // So the data home is this folder and not that of whoever runs the tests.
    Files.createDirectory(bare.resolve("sequences"));
  }

  /** The Java of the tests, and every other one of this computer that is new enough. */
  private static List<Path> javas() throws IOException {
    List<Path> found = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"))));
    for (String place : PLACES) {
      if (Files.isDirectory(Path.of(place))) {
        try (Stream<Path> homes = Files.list(Path.of(place))) {
          homes
              .flatMap(home -> Stream.of(home, home.resolve("Contents/Home")))
              .filter(home -> Files.isExecutable(home.resolve("bin/java")))
              .filter(home -> version(home) >= OLDEST)
              .forEach(found::add);
        }
      }
    }
    List<Path> each = new ArrayList<>();
    for (Path home : found) {
      each.add(home.toRealPath());
    }
    return each.stream().distinct().toList();
  }

  /** Returns the first part of the version that a Java's own release file names, or 0. */
  private static int version(Path home) {
    try (Stream<String> lines = Files.lines(home.resolve("release"))) {
      return lines
          .filter(line -> line.startsWith("JAVA_VERSION="))
          .map(line -> line.replaceFirst("^[^\"]*\"(\\d+).*$", "$1"))
          .mapToInt(Integer::parseInt)
          .findFirst()
          .orElse(0);
    } catch (IOException none) {
      return 0;
    }
  }

  private Ran run(Path java, String... words) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(words).directory(bare.toFile()).redirectErrorStream(true);
    Map<String, String> environment = builder.environment();
    environment.clear();
    environment.put("PATH", java.resolve("bin") + ":/usr/bin:/bin");
    Process process = Shipped.limited(builder);
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    return new Ran(process.waitFor(), said);
  }

  private Ran launcher(Path java, String... words) throws Exception {
    return run(
        java, Stream.concat(Stream.of("./loadwalk"), Stream.of(words)).toArray(String[]::new));
  }

  private Ran jar(Path java, String... words) throws Exception {
    return run(
        java,
        Stream.concat(Stream.of("java", "-jar", "loadwalk.jar"), Stream.of(words))
            .toArray(String[]::new));
  }

  @Test
  void practiceWalk_isWalkedToASheet_whichTheJarAlonePrintsTheSame() throws Exception {
    for (Path java : javas()) {
      Ran walked = launcher(java, "walk", "full-walk", "--practice", "3", "--fill");
      assertEquals(0, walked.code(), walked.said());
      Ran sheet = launcher(java, "sheet");
      assertEquals(0, sheet.code(), sheet.said());
      assertTrue(sheet.said().contains("bridged 0.5 ohm"), sheet.said());
      assertTrue(walked.said().contains("Every step is done."), walked.said());
      assertEquals(sheet, jar(java, "sheet"));
      assertTrue(Files.exists(bare.resolve("sessions")), "the walk was kept elsewhere");
    }
  }

  @Test
  void stockSequencesTablesAndPages_areInsideTheJar() throws Exception {
    for (Path java : javas()) {
      everythingIsInside(java);
    }
  }

  private void everythingIsInside(Path java) throws Exception {
    for (String name :
        List.of(
            "full-walk", "stereo-only", "bridged-only", "rated-conditions", "low-ohm-recheck")) {
      Ran begun = jar(java, "walk", name, "--practice", "1", "--plain");
      assertTrue(begun.said().contains("Step 1 of "), begun.said());
      assertTrue(begun.said().contains(", brief: "), begun.said());
    }
    Ran page = jar(java, "sheet", "--html", "sheet.html");
    assertEquals(0, page.code(), page.said());
    String html = Files.readString(bare.resolve("sheet.html"));
    assertTrue(html.contains("<style") && html.contains("</html>"), html);
    Files.writeString(
        bare.resolve("amp.json"),
        "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"Ostwick\",\"model\":\"T"
            + " 2\",\"channels\":2,"
            + "\"ratings\":[{\"mode\":\"stereo\",\"ohms\":4,\"watts\":50}],\"fuses\":[30]}");
    Files.writeString(
        bare.resolve("bench.json"),
        "{\"format\":\"loadwalk-bench/1\",\"name\":\"Bench\",\"supplies\":[{\"volts\":13.8,"
            + "\"amps\":60}],\"leads\":[{\"label\":\"plus\",\"awg\":4,\"metres\":1},{\"label\":"
            + "\"minus\",\"awg\":4,\"metres\":1}],\"fuse\":{\"amps\":60}}");
    Ran plan = launcher(java, "plan", "stereo-only", "--amp", "amp.json", "--bench", "bench.json");
    assertEquals(3, plan.code(), plan.said());
    assertTrue(plan.said().contains("Bench plan for stereo-only"), plan.said());
  }

  @Test
  void wrongUse_endsInASentence_andItsExitCode() throws Exception {
    for (Path java : javas()) {
      for (String[] words :
          new String[][] {{"dance"}, {"sheet", "none"}, {"check", "no such file"}}) {
        Ran ran = launcher(java, words);
        assertEquals(2, ran.code(), ran.said());
        assertTrue(ran.said().contains(words[words.length - 1]), ran.said());
        assertEquals(ran, jar(java, words));
      }
    }
  }
}
