package loadwalk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.walk.Model;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/**
 * What must still be said when a walk is left: what is to be turned down and switched off, and what
 * is not on the disk. Nothing where all is well.
 */
public final class LastWords {
  private LastWords() {}

  /** Returns a sentence each. */
  public static List<String> of(Program program) {
    Optional<Model> walk = program.walk();
    List<String> words = new ArrayList<>();
    walk.flatMap(LastWords::ofTheBench).ifPresent(words::add);
    walk.filter(Model::isWriting).map(LastWords::ofTheDisk).ifPresent(words::add);
    return words;
  }

  private static Optional<String> ofTheBench(Model model) {
    WalkState state = model.state();
    if (model.isStopped()) {
      return Optional.of(
          Sentence.of("OUTPUT DOWN, SUPPLY OFF: the walk was stopped at {}.", state.currentId()));
    }
    return runs(model)
        ? Optional.of(
            Sentence.of("OUTPUT DOWN, SUPPLY OFF: {} was still running.", state.currentId()))
        : Optional.empty();
  }

  private static String ofTheDisk(Model model) {
    return model
        .keepProblem()
        .map(why -> Sentence.of("NOT ON DISK: {} The last entry is lost.", why))
        .orElse("The last entry was being written; it may not be on the disk.");
  }

  /** Tells whether a step runs that nobody has stopped. */
  static boolean runs(Model model) {
    WalkState state = model.state();
    return !model.isStopped() && state.step(state.currentId()).status() == Status.RUNNING;
  }
}
