package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import loadwalk.json.Fault;
import loadwalk.json.Read;
import loadwalk.sequence.Sequence;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs walks without a screen, one JSON object a line in and out. */
@Command(
    name = "rehearse",
    description = "Rehearse walks without a screen: one JSON object per line in, one out.",
    mixinStandardHelpOptions = true)
public final class RehearseCommand implements Callable<Integer> {
  private final KeptSequences keptSequences;

  @Spec private CommandSpec spec;

  @Mixin private CommonOptions common;

  @Option(
      names = "--sequence",
      required = true,
      paramLabel = "NAME",
      description = "The sequence, by name, such as full-walk, or by file; needed.")
  private String sequence;

  @Option(names = "--json", description = "No effect: the output is always JSON.")
  private boolean json;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description = "A file with one JSON object per line; - is stdin.")
  private List<String> files = List.of();

  /** Makes the command on the sequences of a data home. */
  public RehearseCommand(KeptSequences keptSequences) {
    this.keptSequences = keptSequences;
  }

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    Optional<Path> home = common.homeToRead();
    Read<Sequence> read;
    try {
      read = keptSequences.sequence(home, sequence);
    } catch (BadInput none) {
      err.println(none.getMessage());
      return ExitCode.BAD_INPUT;
    }
    if (read.found().isEmpty()) {
      read.faults().stream().map(Fault::text).forEach(err::println);
      return ExitCode.BAD_INPUT;
    }
    Rehearsals rehearsals =
        new Rehearsals(read.found().get(), keptSequences.version(), keptSequences.rules(home));
    try (RehearsalLoop loop =
        new RehearsalLoop(rehearsals::answer, spec.commandLine().getOut(), err)) {
      for (String file : files) {
        rehearse(loop, file);
      }
      return loop.finish();
    }
  }

  private static void rehearse(RehearsalLoop loop, String file) {
    String name = InputFile.shown(file);
    try (LineReader lines = new LineReader(InputFile.opened(file))) {
      Optional<LineReader.Line> line = lines.next();
      while (line.isPresent() && loop.isHeard()) {
        loop.add(line.get(), name);
        line = lines.next();
      }
    } catch (InputFile.NoPlainFile e) {
      loop.complain(Sentence.of("{}: {}.", Visible.line(name, 300), e.getMessage()));
    } catch (IOException | InvalidPathException e) {
      loop.complain(Sentence.of("{} cannot be read.", Visible.line(name, 300)));
    }
  }
}
