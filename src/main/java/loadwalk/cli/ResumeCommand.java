package loadwalk.cli;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import loadwalk.text.Sentence;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Resumes a walk. */
@Command(
    name = "resume",
    description = "Resume a walk; with no name, the newest open one.",
    mixinStandardHelpOptions = true)
public final class ResumeCommand implements Callable<Integer> {
  private final World world;

  @Spec private CommandSpec spec;

  @Mixin private CommonOptions common;

  @Parameters(
      paramLabel = "WALK",
      arity = "0..1",
      description = "The walk: its name, the start of it, or the path of its journal.")
  private String walk;

  @Option(names = "--plain", description = "Use lines of text instead of screens.")
  private boolean plain;

  @Option(
      names = "--speed",
      paramLabel = "N",
      description = "Practice bench: warm-up seconds that pass in one second, 1 to 60.")
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
          Sentence.of("--speed takes a whole number from 1 to {}.", WalkCommand.FASTEST));
    }
    return world.resume(
        new World.Surroundings(common.homeToRead(), plain),
        Optional.ofNullable(walk),
        speed == null ? OptionalInt.empty() : OptionalInt.of(speed));
  }
}
