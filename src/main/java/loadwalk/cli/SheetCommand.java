package loadwalk.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the sheet of a walk. */
@Command(
    name = "sheet",
    description = "Write the sheet of a walk, finished or not.",
    mixinStandardHelpOptions = true,
    footer = "Exit codes: 0 written, 2 no such walk or a bad option, 4 a damaged journal.")
public final class SheetCommand implements Callable<Integer> {
  private final WalkShelf.Opener shelves;

  @Spec private CommandSpec spec;
  @Mixin private HomeOption home;
  @Mixin private ReportOptions outputs;

  @Parameters(
      arity = "0..1",
      paramLabel = "WALK",
      description = "The walk's name; without one, the walk changed last.")
  private String walk;

  @Option(
      names = "--show-serial",
      description = "Show the amplifier's serial number, which is kept back else.")
  private boolean showSerial;

  /** Makes the command on a shelf. */
  public SheetCommand(WalkShelf.Opener shelves) {
    this.shelves = shelves;
  }

  @Override
  public Integer call() {
    return new SheetRun(
            shelves.at(home.homeToRead()),
            Optional.ofNullable(walk),
            showSerial,
            outputs,
            spec.commandLine().getOut(),
            spec.commandLine().getErr())
        .run();
  }

  /**
   * Prints a sheet as this command without options does, but takes no command line in: reading the
   * options by reflection costs a fifth of the time.
   *
   * @return the exit code
   */
  public static int print(
      WalkShelf shelf, Optional<String> walk, PrintWriter out, PrintWriter err) {
    return new SheetRun(shelf, walk, false, new ReportOptions(), out, err).run();
  }
}
