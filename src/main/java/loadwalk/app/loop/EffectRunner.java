package loadwalk.app.loop;

import java.util.List;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.walk.Effect;

/** Does what updates ask of the outside world; every answer comes back as an event. */
public interface EffectRunner {

  /**
   * Does one effect.
   *
   * @param program the program as it stands when it is asked
   */
  List<ProgramEvent> perform(Effect effect, Program program);

  /** Returns what must be told after an update, such as what the practice bench's meters show. */
  List<ProgramEvent> after(Program program);

  /** Tells whether the operator has asked to leave. */
  boolean isLeaving();
}
