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
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.json.Fault;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.json.Read;
import loadwalk.meter.Identity;
import loadwalk.meter.MeterReading;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Lists the meters of a bench and what each answers, or serves those of the practice bench. */
@Command(
    name = "meters",
    description = "List the meters of a bench and what each answers, or serve practice meters.",
    mixinStandardHelpOptions = true,
    footer =
        "Exit codes: 0 done, 2 bad usage or input, a disk that fails, or a meter that does not"
            + " answer.")
public final class MetersCommand implements Callable<Integer> {
  /** The bench files that the program carries with it. */
  static final List<String> EXAMPLES =
      List.of("net-multimeter", "serial-clamp", "two-channel-multimeter");

  private static final String THE_METER = "the meter";
  private static final Format OUTPUT = new Format("meters", 1);

  private final MeterPort room;

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions common;

  @Option(names = "--bench", paramLabel = "FILE", description = "The bench file.")
  private Path bench;

  @Option(
      names = "--practice",
      arity = "0..1",
      fallbackValue = "1",
      paramLabel = "SEED",
      description = "Serve the meters of the practice bench until the input ends.")
  private Long practice;

  @Option(
      names = "--keep",
      paramLabel = "DIR",
      description = "Write practice-amp.json and practice-bench.json to this folder, for a walk.")
  private Path keep;

  @Option(
      names = "--example",
      arity = "0..1",
      fallbackValue = "",
      paramLabel = "NAME",
      description =
          "Print an example bench file with connected meters; with no name, list the examples.")
  private String example;

  @Option(
      names = "--faults",
      paramLabel = "SEED",
      description = "Make the practice meters fail now and then.")
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
      throw wrong("Give one of --bench FILE, --practice or --example.");
    }
    if (faults != null && practice == null) {
      throw wrong("--faults needs --practice.");
    }
    if (keep != null && practice == null) {
      throw wrong("--keep needs --practice.");
    }
    if (keep != null && !Files.isDirectory(keep)) {
      throw wrong(Sentence.of("There is no folder {}.", keep));
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
      throw wrong(
          Sentence.of(
              "There is no example named {}; there are {}.",
              Visible.quoted(example),
              String.join(", ", EXAMPLES)));
    }
    String resource = "/loadwalk/benches/" + example + ".json";
    try (InputStream in = MetersCommand.class.getResourceAsStream(resource)) {
      out.print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      out.flush();
    }
    return ExitCode.DONE;
  }

  private ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
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
      out.println("The bench file names no meters.");
    } else {
      all.forEach(tried -> print(out, tried));
    }
    out.flush();
    return all.stream().allMatch(MetersCommand::isAnswered) ? ExitCode.DONE : ExitCode.BAD_INPUT;
  }

  /** An overload or a value that is held is an answer; a meter read by eye owes none. */
  private static boolean isAnswered(MeterPort.Tried tried) {
    return tried.reading().map(MeterReading::isAnswer).orElse(true);
  }

  private Optional<Bench> read() {
    PrintWriter err = spec.commandLine().getErr();
    Read<Bench> read = InputFile.read(bench.toString(), BenchFiles.BENCH::read);
    for (Fault fault : read.faults()) {
      err.println(fault.text());
    }
    return read.found();
  }

  private void print(PrintWriter out, MeterPort.Tried tried) {
    lines(tried).forEach(line -> out.println(common.text(line)));
  }

  private static List<String> lines(MeterPort.Tried tried) {
    Meter meter = tried.meter();
    String reads = Sentence.of("{}, reads the {}", meter.label(), meter.reads().label());
    if (meter.connection().isEmpty()) {
      return List.of(reads, "  read by eye; no connection in the bench file");
    }
    Connection by = meter.connection().get();
    MeterReading reading = tried.reading().orElseThrow();
    return List.of(
        reads,
        "  " + by.line().text() + "  " + by.query(),
        Sentence.of("  identity: {}", tried.identity().map(Identity::text).orElse("none")),
        Sentence.of(
            "  answer: {}",
            reading
                .fresh()
                .map(v -> v.words(meter.resolution()) + "  (" + v.raw() + ")")
                .orElseGet(() -> reading.refusal(THE_METER))));
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
      out.writeStringField("problem", reading.refusal(THE_METER));
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
          "Practice meters answer until the input ends. Save the text above as a file, then run:"
              + " loadwalk meters --bench FILE");
    } else {
      Path amp = keep.resolve("practice-amp.json");
      Path file = keep.resolve("practice-bench.json");
      Destination.write(amp.toString(), BenchFiles.AMPLIFIER.text(served.amplifier()), err);
      Destination.write(file.toString(), BenchFiles.BENCH.text(served.bench()), err);
      err.println("Practice meters answer until the input ends. In another terminal run:");
      err.println(Sentence.of("loadwalk walk stereo-only --amp {} --bench {}", amp, file));
    }
    err.println("Type here what is connected: stereo 2, bridged 4, open, idle, overload.");
    err.flush();
  }
}
