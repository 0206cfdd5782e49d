package loadwalk.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The command without a word behind it: the home screen. */
@Command(
    name = "loadwalk",
    description = "Walks car amplifiers down a ladder of loads and says what they really deliver.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:a fault of Loadwalk",
      "2:bad usage or input",
      "3:held by a halt or a doubt without an answer",
      "4:a damaged journal"
    })
public final class Loadwalk implements Callable<Integer> {
  private final World world;

  @Mixin private HomeOption home;

  @Option(names = "--plain", description = "Lines of text in place of screens.")
  private boolean plain;

  /** Makes the command in a world. */
  public Loadwalk(World world) {
    this.world = world;
  }

  @Override
  public Integer call() {
    return world.home(new World.Surroundings(home.home(), plain));
  }
}
