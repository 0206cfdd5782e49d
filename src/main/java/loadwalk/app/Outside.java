package loadwalk.app;

import java.util.List;
import loadwalk.view.Desk;
import loadwalk.view.DeskEvent;
import loadwalk.view.Wish;
import loadwalk.walk.Effect;

/** Does what updates ask of the outside world; every answer comes back as an event. */
interface Outside {

  /** Does what a walk asks. */
  List<DeskEvent> perform(Effect effect);

  /** Hears what is likely to be asked next, in place of what it heard before. */
  default void prepare(List<Effect> likely) {}

  /** Does what a screen asks. */
  List<DeskEvent> grant(Wish wish, Desk desk);

  /** Returns what must be told after an update, such as what the practice bench's meters show. */
  List<DeskEvent> after(Desk desk);

  /** Tells whether the operator has asked to leave. */
  boolean isLeaving();
}
