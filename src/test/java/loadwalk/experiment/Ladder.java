package loadwalk.experiment;

import java.util.List;
import loadwalk.bench.Mode;
import loadwalk.bench.Target;
import loadwalk.sequence.Load;

/** The loads of full-walk in its order. */
final class Ladder {
  static final List<Target> STEPS =
      List.of(
          Target.idle("idle"),
          loaded(Mode.STEREO, 4),
          loaded(Mode.STEREO, 2),
          loaded(Mode.STEREO, 1),
          loaded(Mode.BRIDGED, 4),
          loaded(Mode.BRIDGED, 2),
          loaded(Mode.BRIDGED, 1),
          loaded(Mode.BRIDGED, 0.5));

  /** Two loads measured again after the ladder, the heaviest first. */
  static final List<Target> RECHECKS =
      List.of(
          Target.loaded("bridged-0.5#2", Mode.BRIDGED, 0.5),
          Target.loaded("stereo-4#2", Mode.STEREO, 4));

  /** The index of the first step with a load. */
  static final int FIRST_LOADED = 1;

  private Ladder() {}

  /** Returns a step of the ladder, or behind it one that measures a load again. */
  static Target at(int step) {
    int again = step - STEPS.size();
    return again < 0 ? STEPS.get(step) : RECHECKS.get(again);
  }

  private static Target loaded(Mode mode, double ohms) {
    return Target.loaded(new Load(mode, ohms).id(), mode, ohms);
  }
}
