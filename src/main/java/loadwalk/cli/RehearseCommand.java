package loadwalk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import loadwalk.json.Fault;
import loadwalk.json.JsonText;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs walks without a screen, one JSON object a line in and out. */
@Command(
    name = "rehearse",
    description = "Run walks without a screen, from lines of JSON to lines of JSON.",
    mixinStandardHelpOptions = true)
public final class RehearseCommand implements Callable<Integer> {
  private final KeptSequences shelves;

  @Spec private CommandSpec spec;

  @Mixin private HomeOption home;

  @Option(
      names = "--sequence",
      required = true,
      paramLabel = "NAME",
      description = "The name of a sequence, or a sequence file.")
  private String sequence;

  @Option(names = "--json", description = "Taken for the sake of habit: the output is JSON.")
  private boolean json;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "Lines of JSON, - for stdin.")
  private List<String> files = List.of();

  /** Makes the command on the shelves of a data home. */
  public RehearseCommand(KeptSequences shelves) {
    this.shelves = shelves;
  }

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<Read<Sequence>> read = sequence();
    if (read.isEmpty()) {
      err.println("There is no sequence named " + sequence + ".");
      return ExitCode.BAD_INPUT;
    }
    if (read.get().found().isEmpty()) {
      read.get().faults().stream().map(Fault::text).forEach(err::println);
      return ExitCode.BAD_INPUT;
    }
    Rehearsals rehearsals =
        new Rehearsals(
            read.get().found().get(), shelves.version(), shelves.rules(home.homeToRead()));
    try (RehearsalLoop loop =
        new RehearsalLoop(rehearsals::answer, spec.commandLine().getOut(), err)) {
      for (String file : files) {
        rehearse(loop, file);
      }
      return loop.finish();
    }
  }

  private static void rehearse(RehearsalLoop loop, String file) {
    String name = file.equals("-") ? "stdin" : file;
    try (LineReader lines =
        new LineReader(file.equals("-") ? System.in : Files.newInputStream(Path.of(file)))) {
      Optional<LineReader.Line> line = lines.next();
      while (line.isPresent() && loop.isHeard()) {
        loop.add(line.get(), name);
        line = lines.next();
      }
    } catch (IOException | InvalidPathException e) {
      loop.complain(name + " cannot be read.");
    }
  }

  private Optional<Read<Sequence>> sequence() {
    Optional<Read<Sequence>> named = shelves.sequence(home.homeToRead(), sequence);
    if (named.isPresent()) {
      return named;
    }
    try {
      Path file = Path.of(sequence);
      if (!Files.isRegularFile(file)) {
        return Optional.empty();
      }
      try (InputStream in = Files.newInputStream(file)) {
        return Optional.of(SequenceReader.read(in.readNBytes(JsonText.LARGEST + 1), sequence));
      }
    } catch (IOException | InvalidPathException e) {
      return Optional.empty();
    }
  }
}
