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

  /** The index of the first step with a load. */
  static final int FIRST_LOADED = 1;

  private Ladder() {}

  private static Target loaded(Mode mode, double ohms) {
    return Target.loaded(new Load(mode, ohms).id(), mode, ohms);
  }
}
