import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loadwalk.journal.Framing;
import loadwalk.journal.Recovery;

/** The rows that need no terminal. */
final class PipeRows {
  private static final int ROUNDS = 15;
  private static final int WALKS = 10_000;

  private final String java;
  private final Path target;
  private final Path work;
  private final Path source;

  PipeRows(String java, Path target, Path work, Path source) {
    this.java = java;
    this.target = target;
    this.work = work;
    this.source = source;
  }

  void sheet() throws IOException, InterruptedException {
    Path home = Files.createTempDirectory(work, "sheet");
    Path sessions = Files.createDirectories(home.resolve("sessions"));
    Files.copy(demo(source), sessions.resolve("one.jsonl"));
    String[] own = {target + "/loadwalk", "sheet", "--home", home.toString()};
    Sample sheet = new Sample();
    Sample hello = new Sample();
    for (int round = 0; round < ROUNDS; round++) {
      hello.add(run(java, "-cp", work + "/bare.jar", "Hello"));
      sheet.add(run(own));
    }
    Rows.print("loadwalk sheet in a pipe", "hello world", sheet.median(), hello.median(), "ms", "");
  }

  void ledger() throws IOException, InterruptedException {
    Path home = Files.createTempDirectory(work, "ledger");
    Path sessions = Files.createDirectories(home.resolve("sessions"));
    byte[] walk = Files.readAllBytes(demo(source));
    for (int i = 0; i < WALKS; i++) {
      String name = String.format("walk-%05d", i);
      Files.write(sessions.resolve(name + ".jsonl"), named(walk, name));
    }
    String path = work + "/classes" + File.pathSeparator + target + "/loadwalk.jar";
    String[] own = {target + "/loadwalk", "ledger", "--home", home.toString()};
    String[] stream = {java, "-cp", path, "Streaming", sessions.toString()};
    Sample first = new Sample();
    Sample again = new Sample();
    Sample streamed = new Sample();
    run(stream);
    for (int round = 0; round < ROUNDS; round++) {
      streamed.add(run(stream));
      Files.deleteIfExists(sessions.resolve(".ledger-index"));
      first.add(run(own));
      again.add(run(own));
    }
    String with = "the same bytes through Jackson's streaming parser";
    Rows.print(
        "ledger of 10,000 walks, as opened", with, again.median(), streamed.median(), "ms", "2×");
    Rows.print("the same, never opened before", with, first.median(), streamed.median(), "ms", "");
    try (var files = Files.list(sessions)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
  }

  /** The same walk under a name of its own: copies would count as one. Its records are no chain. */
  private static byte[] named(byte[] walk, String name) {
    String opening = Recovery.read(walk).records().get(0).body();
    String own = opening.replaceFirst("\"walk\":\"[^\"]*", "\"walk\":\"" + name);
    int rest = 0;
    while (walk[rest] != '\n') {
      rest++;
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(Framing.line(1, own));
    bytes.write(walk, rest + 1, walk.length - rest - 1);
    return bytes.toByteArray();
  }

  static Path demo(Path source) throws IOException {
    try (var files = Files.list(source.resolve("../../sessions"))) {
      return files.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow();
    }
  }

  /** Runs a command with its output in a pipe and returns how long it took, ms. */
  private static double run(String... command) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of(command));
    ProcessBuilder builder = new ProcessBuilder(words);
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    long start = System.nanoTime();
    Process process = builder.start();
    long read = process.getInputStream().readAllBytes().length;
    int code = process.waitFor();
    double millis = (System.nanoTime() - start) / 1e6;
    if (code != 0 || read == 0) {
      throw new IllegalStateException(words + " ended with " + code + " and " + read + " bytes");
    }
    return millis;
  }
}
