package loadwalk.view;

import java.util.List;
import loadwalk.walk.Effect;

/**
 * The outcome of an update of the program.
 *
 * @param program the new program
 * @param effects what the walk asks of the outside world
 * @param wishes what the screens ask of it
 */
public record ProgramNext(Program program, List<Effect> effects, List<Wish> wishes) {
  /** Copies the lists. */
  public ProgramNext {
    effects = List.copyOf(effects);
    wishes = List.copyOf(wishes);
  }
}
