package loadwalk.view.walk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Forecast;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.ScreenWords;
import loadwalk.view.canvas.Style;
import loadwalk.view.canvas.TextField;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Gate;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** The brief of a step: what to connect, the cautions worst first, the forecast, the arming. */
final class BriefPanel {
  /** The most rows of an instruction beside a forecast: the longest is a bridged open-load step. */
  static final int INSTRUCTION_ROWS = 3;

  /** Title, caution, basis of two rows and hint. */
  private static final int ROWS_BESIDE_A_NOTE = 5;

  private static final int FIELD = 16;

  private static final String CONTROLS =
      "Nobody wrote down how gain and controls are set: F2, three times.";

  /** The width of a caution's gravity with the blanks behind it. */
  static final int CAUTION = 6;

  private BriefPanel() {}

  static void paint(
      Canvas canvas, ProgramState program, PlannedStep planned, WalkScreen screen, Area area) {
    WalkState state = program.walk().orElseThrow().state();
    StepState step = state.step(planned.id());
    if (step.brief().isEmpty()) {
      canvas.text(
          area.column(),
          area.row(),
          Sentence.of("{}: working out the brief", planned.id()),
          Style.FAINT);
      return;
    }
    Forecast brief = step.brief().get();
    int row = paintTitle(canvas, state, planned, brief, area);
    row = OpeningLine.paint(canvas, program, step, area, row);
    String instruction = planned.instruction(state.context(planned));
    int rows = instructionRows(brief, area);
    if (canvas.fold(instruction, area.columns()).size() > rows) {
      paintCut(canvas, area);
    }
    row = canvas.paragraph(area.column(), row, area.columns(), rows, instruction, Style.STRONG);
    int fields = BriefKeys.rows(state, planned) + 1;
    int forecastRows = Math.min(4, brief.readings().size());
    int cautionRows = area.bottom() - row - fields - forecastRows - 1;
    row = paintCautions(canvas, brief, area, row, cautionRows);
    row = paintForecast(canvas, brief, area, row, area.bottom() - fields);
    if (row < area.bottom() - fields && Targets.asksForControls(state, planned)) {
      canvas.text(area.column(), row, CONTROLS, Style.KEY);
    }
    paintFields(canvas, state, planned, screen, area);
    paintSupply(canvas, program, area);
  }

  /** A step without a forecast, such as a note, gives its text the room of one. */
  private static int instructionRows(Forecast brief, Area area) {
    return brief.readings().isEmpty()
        ? Math.max(INSTRUCTION_ROWS, area.rows() - ROWS_BESIDE_A_NOTE)
        : INSTRUCTION_ROWS;
  }

  /** Shows the volts at the terminals before the step starts, where a meter reads them. */
  private static void paintSupply(Canvas canvas, ProgramState program, Area area) {
    program
        .meters()
        .of(ReadingId.SUPPLY_VOLTS)
        .map(watch -> Sentence.of("supply meter {}", program.meters().words(watch)))
        .ifPresent(
            text ->
                canvas.text(
                    area.column() + area.columns() - text.length(),
                    area.bottom() - 1,
                    text,
                    Style.FAINT));
  }

  private static int paintTitle(
      Canvas canvas, WalkState state, PlannedStep planned, Forecast brief, Area area) {
    int number = state.plan().indexOf(planned) + 1;
    int column =
        canvas.text(
            area.column(),
            area.row(),
            Sentence.of("Step {} of {}  {}  brief: ", number, state.plan().size(), planned.id()),
            Style.HEADING);
    canvas.text(column, area.row(), brief.verdict().capitals(), ScreenWords.style(brief.verdict()));
    return area.row() + 1;
  }

  private static int paintCautions(
      Canvas canvas, Forecast brief, Area area, int top, int mostRows) {
    int row = top;
    int end = top + Math.max(1, mostRows);
    int shown = 0;
    for (Caution caution : brief.cautions()) {
      boolean last = row >= end - 1 && shown < brief.cautions().size() - 1;
      if (last || row >= end) {
        int left = brief.cautions().size() - shown;
        canvas.text(area.column(), row, Sentence.of("{} more: F1 lists all", left), Style.FAINT);
        return row + 1;
      }
      canvas.text(
          area.column(), row, caution.gravity().capitals(), ScreenWords.style(caution.gravity()));
      int rows = Math.min(2, end - row);
      if (canvas.fold(caution.text(), area.columns() - CAUTION).size() > rows) {
        paintCut(canvas, area);
      }
      row =
          canvas.paragraph(
              area.column() + CAUTION,
              row,
              area.columns() - CAUTION,
              rows,
              caution.text(),
              Style.TEXT);
      shown++;
    }
    if (brief.cautions().isEmpty()) {
      canvas.text(area.column(), row++, "No special caution is known for this step.", Style.FAINT);
    }
    return row;
  }

  /** Says beside the title where the rest of a cut text is. */
  private static void paintCut(Canvas canvas, Area area) {
    String whole = "F1 shows all of it";
    int at = area.column() + area.columns() - whole.length();
    canvas.text(at, area.row(), whole, Style.KEY);
  }

  private static int paintForecast(Canvas canvas, Forecast brief, Area area, int top, int end) {
    int row = top;
    int percent = (int) Math.round(brief.level() * 100);
    int column = area.column();
    int half = area.columns() / 2;
    int index = 0;
    for (Map.Entry<ReadingId, Band> e : brief.readings().entrySet()) {
      if (row >= end) {
        return row;
      }
      int at = column + (index % 2) * half;
      canvas.text(at, row, e.getKey().label(), Style.FAINT);
      canvas.text(at + 20, row, range(e.getKey(), e.getValue()), Style.TEXT);
      row += index % 2;
      index++;
    }
    row += index % 2;
    if (row < end && index > 0) {
      String basis = Sentence.of("{} % forecast. {}", percent, brief.basis());
      row =
          canvas.paragraph(column, row, area.columns(), Math.min(2, end - row), basis, Style.FAINT);
    } else if (row < end) {
      row = canvas.paragraph(column, row, area.columns(), 2, brief.basis(), Style.FAINT);
    }
    return row;
  }

  static String range(ReadingId id, Band band) {
    return Printer.UTF8.range(band.low(), band.high(), id.unit());
  }

  private static void paintFields(
      Canvas canvas, WalkState state, PlannedStep planned, WalkScreen screen, Area area) {
    int top = area.bottom() - BriefKeys.rows(state, planned) - 1;
    boolean free = screen.prompt().isEmpty();
    if (BriefKeys.takesLoad(state, planned)) {
      boolean focus = free && screen.focus() == 0;
      String asked =
          Gate.needsArming(state, planned)
              ? "To arm: the load really connected, in ohms"
              : "Load really connected, in ohms (optional)";
      int at = label(canvas, area, top, asked, focus);
      (focus ? screen.field() : TextField.EMPTY).paint(canvas, at, top, FIELD, focus);
    }
    if (BriefKeys.asksColdLoad(state, planned)) {
      boolean focus = free && BriefKeys.onColdLoad(screen, state, planned);
      int row = top + BriefKeys.coldRow(state, planned);
      paintColdLoad(
          canvas, state, planned, screen, focus, new Area(area.column(), row, area.columns(), 1));
    }
    paintHint(canvas, state, planned, screen, area);
  }

  private static void paintColdLoad(
      Canvas canvas,
      WalkState state,
      PlannedStep planned,
      WalkScreen screen,
      boolean focus,
      Area area) {
    int row = area.row();
    StepState step = state.step(planned.id());
    boolean other = BriefKeys.coldLoad(state, planned) == ReadingId.OTHER_LOAD_OHMS;
    String asked =
        other
            ? "Other load cold, amplifier off (optional)"
            : "Load measured cold, amplifier off (optional)";
    int at = label(canvas, area, row, asked, focus);
    TextField shown = focus ? screen.field() : TextField.EMPTY;
    shown.paint(canvas, at, row, FIELD, focus);
    Optional<Entry> own = step.latest(BriefKeys.coldLoad(state, planned));
    own.ifPresent(
        e ->
            canvas.text(
                at + FIELD + 1,
                row,
                printed(e) + (e.isOpen() ? " DOUBT" : " kept"),
                e.isOpen() ? Style.HEED : Style.GOOD));
    step.latest(ReadingId.LOAD_OHMS)
        .filter(first -> own.isEmpty())
        .ifPresent(
            first ->
                canvas.text(
                    at + FIELD + 1, row, Sentence.of("first {}", printed(first)), Style.GOOD));
  }

  private static String printed(Entry load) {
    return Printer.UTF8.reading(load.value(), Unit.OHM, load.resolution());
  }

  /** Says what the reason key does now, and what becomes of a number typed here. */
  private static void paintHint(
      Canvas canvas, WalkState state, PlannedStep planned, WalkScreen screen, Area area) {
    StepState step = state.step(planned.id());
    List<ReadingId> doubted = step.openDoubts();
    Style style = doubted.isEmpty() ? Style.KEY : Style.HEED;
    String hint =
        doubted.isEmpty()
            ? startHint(state, planned, screen)
            : doubtHint(step, doubted.get(0), BriefKeys.onColdLoad(screen, state, planned));
    canvas.text(area.column(), area.bottom() - 1, canvas.shortened(hint, area.columns()), style);
  }

  private static String doubtHint(StepState step, ReadingId id, boolean onColdLoad) {
    String question = step.latest(id).orElseThrow().doubts().get(0).question();
    if (id != ReadingId.LOAD_OHMS) {
      return Sentence.of("DOUBT, {}: {}F4 amends; F7 stands by it.", id.label(), question);
    }
    return onColdLoad
        ? Sentence.of("DOUBT, {}: {}Amend it; F7 stands by it.", id.label(), question)
        : Sentence.of("DOUBT, {}: {}Tab amends; F7 stands by it.", id.label(), question);
  }

  private static String startHint(WalkState state, PlannedStep planned, WalkScreen screen) {
    StepState step = state.step(planned.id());
    if (WalkScreen.isHalted(step)) {
      return "HALT: F7 lifts it, with a reason; F3 skips the step.";
    }
    boolean arms = Gate.needsArming(state, planned);
    if (arms && BriefKeys.onColdLoad(screen, state, planned)) {
      return "This is kept as the cold load; it does not arm the step. Tab: back to arming.";
    }
    if (BriefKeys.onColdLoad(screen, state, planned)) {
      return "A number typed here is kept as the cold load. Enter alone starts the step.";
    }
    boolean lifted = step.liftReason().isPresent();
    if (arms) {
      return lifted
          ? "Halt lifted. The load you type here arms and starts the step."
          : "The load you type here arms and starts the step.";
    }
    return lifted ? "Halt lifted. Enter starts the step." : "Enter starts the step.";
  }

  private static int label(Canvas canvas, Area area, int row, String text, boolean focus) {
    canvas.label(area.column(), row, text, focus);
    return area.column() + 49;
  }
}
