package loadwalk.faults;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What came of tests that ran in a virtual machine of their own.
 *
 * @param lines what {@link TestChild} wrote
 * @param seconds from the start of the machine to its end
 */
record TestRun(List<String> lines, double seconds) {
  private static final int SECONDS_A_TEST = 120;

  TestRun {
    lines = List.copyOf(lines);
  }

  /** Runs stages of tests until one fails; what the tests print goes to a file. */
  static TestRun of(WorkCopy copy, List<String> stages, Path log) throws IOException {
    StandIn.into(copy);
    Path report = Files.createTempFile(copy.root().resolve("target"), "report", ".txt");
    String classPath =
        copy.classPath().stream()
            .map(Path::toString)
            .collect(Collectors.joining(File.pathSeparator));
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx1g"));
    command.addAll(List.of("-Duser.timezone=UTC", "-XX:+ExitOnOutOfMemoryError"));
    command.addAll(List.of("-cp", classPath, TestChild.class.getName()));
    command.addAll(
        List.of(report.toString(), copy.root().resolve("target/test-classes").toString()));
    command.add(Integer.toString(SECONDS_A_TEST));
    command.addAll(stages);
    long start = System.nanoTime();
    Process child =
        new ProcessBuilder(command)
            .directory(copy.root().toFile())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    try {
      child.waitFor();
    } catch (InterruptedException e) {
      child.destroyForcibly();
      throw new IOException(e);
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    return new TestRun(Files.readAllLines(report), seconds);
  }

  /** Returns the first test that failed, {@code loadwalk.plan.LeadTest#method}. */
  Optional<String> failed() {
    return after("failed ");
  }

  /** Returns the test that went on for too long. */
  Optional<String> hung() {
    return after("hung ");
  }

  boolean ended() {
    return lines.contains("ended");
  }

  boolean passed(String testClass) {
    String line = "passed " + testClass;
    return lines.stream().anyMatch(l -> l.equals(line) || l.startsWith(line + "$"));
  }

  private Optional<String> after(String start) {
    return lines.stream()
        .filter(line -> line.startsWith(start))
        .map(line -> line.substring(start.length()))
        .findFirst();
  }
}
