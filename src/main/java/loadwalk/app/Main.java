package loadwalk.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import loadwalk.app.loop.Clocks;
import loadwalk.app.loop.HarmlessWriter;
import loadwalk.app.loop.StandardInput;
import loadwalk.app.loop.StandardOutput;
import loadwalk.app.meter.MeterTrial;
import loadwalk.app.meter.Port;
import loadwalk.app.sound.SoundOutput;
import loadwalk.app.store.DataHome;
import loadwalk.app.store.KeptWalksOnDisk;
import loadwalk.app.store.LocaleLetters;
import loadwalk.cli.BadInput;
import loadwalk.cli.CheckCommand;
import loadwalk.cli.ExitCode;
import loadwalk.cli.LedgerCommand;
import loadwalk.cli.Loadwalk;
import loadwalk.cli.MetersCommand;
import loadwalk.cli.PlanCommand;
import loadwalk.cli.RehearseCommand;
import loadwalk.cli.ReplayCommand;
import loadwalk.cli.ResumeCommand;
import loadwalk.cli.SheetCommand;
import loadwalk.cli.ToneCommand;
import loadwalk.cli.WalkCommand;
import loadwalk.cli.WaveCommand;
import loadwalk.cli.World;
import loadwalk.cli.WrongUsage;
import loadwalk.text.Sentence;
import picocli.CommandLine;

/** Starts Loadwalk. */
public final class Main {
  static final List<String> COMMANDS =
      List.of(
          "walk",
          "resume",
          "rehearse",
          "plan",
          "meters",
          "sheet",
          "ledger",
          "tone",
          "wave",
          "replay",
          "check");

  /** All output goes through this one, so that a failed write is known. */
  static final StandardOutput OUT = new StandardOutput();

  private Main() {}

  /**
   * Runs the command named by the arguments; without any, the home screen.
   *
   * @param arguments the words after {@code loadwalk}
   */
  public static void main(String[] arguments) {
    StandardInput.guard();
    int code = run(arguments);
    Optional<String> lost = OUT.lost();
    if (lost.isPresent()) {
      code = unwritten(code, lost.get(), err(isAscii(arguments)));
    }
    // All is closed and flushed by now. System.exit would, on newer Javas, set up logging to tell
    // of it, which takes time.
    Runtime.getRuntime().halt(code);
  }

  /** Tells that a command's output was not written whole, and returns its exit code. */
  public static int unwritten(int code, String lost, PrintWriter err) {
    err.println(lost);
    return code == ExitCode.DONE ? ExitCode.BAD_INPUT : code;
  }

  /** Runs a command and returns its exit code; what escapes it is reported, never thrown. */
  public static int run(String... arguments) {
    try {
      List.of(arguments).forEach(LocaleLetters::require);
      if (home(arguments).filter(named -> !named.isAbsolute()).isPresent()) {
        LocaleLetters.require(System.getProperty("user.dir", ""));
      }
      boolean ascii = isAscii(arguments);
      ProgramStarter machine = new ProgramStarter(ascii);
      if (arguments.length == 0) {
        // The way to the first frame is kept free of the command line's reflection.
        return machine.home(new World.Surroundings(Optional.empty(), false));
      }
      List<String> words = ArgumentOrder.commandFirst(List.of(arguments), COMMANDS);
      if (ascii) {
        words = AsciiWanted.added(words, COMMANDS.contains(words.get(0)));
      }
      return commands(machine, words, err(ascii))
          .setParameterExceptionHandler(WrongUsage::told)
          .setExecutionExceptionHandler((fault, line, parsed) -> crashed(fault, arguments))
          .execute(words.toArray(String[]::new));
    } catch (RuntimeException | Error fault) {
      return crashed(fault, arguments);
    }
  }

  /** Setting up a command takes time, so only the one that is named is set up. */
  private static CommandLine commands(ProgramStarter machine, List<String> words, PrintWriter err) {
    CommandLine line = new CommandLine(new Loadwalk(machine));
    String first = words.get(0);
    for (String name : COMMANDS.contains(first) ? List.of(first) : COMMANDS) {
      line.addSubcommand(command(name, machine));
    }
    String version = Sentence.of("Loadwalk {}", CrashReport.Machine.ofThisProcess().version());
    line.getCommandSpec().version(version);
    for (CommandLine command : line.getSubcommands().values()) {
      command.getCommandSpec().version(version).usageMessage().abbreviateSynopsis(true);
    }
    return line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setOut(harmless(OUT, false))
        .setErr(err);
  }

  private static Object command(String name, ProgramStarter machine) {
    return switch (name) {
      case "walk" -> new WalkCommand(machine);
      case "resume" -> new ResumeCommand(machine);
      case "rehearse" -> new RehearseCommand(new KeptSequencesOnDisk());
      case "plan" -> new PlanCommand(new KeptSequencesOnDisk());
      case "meters" -> new MetersCommand(new MeterTrial(Port.OF_MACHINE, Clocks.MACHINE));
      case "sheet" -> new SheetCommand(KeptWalksOnDisk::at);
      case "ledger" -> new LedgerCommand(KeptWalksOnDisk::at);
      case "tone" -> new ToneCommand(SoundOutput::open, new PrintStream(OUT));
      case "wave" -> new WaveCommand();
      case "replay" -> new ReplayCommand(KeptWalksOnDisk::at);
      case "check" -> new CheckCommand();
      default -> throw new IllegalArgumentException("no command is named " + name);
    };
  }

  private static boolean isAscii(String... arguments) {
    return AsciiWanted.in(List.of(arguments), System.getenv());
  }

  /** Returns where complaints go. */
  static PrintWriter err(boolean ascii) {
    return harmless(new FileOutputStream(FileDescriptor.err), ascii);
  }

  /**
   * Writes text in which nothing steers a terminal, UTF-8 whatever the locale: what a command
   * prints may be for programs, so the command puts into ASCII what is for people.
   */
  private static PrintWriter harmless(OutputStream out, boolean ascii) {
    return new PrintWriter(
        new HarmlessWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), ascii), true);
  }

  private static DataHome dataHome(Optional<Path> named) {
    return DataHome.choose(DataHome.Surroundings.ofThisProcess(named));
  }

  /** Reports a fault in a file and one sentence; returns the exit code. */
  public static int crashed(Throwable fault, String... arguments) {
    PrintWriter err = err(isAscii(arguments));
    if (fault instanceof BadInput) {
      err.println(fault.getMessage());
      return ExitCode.BAD_INPUT;
    }
    CrashReport.Machine machine = CrashReport.Machine.ofThisProcess();
    Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
    DataHome home = home(temporary, arguments);
    err.println(new CrashReport(fault, Instant.now(), machine).write(home, temporary));
    return ExitCode.FAULT;
  }

  private static DataHome home(Path otherwise, String... arguments) {
    try {
      return dataHome(home(arguments));
    } catch (BadInput unwritable) {
      return new DataHome(otherwise);
    }
  }

  /** Looks {@code --home} up by hand, as the command line may be what failed. */
  private static Optional<Path> home(String... arguments) {
    for (int at = 0; at < arguments.length; at++) {
      boolean joined = arguments[at].startsWith(ArgumentOrder.HOME + "=");
      if (joined || arguments[at].equals(ArgumentOrder.HOME) && at + 1 < arguments.length) {
        return path(
            joined ? arguments[at].substring(ArgumentOrder.HOME.length() + 1) : arguments[at + 1]);
      }
    }
    return Optional.empty();
  }

  private static Optional<Path> path(String text) {
    try {
      return Optional.of(Path.of(text));
    } catch (InvalidPathException noPath) {
      return Optional.empty();
    }
  }
}
