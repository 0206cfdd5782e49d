package loadwalk.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Goes on with a walk. */
@Command(
    name = "resume",
    description = "Go on with a walk, the newest open one if none is named.",
    mixinStandardHelpOptions = true)
public final class ResumeCommand implements Callable<Integer> {
  private final World world;

  @Mixin private HomeOption home;

  @Parameters(paramLabel = "WALK", arity = "0..1", description = "The name of a walk.")
  private String walk;

  @Option(names = "--plain", description = "Lines of text in place of screens.")
  private boolean plain;

  /** Makes the command in a world. */
  public ResumeCommand(World world) {
    this.world = world;
  }

  @Override
  public Integer call() {
    return world.resume(new World.Surroundings(home.home(), plain), Optional.ofNullable(walk));
  }
}
