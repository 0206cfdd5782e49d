package loadwalk.view.walk;

import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.GivesFirst;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.fact.StepState;

/** What gives first at a step and where to stop: in its brief, and live while it runs. */
final class OpeningLine {
  private static final int MOST_ROWS = 2;

  private OpeningLine() {}

  /** Paints the line and returns the row below it. */
  static int paint(Canvas canvas, ProgramState program, StepState step, Area area, int row) {
    Optional<GivesFirst> first = step.brief().flatMap(Forecast::givesFirst);
    if (first.isEmpty()) {
      return row;
    }
    Map<ReadingId, Double> now = now(program, step);
    Style style = first.get().isPassed(now) ? Style.HALT : Style.STRONG;
    String line = first.get().line(now);
    return canvas.paragraph(area.column(), row, area.columns(), MOST_ROWS, line, style);
  }

  /** Returns how many rows the line takes. */
  static int rows(Canvas canvas, ProgramState program, StepState step, Area area) {
    return step.brief()
        .flatMap(Forecast::givesFirst)
        .map(first -> canvas.fold(first.line(now(program, step)), area.columns()).size())
        .map(rows -> Math.min(MOST_ROWS, rows))
        .orElse(0);
  }

  /** Returns the newest readings of the step; what a meter shows now is newer than what is kept. */
  private static Map<ReadingId, Double> now(ProgramState program, StepState step) {
    Map<ReadingId, Double> now = step.newestValues();
    if (step.status() == StepState.Status.RUNNING) {
      now.putAll(program.meters().fresh());
    }
    return now;
  }
}
