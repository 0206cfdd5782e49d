package loadwalk.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.Fact;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a walk. */
@Command(
    name = "walk",
    description = "Start a walk: take one amplifier through one sequence.",
    mixinStandardHelpOptions = true)
public final class WalkCommand implements Callable<Integer> {
  private static final long FIRST_SEED = 1;
  static final int FASTEST = 60;

  private final World world;

  @Spec private CommandSpec spec;

  @Mixin private CommonOptions common;

  @Parameters(
      paramLabel = "SEQUENCE",
      description =
          "full-walk, stereo-only, bridged-only, rated-conditions, low-ohm-recheck, or one of your"
              + " own.")
  private String sequence;

  @Option(names = "--plain", description = "Use lines of text instead of screens.")
  private boolean plain;

  @Option(
      names = "--practice",
      arity = "0..1",
      fallbackValue = "1",
      paramLabel = "SEED",
      description = "Walk on the practice bench; each seed is another amplifier.")
  private Long practice;

  @Option(
      names = "--speed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Practice bench: warm-up seconds that pass in one second, 1 to 60.")
  private int speed;

  @Option(names = "--fill", description = "Let a simulated operator answer everything, to the end.")
  private boolean fill;

  @Option(names = "--amp", paramLabel = "FILE", description = "The amplifier file.")
  private Path amplifier;

  @Option(names = "--bench", paramLabel = "FILE", description = "The bench file.")
  private Path bench;

  /** Makes the command in a world. */
  public WalkCommand(World world) {
    this.world = world;
  }

  @Override
  public Integer call() {
    if (speed < 1 || speed > FASTEST) {
      throw wrong(Sentence.of("--speed takes a whole number from 1 to {}.", FASTEST));
    }
    if (practice != null && Math.abs(practice) > Fact.Opened.LARGEST_SEED) {
      throw wrong(Sentence.of("--practice takes a seed up to {}.", Fact.Opened.LARGEST_SEED));
    }
    if (speed > 1 && practice == null && !fill) {
      throw wrong("--speed is for the practice bench: a real amplifier takes its time to warm up.");
    }
    if (practice != null && (amplifier != null || bench != null)) {
      throw wrong("--practice has an amplifier and a bench already; leave out --amp and --bench.");
    }
    if (fill && (amplifier != null || bench != null)) {
      throw wrong("--fill is for the practice bench only; leave out --amp and --bench.");
    }
    if (bench != null && amplifier == null) {
      throw wrong("--bench needs --amp; with neither, forms ask for both.");
    }
    long seed = practice == null ? FIRST_SEED : practice;
    boolean practising = practice != null || fill;
    return world.walk(
        new World.Surroundings(common.home(), plain || fill),
        new World.NewWalk(
            sequence,
            Optional.ofNullable(amplifier),
            Optional.ofNullable(bench),
            practising ? OptionalLong.of(seed) : OptionalLong.empty(),
            speed,
            fill));
  }

  private ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }
}
