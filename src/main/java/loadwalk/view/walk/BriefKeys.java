package loadwalk.view.walk;

import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.sequence.PlannedStep;
import loadwalk.view.canvas.Key;
import loadwalk.view.screen.Answer;
import loadwalk.walk.Gate;
import loadwalk.walk.Intent;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * Keys while a brief is on the screen: arm or start, and an optional cold load check.
 *
 * <p>The row of the load really connected is the first, where the cursor starts, whether it must be
 * typed or not: what is typed there is never kept as a cold measurement, for that row is reached
 * only on purpose.
 */
final class BriefKeys {
  private BriefKeys() {}

  /** Tells whether the load can be measured cold before the step starts. */
  static boolean asksColdLoad(WalkState state, PlannedStep planned) {
    return Targets.of(state, planned).filter(t -> t.kind() == Target.Kind.LOADED).isPresent();
  }

  /** Tells whether the load really connected can be typed: wherever one is driven. */
  static boolean takesLoad(WalkState state, PlannedStep planned) {
    return Targets.of(state, planned).filter(t -> t.kind().drives()).isPresent();
  }

  /** Returns how many rows can be in focus. */
  static int rows(WalkState state, PlannedStep planned) {
    int cold = asksColdLoad(state, planned) ? 1 : 0;
    int load = takesLoad(state, planned) ? 1 : 0;
    return cold + load;
  }

  /** Tells whether the row in focus is the cold load check. */
  static boolean onColdLoad(WalkScreen screen, WalkState state, PlannedStep planned) {
    return asksColdLoad(state, planned) && screen.focus() == coldRow(state, planned);
  }

  /** Returns the row of the cold load check, where there is one: the last. */
  static int coldRow(WalkState state, PlannedStep planned) {
    return takesLoad(state, planned) ? 1 : 0;
  }

  /** Returns the load that the row asks for: the other one once the first is in. */
  static ReadingId coldLoad(WalkState state, PlannedStep planned) {
    StepState step = state.step(planned.id());
    boolean first = step.latest(ReadingId.LOAD_OHMS).filter(entry -> !entry.isOpen()).isPresent();
    boolean other = planned.readings(state.context(planned)).contains(ReadingId.OTHER_LOAD_OHMS);
    return first && other ? ReadingId.OTHER_LOAD_OHMS : ReadingId.LOAD_OHMS;
  }

  static Answer press(WalkScreen screen, Key key, WalkState state, PlannedStep planned) {
    int rows = rows(state, planned);
    switch (key.kind()) {
      case TAB:
      case DOWN:
        return Answer.stay(screen.at(rows == 0 ? 0 : (screen.focus() + 1) % rows));
      case BACK_TAB:
      case UP:
        return Answer.stay(screen.at(rows == 0 ? 0 : (screen.focus() + rows - 1) % rows));
      case ENTER:
        return entered(screen, state, planned);
      default:
        return rows == 0
            ? Answer.stay(screen)
            : Answer.stay(screen.typing(screen.field().after(key)));
    }
  }

  private static Answer entered(WalkScreen screen, WalkState state, PlannedStep planned) {
    String text = screen.field().text();
    if (onColdLoad(screen, state, planned) && !text.isBlank()) {
      ReadingId load = coldLoad(state, planned);
      return Answer.want(screen.at(0), new Intent.Enter(planned.id(), load, text));
    }
    if (onColdLoad(screen, state, planned) && Gate.needsArming(state, planned)) {
      return Answer.stay(screen.at(0));
    }
    if (planned.step().isConfirmed()) {
      return Answer.want(screen.at(0), new Intent.Finish());
    }
    boolean arms = Gate.needsArming(state, planned) || !text.isBlank();
    return Answer.want(screen.at(0), arms ? new Intent.Arm(text) : new Intent.Begin());
  }
}
