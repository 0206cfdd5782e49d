package loadwalk.view.walk;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loadwalk.bench.ReadingId;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.view.canvas.Key;
import loadwalk.view.screen.Answer;
import loadwalk.walk.Intent;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** Keys while a step runs: readings go into the row in focus. */
final class RunKeys {
  private static final Set<ReadingId> LOADS =
      EnumSet.of(ReadingId.LOAD_OHMS, ReadingId.OTHER_LOAD_OHMS);

  private RunKeys() {}

  /** Returns the readings of the step's rows; loaded steps have two more rows behind them. */
  static List<ReadingId> readings(WalkState state, PlannedStep planned) {
    return planned.readings(state.context(planned));
  }

  static boolean hasCriterion(WalkState state, PlannedStep planned) {
    return Targets.isAtALimit(state, planned);
  }

  static int rows(WalkState state, PlannedStep planned) {
    return readings(state, planned).size() + (hasCriterion(state, planned) ? 2 : 0);
  }

  /** Returns the row where the cursor starts: behind the loads, where one was typed to arm. */
  static int firstRow(WalkState state) {
    boolean armed = state.step(state.currentId()).armedOhms().isPresent();
    List<ReadingId> rows = state.current().map(p -> readings(state, p)).orElse(List.of());
    int loads = (int) rows.stream().filter(LOADS::contains).count();
    return armed && loads < rows.size() ? loads : 0;
  }

  static Answer press(WalkScreen screen, Key key, WalkState state, PlannedStep planned) {
    int rows = rows(state, planned);
    if (rows == 0) {
      return key.is(Key.Kind.ENTER)
          ? Answer.want(screen.at(0), new Intent.Finish())
          : Answer.stay(screen);
    }
    switch (key.kind()) {
      case TAB:
      case DOWN:
        return Answer.stay(screen.at((screen.focus() + 1) % rows));
      case BACK_TAB:
      case UP:
        return Answer.stay(screen.at((screen.focus() + rows - 1) % rows));
      case ENTER:
        return entered(screen, state, planned, rows);
      default:
        return onCriterion(screen, state, planned)
            ? turned(screen, key, state, planned)
            : Answer.stay(screen.typing(screen.field().after(key)));
    }
  }

  static boolean onCriterion(WalkScreen screen, WalkState state, PlannedStep planned) {
    return hasCriterion(state, planned) && screen.focus() == readings(state, planned).size();
  }

  private static Answer turned(WalkScreen screen, Key key, WalkState state, PlannedStep planned) {
    int turn = key.is(Key.Kind.RIGHT) ? 1 : key.is(Key.Kind.LEFT) ? -1 : 0;
    if (turn == 0) {
      return Answer.say(screen, "Left and Right choose where the output was read.");
    }
    StepState step = state.step(planned.id());
    List<Criterion> points = Criterion.sayable();
    int now = points.indexOf(PointRow.of(state, step).shown());
    Criterion next = points.get(Math.floorMod(now + turn, points.size()));
    return Answer.want(screen, new Intent.SetCriterion(planned.id(), next));
  }

  private static Answer entered(WalkScreen screen, WalkState state, PlannedStep planned, int rows) {
    List<ReadingId> readings = readings(state, planned);
    String text = screen.field().text();
    boolean last = screen.focus() == rows - 1;
    PointRow point = PointRow.of(state, state.step(planned.id()));
    if (onCriterion(screen, state, planned) && point.isProposed()) {
      return Answer.want(
          screen.at(screen.focus() + 1), new Intent.SetCriterion(planned.id(), point.shown()));
    }
    if (text.isBlank()) {
      return last
          ? Answer.want(screen.at(0), new Intent.Finish())
          : Answer.stay(screen.at(screen.focus() + 1));
    }
    if (screen.focus() < readings.size()) {
      int next = last ? screen.focus() : screen.focus() + 1;
      return Answer.want(
          screen.at(next), new Intent.Enter(planned.id(), readings.get(screen.focus()), text));
    }
    Prompt pair = new Prompt(Prompt.Kind.PAIR, planned.id(), Optional.empty());
    return Answer.want(screen.at(screen.focus()), pair.answered(text));
  }
}
