package loadwalk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.json.Fault;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.json.JsonText;
import loadwalk.json.Read;
import loadwalk.meter.MeterReading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Lists the meters of a bench and what each answers, or serves those of the practice bench. */
@Command(
    name = "meters",
    description = "List a bench's meters and what each answers, or serve practice meters.",
    mixinStandardHelpOptions = true)
public final class MetersCommand implements Callable<Integer> {
  /** The bench files that the program carries with it. */
  static final List<String> EXAMPLES =
      List.of("net-multimeter", "serial-clamp", "two-channel-multimeter");

  private static final Format OUTPUT = new Format("meters", 1);

  private final MeterPort room;

  @Spec private CommandSpec spec;
  @Mixin private HomeOption home;

  @Option(names = "--bench", paramLabel = "FILE", description = "The bench's file.")
  private Path bench;

  @Option(
      names = "--practice",
      arity = "0..1",
      fallbackValue = "1",
      paramLabel = "SEED",
      description = "Serve the practice bench's meters until the input ends.")
  private Long practice;

  @Option(
      names = "--keep",
      paramLabel = "DIR",
      description = "Keep practice-amp.json and practice-bench.json there for a walk.")
  private Path keep;

  @Option(
      names = "--example",
      arity = "0..1",
      fallbackValue = "",
      paramLabel = "NAME",
      description = "Print a bench file with connected meters to start from; their names without.")
  private String example;

  @Option(
      names = "--faults",
      paramLabel = "SEED",
      description = "Let the served meters fail now and then.")
  private Long faults;

  @Option(names = "--json", description = "Print the result as JSON.")
  private boolean json;

  /** Makes the command with what it asks. */
  public MetersCommand(MeterPort room) {
    this.room = room;
  }

  @Override
  public Integer call() throws IOException {
    if (Stream.of(bench, practice, example).filter(Objects::nonNull).count() != 1) {
      throw wrong("meters takes one of --bench FILE, --practice and --example");
    }
    if (faults != null && practice == null) {
      throw wrong("--faults is for the meters that --practice serves");
    }
    if (keep != null && practice == null) {
      throw wrong("--keep is for the files of --practice");
    }
    if (keep != null && !Files.isDirectory(keep)) {
      throw wrong("There is no folder " + keep);
    }
    if (example != null) {
      return exampleShown();
    }
    return practice == null ? tried() : served();
  }

  private int exampleShown() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    if (example.isEmpty()) {
      EXAMPLES.forEach(out::println);
      return ExitCode.DONE;
    }
    if (!EXAMPLES.contains(example)) {
      throw wrong("There is no example «" + example + "», only " + String.join(", ", EXAMPLES));
    }
    String resource = "/loadwalk/benches/" + example + ".json";
    try (InputStream in = MetersCommand.class.getResourceAsStream(resource)) {
      out.print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      out.flush();
    }
    return ExitCode.DONE;
  }

  private ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence + ".");
  }

  private int tried() {
    Optional<Bench> read = read();
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    PrintWriter out = spec.commandLine().getOut();
    List<MeterPort.Tried> all = room.tryAll(read.get());
    if (json) {
      out.println(JsonOut.line(generator -> write(generator, all)));
    } else if (all.isEmpty()) {
      out.println("The bench names no meters.");
    } else {
      all.forEach(tried -> print(out, tried));
    }
    out.flush();
    return ExitCode.DONE;
  }

  private Optional<Bench> read() {
    PrintWriter err = spec.commandLine().getErr();
    try (InputStream in = Files.newInputStream(bench)) {
      Read<Bench> read =
          BenchFiles.BENCH.read(in.readNBytes(JsonText.LARGEST + 1), bench.toString());
      for (Fault fault : read.faults()) {
        err.println(fault.text());
      }
      return read.found();
    } catch (IOException e) {
      err.println(bench + " cannot be read.");
      return Optional.empty();
    }
  }

  private static void print(PrintWriter out, MeterPort.Tried tried) {
    out.println(tried.meter().label() + ", reads the " + tried.meter().reads().label());
    if (tried.meter().connection().isEmpty()) {
      out.println("  read by eye; the bench names no connection");
      return;
    }
    var by = tried.meter().connection().get();
    out.println("  " + by.line().text() + "  " + by.query());
    out.println("  says it is: " + tried.identity().map(i -> i.text()).orElse("nothing"));
    MeterReading reading = tried.reading().orElseThrow();
    String said =
        reading
            .fresh()
            .map(v -> v.words(tried.meter().resolution()) + "  (" + v.raw() + ")")
            .orElseGet(() -> reading.refusal("the meter"));
    out.println("  answers: " + said);
  }

  private static void write(JsonGenerator out, List<MeterPort.Tried> all) throws IOException {
    out.writeStartObject();
    out.writeStringField(Format.KEY, OUTPUT.text());
    out.writeArrayFieldStart("meters");
    for (MeterPort.Tried tried : all) {
      out.writeStartObject();
      out.writeStringField("label", tried.meter().label());
      out.writeStringField("reads", tried.meter().reads().key());
      if (tried.meter().connection().isPresent()) {
        out.writeStringField("line", tried.meter().connection().get().line().text());
        out.writeStringField("query", tried.meter().connection().get().query());
      }
      if (tried.identity().isPresent()) {
        out.writeStringField("identity", tried.identity().get().text());
      }
      if (tried.reading().isPresent()) {
        writeReading(out, tried.reading().get());
      }
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void writeReading(JsonGenerator out, MeterReading reading) throws IOException {
    Optional<MeterReading.Value> value = reading.fresh();
    if (value.isPresent()) {
      JsonOut.number(out, "value", value.get().value());
      out.writeStringField("raw", value.get().raw());
    } else {
      out.writeStringField("problem", reading.refusal("the meter"));
    }
  }

  /** Serves the practice bench; every line typed says what stands on it from then on. */
  private int served() throws IOException {
    OptionalLong faultSeed = faults == null ? OptionalLong.empty() : OptionalLong.of(faults);
    MeterPort.Served served = room.serve(practice, faultSeed);
    PrintWriter err = spec.commandLine().getErr();
    try {
      hand(served, err);
      BufferedReader typed =
          new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
      for (String line = typed.readLine(); line != null; line = typed.readLine()) {
        if (!line.isBlank()) {
          err.println(served.setting().apply(line));
          err.flush();
        }
      }
    } finally {
      served.end().close();
    }
    return ExitCode.DONE;
  }

  /** Hands the bench over, as text or as files ready for a walk, and says how to go on. */
  private void hand(MeterPort.Served served, PrintWriter err) throws IOException {
    if (keep == null) {
      PrintWriter out = spec.commandLine().getOut();
      out.print(BenchFiles.BENCH.text(served.bench()));
      out.flush();
      err.println(
          "Simulated meters answer until the input ends. Keep the text above as a file, then:"
              + " loadwalk meters --bench FILE");
    } else {
      Path amp = keep.resolve("practice-amp.json");
      Path file = keep.resolve("practice-bench.json");
      Destination.write(amp.toString(), BenchFiles.AMPLIFIER.text(served.amplifier()), err);
      Destination.write(file.toString(), BenchFiles.BENCH.text(served.bench()), err);
      err.println("Simulated meters answer until the input ends. In another terminal:");
      err.println("loadwalk walk stereo-only --amp " + amp + " --bench " + file);
    }
    err.println("Lines typed here set the bench: stereo 2, bridged 4, open, idle, overload.");
    err.flush();
  }
}
