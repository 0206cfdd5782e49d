package loadwalk.view;

import java.util.List;
import loadwalk.walk.Effect;

/**
 * The outcome of an update of the program.
 *
 * @param program the new program
 * @param effects its effects, those of the walk before those of the screen
 */
public record ProgramNext(Program program, List<Effect> effects) {
  /** Copies the list. */
  public ProgramNext {
    effects = List.copyOf(effects);
  }

  static ProgramNext quiet(Program program) {
    return new ProgramNext(program, List.of());
  }
}
