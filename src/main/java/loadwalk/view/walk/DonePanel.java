package loadwalk.view.walk;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.bench.EndedStep;
import loadwalk.bench.Wire;
import loadwalk.quantity.Printer;
import loadwalk.result.Criterion;
import loadwalk.result.Mark;
import loadwalk.result.PublishedPower;
import loadwalk.result.WalkResult;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.walk.Results;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.WalkState;

/** What shows when every step is done: the power at each load. */
final class DonePanel {
  private DonePanel() {}

  static void paint(Canvas canvas, WalkState state, Wire wire, Area area) {
    canvas.text(area.column(), area.row(), "Every step is done.", Style.STRONG);
    WalkResult result = Results.of(state, wire);
    int row = area.row() + 2;
    for (Map.Entry<String, PublishedPower> e : result.published().entrySet()) {
      if (row >= area.bottom() - 2) {
        break;
      }
      canvas.text(area.column(), row, e.getKey(), Style.TEXT);
      String watts = Printer.UTF8.quantity(e.getValue().totalWatts());
      canvas.text(area.column() + 16, row, Sentence.of("{} total", watts), Style.STRONG);
      canvas.text(area.column() + 42, row, said(e.getValue()), Style.FAINT);
      row++;
    }
    for (EndedStep step : Targets.ended(state)) {
      if (row < area.bottom() - 2) {
        canvas.text(area.column(), row, step.target().stepId(), Style.TEXT);
        canvas.text(area.column() + 16, row++, step.text(), Style.STRONG);
      }
    }
    canvas.paragraph(
        area.column(), row + 1, area.columns(), 2, foot(state.openDoubts().size()), Style.TEXT);
  }

  /** Returns the marks of a power, worst first, then the stated point at which it was read. */
  private static String said(PublishedPower power) {
    Stream<String> marks = power.marks().stream().map(Mark::text);
    Stream<String> point =
        Stream.of(power.criterion()).filter(Criterion::isStated).map(Criterion::text);
    return Stream.concat(marks, point).collect(Collectors.joining(", "));
  }

  private static String foot(int openDoubts) {
    return openDoubts == 0
        ? "F6 shows the sheet, written afresh each time."
        : Sentence.plural(
            openDoubts,
            "1 doubt has no answer yet; F4 lists the readings."
                + " F6 shows the sheet, written afresh each time.",
            "{} doubts have no answer yet; F4 lists the readings."
                + " F6 shows the sheet, written afresh each time.");
  }
}
