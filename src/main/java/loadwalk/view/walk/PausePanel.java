package loadwalk.view.walk;

import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.walk.PausedWalk;
import loadwalk.walk.fact.WalkState;

/** What shows while the walk is paused. */
final class PausePanel {
  private PausePanel() {}

  static void paint(Canvas canvas, WalkState state, Area area) {
    canvas.text(area.column(), area.row() + 1, "PAUSED", Style.STRONG);
    canvas.paragraph(area.column(), area.row() + 3, area.columns(), 6, standing(state), Style.TEXT);
  }

  private static String standing(WalkState state) {
    return lastReason(state)
        .map(
            why ->
                Sentence.of(
                    "At {}. Last stopped because: {}. {}", state.currentId(), why, PausedWalk.TOLD))
        .orElseGet(() -> Sentence.of("At {}. {}", state.currentId(), PausedWalk.TOLD));
  }

  private static Optional<String> lastReason(WalkState state) {
    return state.stops().stream().reduce((first, second) -> second).flatMap(WalkState.Stop::reason);
  }
}
