package loadwalk.view.walk;

import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.walk.fact.WalkState;

/** What shows while the walk is paused. */
final class PausePanel {
  private PausePanel() {}

  static void paint(Canvas canvas, WalkState state, Area area) {
    canvas.text(area.column(), area.row() + 1, "PAUSED", Style.STRONG);
    String why =
        state.stops().isEmpty()
            ? ""
            : " Last stopped because: " + state.stops().get(state.stops().size() - 1) + ".";
    canvas.paragraph(
        area.column(),
        area.row() + 3,
        area.columns(),
        6,
        "At "
            + state.currentId()
            + "."
            + why
            + " All that was entered is on disk; the walk can be"
            + " left now and taken up another day. Never leave a powered amplifier alone.",
        Style.TEXT);
  }
}
