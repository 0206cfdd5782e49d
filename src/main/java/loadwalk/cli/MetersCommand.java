package loadwalk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchReader;
import loadwalk.bench.BenchWriter;
import loadwalk.json.Fault;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.json.Read;
import loadwalk.meter.MeterReading;
import picocli.CommandLine.Command;
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
  private static final Format OUTPUT = new Format("meters", 1);

  private final MeterRoom room;

  @Spec private CommandSpec spec;

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
      names = "--faults",
      paramLabel = "SEED",
      description = "Let the served meters fail now and then.")
  private Long faults;

  @Option(names = "--json", description = "Print the result as JSON.")
  private boolean json;

  /** Makes the command with what it asks. */
  public MetersCommand(MeterRoom room) {
    this.room = room;
  }

  @Override
  public Integer call() throws IOException {
    if ((bench == null) == (practice == null)) {
      throw wrong("meters takes either --bench FILE or --practice");
    }
    if (faults != null && practice == null) {
      throw wrong("--faults is for the meters that --practice serves");
    }
    return practice == null ? tried() : served();
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
    List<MeterRoom.Tried> all = room.tryAll(read.get());
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
    try {
      Read<Bench> read = BenchReader.read(Files.readAllBytes(bench), bench.toString());
      for (Fault fault : read.faults()) {
        err.println(fault);
      }
      return read.found();
    } catch (IOException e) {
      err.println(bench + " cannot be read.");
      return Optional.empty();
    }
  }

  private static void print(PrintWriter out, MeterRoom.Tried tried) {
    out.println(tried.meter().label() + ", reads the " + tried.meter().reads().label());
    if (tried.meter().connection().isEmpty()) {
      out.println("  read by eye; the bench names no connection");
      return;
    }
    var by = tried.meter().connection().get();
    out.println("  " + by.line().text() + "  " + by.query());
    out.println("  says it is: " + tried.identity().map(i -> i.text()).orElse("nothing"));
    MeterReading reading = tried.reading().orElseThrow();
    String said = reading.refusal("the meter");
    boolean value = reading instanceof MeterReading.Value;
    out.println(
        "  answers: "
            + (value
                ? reading.words() + "  (" + ((MeterReading.Value) reading).raw() + ")"
                : said));
  }

  private static void write(JsonGenerator out, List<MeterRoom.Tried> all) throws IOException {
    out.writeStartObject();
    out.writeStringField(Format.KEY, OUTPUT.text());
    out.writeArrayFieldStart("meters");
    for (MeterRoom.Tried tried : all) {
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
    if (reading instanceof MeterReading.Value value) {
      JsonOut.number(out, "value", value.value());
      out.writeStringField("raw", value.raw());
    } else {
      out.writeStringField("problem", reading.refusal("the meter"));
    }
  }

  /** Prints the bench with its connections, ready to be kept as a file, and serves it. */
  private int served() throws IOException {
    OptionalLong faultSeed = faults == null ? OptionalLong.empty() : OptionalLong.of(faults);
    MeterRoom.Served served = room.serve(practice, faultSeed);
    try {
      PrintWriter out = spec.commandLine().getOut();
      out.print(BenchWriter.text(served.bench()));
      out.flush();
      spec.commandLine()
          .getErr()
          .println(
              "Simulated meters answer until the input ends. Keep the text above as a file, then:"
                  + " loadwalk meters --bench FILE");
      spec.commandLine().getErr().flush();
      while (System.in.read() >= 0) {
        continue;
      }
    } finally {
      served.end().close();
    }
    return ExitCode.DONE;
  }
}
