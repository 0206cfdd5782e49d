package loadwalk.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** The program around commands that walk; each method returns an exit code. */
public interface World {

  /** Shows the home screen. */
  int home(Surroundings around);

  /** Starts a walk. */
  int walk(Surroundings around, NewWalk walk);

  /**
   * Goes on with a walk, the newest open one where none is named.
   *
   * @param speed how many warm-up seconds pass in one second where it is on the practice bench
   */
  int resume(Surroundings around, Optional<String> walk, OptionalInt speed);

  /**
   * Where and how Loadwalk runs.
   *
   * @param home the value of {@code --home}
   * @param plain whether lines of text are wanted in place of screens
   */
  record Surroundings(Optional<Path> home, boolean plain) {}

  /**
   * A walk to be started.
   *
   * @param sequence the sequence's name
   * @param amplifier the amplifier's file
   * @param bench the bench's file
   * @param practiceSeed the seed of the practice amplifier, where it is wanted
   * @param speed how many warm-up seconds pass in one second on the practice bench
   * @param fill whether the simulated operator answers everything, to the end
   */
  record NewWalk(
      String sequence,
      Optional<Path> amplifier,
      Optional<Path> bench,
      OptionalLong practiceSeed,
      int speed,
      boolean fill) {}
}
