package loadwalk.cli;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Goes on with a walk. */
@Command(
    name = "resume",
    description = "Go on with a walk, the newest open one if none is named.",
    mixinStandardHelpOptions = true)
public final class ResumeCommand implements Callable<Integer> {
  private final World world;

  @Spec private CommandSpec spec;

  @Mixin private HomeOption home;

  @Parameters(paramLabel = "WALK", arity = "0..1", description = "The name of a walk.")
  private String walk;

  @Option(names = "--plain", description = "Lines of text in place of screens.")
  private boolean plain;

  @Option(
      names = "--speed",
      paramLabel = "N",
      description = "Warm-up seconds in one second on the simulated bench, 1 to 60.")
  private Integer speed;

  /** Makes the command in a world. */
  public ResumeCommand(World world) {
    this.world = world;
  }

  @Override
  public Integer call() {
    if (speed != null && (speed < 1 || speed > WalkCommand.FASTEST)) {
      throw new ParameterException(
          spec.commandLine(),
          "--speed takes a whole number from 1 to " + WalkCommand.FASTEST + ".");
    }
    return world.resume(
        new World.Surroundings(home.homeToRead(), plain),
        Optional.ofNullable(walk),
        speed == null ? OptionalInt.empty() : OptionalInt.of(speed));
  }
}
