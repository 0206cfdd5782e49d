package loadwalk.disk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import loadwalk.app.Child;

/**
 * Runs the program under strace, which writes down each call and can make one fail.
 *
 * @param watched the folder whose files are watched; the data home is {@code home} in it
 */
record Tracer(Path watched) {
  private static final String CALLS =
      "openat,write,pwrite64,ftruncate,rename,unlink,fsync,fdatasync,mkdir";

  /**
   * What came of one run.
   *
   * @param calls what was asked of the system, in order
   * @param said what the program printed
   * @param complained what it printed to its error output
   * @param code its exit code
   */
  record Run(List<Call> calls, String said, String complained, int code) {
    /** Returns the calls of the watched files in words, what is said in between once. */
    List<String> words() {
      List<String> words = new ArrayList<>();
      for (Call call : calls) {
        boolean again =
            call.is(Call.Kind.SAY) && words.size() > 0 && words.get(words.size() - 1).equals("say");
        if (!again) {
          words.add(call.words());
        }
      }
      return words;
    }

    @Override
    public String toString() {
      return "exit code " + code + "\n" + said + complained + String.join("\n", words());
    }
  }

  Path home() {
    return watched.resolve("home");
  }

  /** Runs a command to its end with all that is typed at its input. */
  Run run(String typed, String... arguments) throws IOException, InterruptedException {
    return failing(List.of(), typed, arguments);
  }

  /**
   * Runs a command while calls fail.
   *
   * @param faults which, as in {@code fsync:error=EIO:when=3}
   */
  Run failing(List<String> faults, String typed, String... arguments)
      throws IOException, InterruptedException {
    Path aside = Files.createTempDirectory("traced");
    Path trace = aside.resolve("trace");
    Path said = aside.resolve("out");
    Path complained = aside.resolve("err");
    Path input = Files.writeString(aside.resolve("in"), typed);
    TraceReader reader = new TraceReader(watched, Before.of(watched));
    ProcessBuilder builder = new ProcessBuilder(command(trace, faults, arguments));
    builder.redirectInput(input.toFile()).redirectOutput(said.toFile());
    builder.redirectError(complained.toFile()).environment().put("LC_ALL", "C.UTF-8");
    builder.environment().keySet().removeAll(List.of("JDK_JAVA_OPTIONS", "JAVA_TOOL_OPTIONS"));
    int code = ended(builder.start());
    try (var lines = Files.lines(trace, UTF_8)) {
      lines.forEach(reader::line);
    }
    Run run = new Run(reader.calls(), Files.readString(said), Files.readString(complained), code);
    for (Path file : List.of(trace, input, said, complained, aside)) {
      Files.delete(file);
    }
    return run;
  }

  private List<String> command(Path trace, List<String> faults, String... arguments) {
    List<String> words =
        new ArrayList<>(List.of("strace", "-f", "-y", "-xx", "-s", "100000000", "--seccomp-bpf"));
    words.addAll(List.of("-e", "signal=none", "-e", "trace=" + CALLS, "-o", trace.toString()));
    faults.forEach(fault -> words.addAll(List.of("-e", "inject=" + fault)));
    List<String> program = Child.command(home(), arguments);
    words.add(program.get(0));
    // Its file of counters would be among the calls.
    words.add("-XX:-UsePerfData");
    words.addAll(program.subList(1, program.size()));
    return words;
  }

  private static int ended(Process process) throws InterruptedException {
    if (!process.waitFor(5, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError("not within five minutes: " + process.info());
    }
    return process.exitValue();
  }
}
