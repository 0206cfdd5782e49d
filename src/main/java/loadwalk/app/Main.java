package loadwalk.app;

import java.util.Optional;
import loadwalk.cli.CheckCommand;
import loadwalk.cli.Loadwalk;
import loadwalk.cli.ResumeCommand;
import loadwalk.cli.WalkCommand;
import loadwalk.cli.World;
import picocli.CommandLine;

/** Starts Loadwalk. */
public final class Main {
  private Main() {}

  /**
   * Runs the command named by the arguments; without any, the home screen.
   *
   * @param arguments the words after {@code loadwalk}
   */
  public static void main(String[] arguments) {
    System.exit(run(arguments));
  }

  static int run(String... arguments) {
    Machine machine = new Machine();
    if (arguments.length == 0) {
      // The way to the first frame is kept free of the command line's reflection.
      return machine.home(new World.Surroundings(Optional.empty(), false));
    }
    return commands(machine).execute(arguments);
  }

  private static CommandLine commands(Machine machine) {
    return new CommandLine(new Loadwalk(machine))
        .addSubcommand(new WalkCommand(machine))
        .addSubcommand(new ResumeCommand(machine))
        .addSubcommand(new CheckCommand());
  }
}
