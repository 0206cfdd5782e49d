package loadwalk.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Opens the home screen: the program name with no command. */
@Command(
    name = "loadwalk",
    description = {
      "Walk a car amplifier down a ladder of loads and see what it really delivers.",
      "With no command, Loadwalk opens its home screen."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:a fault of Loadwalk",
      "2:bad usage or input, or a disk that fails",
      "3:held: a halt, or a doubt with no answer",
      "4:a damaged journal"
    })
public final class Loadwalk implements Callable<Integer> {
  private final World world;

  @Mixin private CommonOptions common;

  @Option(names = "--plain", description = "Use lines of text instead of screens.")
  private boolean plain;

  /** Makes the command in a world. */
  public Loadwalk(World world) {
    this.world = world;
  }

  @Override
  public Integer call() {
    return world.home(new World.Surroundings(common.home(), plain));
  }
}
