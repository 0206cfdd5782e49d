package loadwalk.view.walk;

import java.util.List;
import loadwalk.bench.EndedStep;
import loadwalk.bench.Wire;
import loadwalk.quantity.Printer;
import loadwalk.result.StepResult;
import loadwalk.result.WalkResult;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.ScreenWords;
import loadwalk.view.canvas.Style;
import loadwalk.walk.Results;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.WalkState;

/** On a wide screen: what has been measured so far, as list and chart, beside the current step. */
final class SidePanel {
  private SidePanel() {}

  static void paint(Canvas canvas, WalkState state, Wire wire, Area area) {
    for (int row = area.row(); row < area.bottom(); row++) {
      canvas.put(area.column(), row, canvas.look().pick('│', '|'), Style.FAINT);
    }
    int column = area.column() + 2;
    canvas.text(column, area.row(), "So far, per load", Style.HEADING);
    WalkResult result = Results.of(state, wire);
    boolean ascii = canvas.look().ascii();
    int row = area.row() + 1;
    for (StepResult step : result.steps()) {
      if (row + 1 >= area.bottom()) {
        break;
      }
      row = paintStep(canvas, state, step, column, row);
    }
    List<EndedStep> ended = Targets.ended(state);
    for (EndedStep step : ended.subList(0, Math.min(ended.size(), area.bottom() - row))) {
      canvas.text(column, row, step.target().stepId(), Style.TEXT);
      canvas.text(column + 14, row, step.text(), Style.STRONG);
      row++;
    }
    if (result.steps().isEmpty() && ended.isEmpty()) {
      canvas.text(column, row, "nothing measured yet", Style.FAINT);
    }
    paintChart(canvas, PowerChart.lines(state, result, area.columns() - 2, ascii), row + 1, area);
  }

  /** A chart that does not fit whole below the list is left out: the sheet shows it too. */
  private static void paintChart(Canvas canvas, List<String> lines, int row, Area area) {
    if (row + lines.size() > area.bottom()) {
      return;
    }
    for (int i = 0; i < lines.size(); i++) {
      canvas.text(area.column() + 2, row + i, lines.get(i), Style.TEXT);
    }
  }

  private static int paintStep(
      Canvas canvas, WalkState state, StepResult step, int column, int row) {
    if (step.watts().isEmpty()) {
      return row;
    }
    canvas.text(column, row, step.stepId(), Style.TEXT);
    String watts = Printer.UTF8.quantity(step.watts().get());
    canvas.text(column + 14, row, watts, Style.STRONG);
    boolean doubted = !state.step(step.stepId()).openDoubts().isEmpty();
    String below = doubted ? "in doubt, no answer yet" : rating(step);
    canvas.text(column + 2, row + 1, canvas.shortened(below, 34), Style.FAINT);
    return row + 2;
  }

  private static String rating(StepResult step) {
    return step.rating()
        .map(
            r ->
                Sentence.of(
                    "rated {} W: {}", ScreenWords.number(r.ratingWatts()), r.verdict().text()))
        .orElse("no rating for this load");
  }
}
