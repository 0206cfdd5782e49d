package loadwalk.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import loadwalk.walk.fact.Fact;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a walk. */
@Command(name = "walk", description = "Start a walk.", mixinStandardHelpOptions = true)
public final class WalkCommand implements Callable<Integer> {
  private static final long FIRST_SEED = 1;
  static final int FASTEST = 60;

  private final World world;

  @Spec private CommandSpec spec;

  @Mixin private HomeOption home;

  @Parameters(paramLabel = "SEQUENCE", description = "The name of a sequence.")
  private String sequence;

  @Option(names = "--plain", description = "Lines of text in place of screens.")
  private boolean plain;

  @Option(
      names = "--practice",
      arity = "0..1",
      fallbackValue = "1",
      paramLabel = "SEED",
      description = "On the simulated bench; each seed is another amplifier.")
  private Long practice;

  @Option(
      names = "--speed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Warm-up seconds in one second on the simulated bench, 1 to 60.")
  private int speed;

  @Option(names = "--fill", description = "Let the simulated operator answer everything.")
  private boolean fill;

  @Option(names = "--amp", paramLabel = "FILE", description = "The amplifier's file.")
  private Path amplifier;

  @Option(names = "--bench", paramLabel = "FILE", description = "The bench's file.")
  private Path bench;

  /** Makes the command in a world. */
  public WalkCommand(World world) {
    this.world = world;
  }

  @Override
  public Integer call() {
    if (speed < 1 || speed > FASTEST) {
      throw wrong("--speed takes a whole number from 1 to " + FASTEST);
    }
    if (practice != null && Math.abs(practice) > Fact.Opened.LARGEST_SEED) {
      throw wrong("--practice takes a seed up to " + Fact.Opened.LARGEST_SEED);
    }
    if (speed > 1 && practice == null && !fill) {
      throw wrong("--speed is for the practice bench: a real amplifier warms in its own time");
    }
    if (practice != null && (amplifier != null || bench != null)) {
      throw wrong("--practice brings its own amplifier and bench; leave --amp and --bench out");
    }
    if (fill && (amplifier != null || bench != null)) {
      throw wrong("--fill is for the practice bench alone");
    }
    if (bench != null && amplifier == null) {
      throw wrong("--bench goes with --amp; without files, forms ask for both");
    }
    long seed = practice == null ? FIRST_SEED : practice;
    boolean practising = practice != null || fill;
    return world.walk(
        new World.Surroundings(home.home(), plain || fill),
        new World.NewWalk(
            sequence,
            Optional.ofNullable(amplifier),
            Optional.ofNullable(bench),
            practising ? OptionalLong.of(seed) : OptionalLong.empty(),
            speed,
            fill));
  }

  private ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence + ".");
  }
}
