package loadwalk.view.walk;

import java.util.List;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.walk.fact.WalkState;

/** What shows while the walk is paused. */
final class PausePanel {
  private PausePanel() {}

  static void paint(Canvas canvas, WalkState state, Area area) {
    canvas.text(area.column(), area.row() + 1, "PAUSED", Style.STRONG);
    canvas.paragraph(area.column(), area.row() + 3, area.columns(), 6, standing(state), Style.TEXT);
  }

  private static String standing(WalkState state) {
    List<String> stops = state.stops();
    return stops.isEmpty()
        ? Sentence.of(
            "At {}. Everything entered is on disk. You can leave the walk now and resume it another"
                + " day. Never leave a powered amplifier alone.",
            state.currentId())
        : Sentence.of(
            "At {}. Last stopped because: {}. Everything entered is on disk. You can leave the walk"
                + " now and resume it another day. Never leave a powered amplifier alone.",
            state.currentId(),
            stops.get(stops.size() - 1));
  }
}
