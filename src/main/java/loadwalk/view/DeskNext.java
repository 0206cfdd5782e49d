package loadwalk.view;

import java.util.List;
import loadwalk.walk.Effect;

/**
 * The outcome of an update of the desk.
 *
 * @param desk the new desk
 * @param effects what the walk asks of the outside world
 * @param wishes what the screens ask of it
 */
public record DeskNext(Desk desk, List<Effect> effects, List<Wish> wishes) {
  /** Copies the lists. */
  public DeskNext {
    effects = List.copyOf(effects);
    wishes = List.copyOf(wishes);
  }
}
