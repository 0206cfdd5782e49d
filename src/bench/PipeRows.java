import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loadwalk.numeric.MonteCarlo;

/** The rows that need no terminal. */
final class PipeRows {
  private static final int ROUNDS = 15;
  private static final int WALKS = 10_000;
  private static final int TRIALS = 1_000_000;

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
    Sample again = new Sample();
    Sample first = new Sample();
    Sample hello = new Sample();
    for (int round = 0; round < ROUNDS; round++) {
      hello.add(run(java, "-cp", work + "/bare.jar", "Hello"));
      Files.deleteIfExists(sessions.resolve(".one.sheet"));
      first.add(run(own));
      if (!Files.exists(sessions.resolve(".one.sheet"))) {
        throw new IllegalStateException("the sheet was not kept");
      }
      again.add(run(own));
    }
    String what = "loadwalk sheet in a pipe, printed before from the same journal";
    Rows.print(what, "hello world", again.median(), hello.median(), "ms", "2.5×");
    Rows.print("the same, for the first time", "hello world", first.median(), hello.median(), "ms", "");
  }

  void ledger() throws IOException, InterruptedException {
    Path home = Files.createTempDirectory(work, "ledger");
    Path sessions = Files.createDirectories(home.resolve("sessions"));
    byte[] walk = Files.readAllBytes(demo(source));
    for (int i = 0; i < WALKS; i++) {
      Files.write(sessions.resolve(String.format("walk-%05d.jsonl", i)), walk);
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
    Rows.print(
        "the same, never opened before", with, first.median(), streamed.median(), "ms", "");
    try (var files = Files.list(sessions)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
  }

  void trials() throws IOException, InterruptedException {
    Process numpy =
        new ProcessBuilder("python3", source + "/trials.py", String.valueOf(TRIALS)).start();
    Sample own = new Sample();
    Sample other = new Sample();
    try (BufferedReader said = numpy.inputReader();
        PrintWriter ask = new PrintWriter(numpy.outputWriter(), true)) {
      if (!"ready".equals(said.readLine())) {
        System.out.println("| Monte Carlo | numpy is not on this machine | | | | 1× |");
        return;
      }
      for (int round = -3; round < ROUNDS; round++) {
        double ownMillis = trial(round);
        ask.println(round);
        double otherMillis = Double.parseDouble(said.readLine());
        if (round >= 0) {
          own.add(ownMillis);
          other.add(otherMillis);
        }
      }
    }
    Rows.print(
        "Monte Carlo, 10⁶ trials of one step", "the same in numpy",
        own.median(), other.median(), "ms", "1×");
  }

  /** The power of one step: volts read by a meter with limits, over a resistor known by a few. */
  private static double trial(int seed) {
    List<MonteCarlo.Input> inputs =
        List.of(
            new MonteCarlo.Normal(17.9, 0.02),
            new MonteCarlo.Rectangular(0, 0.1),
            new MonteCarlo.Normal(4.02, 0.012));
    long start = System.nanoTime();
    MonteCarlo result =
        MonteCarlo.of(x -> (x[0] + x[1]) * (x[0] + x[1]) / x[2], inputs, TRIALS, seed, 0.95);
    double millis = (System.nanoTime() - start) / 1e6;
    if (Math.abs(result.mean() - 79.7) > 0.2) {
      throw new IllegalStateException("the trials are wrong: mean " + result.mean());
    }
    return millis;
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
