package loadwalk.view.walk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Slip;
import loadwalk.plan.wiring.WireBackCheck;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.ConnectedMeters;
import loadwalk.view.state.Live;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Model;
import loadwalk.walk.fact.Entry;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** A running step: its readings, what is live now, and what is doubted. */
final class RunPanel {
  private static final int DOUBT_ROWS = 7;

  private RunPanel() {}

  static void paint(
      Canvas canvas, ProgramState program, PlannedStep planned, WalkScreen screen, Area area) {
    WalkState state = program.walk().orElseThrow().state();
    StepState step = state.step(planned.id());
    int number = state.plan().indexOf(planned) + 1;
    canvas.text(
        area.column(),
        area.row(),
        Sentence.of("Step {} of {}  {}  running", number, state.plan().size(), planned.id()),
        Style.HEADING);
    int row = OpeningLine.paint(canvas, program, step, area, area.row() + 1);
    row =
        canvas.paragraph(
            area.column(),
            row,
            area.columns(),
            instructionRows(canvas, program, planned, area),
            planned.running(state.context(planned)),
            Style.TEXT);
    List<ReadingId> readings = RunKeys.readings(state, planned);
    boolean free = screen.prompt().isEmpty();
    for (int i = 0; i < readings.size(); i++) {
      boolean focus = free && screen.focus() == i;
      ReadingRow.of(step, readings.get(i))
          .paint(
              canvas,
              program,
              new Area(area.column(), row, area.columns(), 1),
              focus ? Optional.of(screen.field()) : Optional.empty());
      row++;
    }
    if (RunKeys.hasCriterion(state, planned)) {
      row = paintLimit(canvas, state, step, screen, readings.size(), area, row);
    }
    if (readings.isEmpty()) {
      canvas.text(area.column(), row + 1, "Enter finishes this step.", Style.KEY);
    }
    row = paintNow(canvas, program, step, readings, area, row);
    paintDoubts(canvas, program, state, step, area, row);
  }

  /** A doubt is shown whole before the instruction is, which the brief has shown. */
  private static int instructionRows(
      Canvas canvas, ProgramState program, PlannedStep planned, Area area) {
    WalkState state = program.walk().orElseThrow().state();
    StepState step = state.step(planned.id());
    int opening = OpeningLine.rows(canvas, program, step, area);
    int doubts =
        step.openDoubts().stream()
            .map(id -> doubtText(id, step.latest(id).orElseThrow().doubts().get(0)))
            .mapToInt(text -> canvas.fold(text, area.columns()).size())
            .sum();
    int left = area.rows() - 1 - opening - RunKeys.rows(state, planned) - doubts;
    return doubts == 0
        ? BriefPanel.INSTRUCTION_ROWS
        : Math.max(0, Math.min(BriefPanel.INSTRUCTION_ROWS, left));
  }

  /** Tells whether what is typed on a screen goes into a reading of the step that runs. */
  static boolean takesTyping(ProgramState program, WalkScreen screen) {
    Model model = program.walk().orElseThrow();
    WalkState state = model.state();
    return !model.isStopped()
        && screen.prompt().isEmpty()
        && state.hold() == WalkState.Hold.RUNNING
        && state
            .current()
            .filter(planned -> state.step(planned.id()).status() == StepState.Status.RUNNING)
            .filter(planned -> planned.step().warmUp().isEmpty())
            .filter(planned -> screen.focus() < RunKeys.readings(state, planned).size())
            .isPresent();
  }

  /** Paints the reading in focus anew over what a row of the panel showed. */
  static void paintFocus(Canvas canvas, ProgramState program, WalkScreen screen, Area row) {
    WalkState state = program.walk().orElseThrow().state();
    PlannedStep planned = state.current().orElseThrow();
    ReadingId id = RunKeys.readings(state, planned).get(screen.focus());
    canvas.clear(row);
    ReadingRow.of(state.step(planned.id()), id)
        .paint(canvas, program, row, Optional.of(screen.field()));
  }

  /** What the meters of readings that are in already show at this moment. */
  private static int paintNow(
      Canvas canvas,
      ProgramState program,
      StepState step,
      List<ReadingId> readings,
      Area area,
      int row) {
    ConnectedMeters meters = program.meters();
    String now =
        readings.stream()
            .filter(id -> ReadingRow.of(step, id).entry().isPresent())
            .flatMap(id -> meters.of(id).stream())
            .map(watch -> watch.meter().reads().label() + " " + meters.words(watch))
            .collect(Collectors.joining(", "));
    int others = step.openDoubts().isEmpty() ? 1 : DOUBT_ROWS;
    int room = Math.max(0, Math.min(2, area.bottom() - others - row));
    return now.isEmpty()
        ? row
        : canvas.paragraph(
            area.column(),
            row,
            area.columns(),
            room,
            Sentence.of("meters now: {}", now),
            Style.FAINT);
  }

  private static int paintLimit(
      Canvas canvas,
      WalkState state,
      StepState step,
      WalkScreen screen,
      int first,
      Area area,
      int top) {
    boolean free = screen.prompt().isEmpty();
    boolean onCriterion = free && screen.focus() == first;
    canvas.label(area.column(), top, "output was read", onCriterion);
    PointRow point = PointRow.of(state, step);
    canvas.text(
        area.column() + ReadingRow.LABEL,
        top,
        point.words(onCriterion),
        onCriterion ? Style.FOCUS : point.isProposed() ? Style.FAINT : Style.TEXT);
    boolean onPair = free && screen.focus() == first + 1;
    canvas.label(area.column(), top + 1, "volts and THD pair", onPair);
    if (onPair) {
      screen
          .field()
          .paint(canvas, area.column() + ReadingRow.LABEL, top + 1, ReadingRow.VALUE + 8, true);
    }
    canvas.text(
        area.column() + ReadingRow.LABEL + (onPair ? ReadingRow.VALUE + 9 : 0),
        top + 1,
        step.pairs().isEmpty()
            ? onPair ? "for example 13.2 V 0.8 %" : "none"
            : Sentence.of("{} kept", step.pairs().size()),
        Style.FAINT);
    return top + 2;
  }

  private static void paintDoubts(
      Canvas canvas, ProgramState program, WalkState state, StepState step, Area area, int top) {
    int row = top;
    for (ReadingId id : step.openDoubts()) {
      Doubt doubt = step.latest(id).orElseThrow().doubts().get(0);
      if (row >= area.bottom()) {
        return;
      }
      Area left = new Area(area.column(), row, area.columns(), area.bottom() - row);
      row = paintDoubt(canvas, id, doubt, left);
    }
    if (step.openDoubts().isEmpty() && row < area.bottom() - 1) {
      row = paintJoint(canvas, program, step, area, row);
    }
    row = paintLive(canvas, program, state, area, row);
    if (step.openDoubts().isEmpty() && row < area.bottom()) {
      canvas.text(
          area.column(),
          area.bottom() - 1,
          WaveKeys.words(program.live(), state, step.entryCount() > 0),
          Style.KEY);
    }
  }

  /** A doubt that has no room loses its end, never the way to answer it. */
  private static int paintDoubt(Canvas canvas, ReadingId id, Doubt doubt, Area left) {
    String whole = doubtText(id, doubt);
    int columns = left.columns();
    if (left.rows() < 2 || canvas.fold(whole, columns).size() <= left.rows()) {
      return canvas.paragraph(left.column(), left.row(), columns, left.rows(), whole, Style.HEED);
    }
    String told = doubtTold(id, doubt);
    int last = left.bottom() - 1;
    canvas.paragraph(left.column(), left.row(), columns, left.rows() - 1, told, Style.HEED);
    return canvas.paragraph(left.column(), last, columns, 1, doubtAnswer(doubt), Style.HEED);
  }

  private static String doubtText(ReadingId id, Doubt doubt) {
    return Sentence.of("{} {}", doubtTold(id, doubt), doubtAnswer(doubt));
  }

  private static String doubtTold(ReadingId id, Doubt doubt) {
    return Sentence.of(
        "DOUBT, {}: {}{} {}", id.label(), doubt.question(), doubt.text(), doubt.lookAt());
  }

  private static String doubtAnswer(Doubt doubt) {
    if (doubt.earlierStep().isPresent()) {
      return Sentence.of(
          "Amend {} (F4) and enter this again, or F7 to stand by it.", doubt.earlierStep().get());
    }
    return doubt.slip() == Slip.THD_OFF_LIMIT
        ? "Enter it again, say where it was read, or F7 to stand by it."
        : "Enter it again, or F7 to stand by it.";
  }

  /** The live input shows below the doubts, or in the last row where they leave no room. */
  private static int paintLive(
      Canvas canvas, ProgramState program, WalkState state, Area area, int row) {
    boolean shown = program.live().state() != Live.State.OFF && WaveKeys.areUseful(state);
    if (!shown) {
      return row;
    }
    int top = Math.min(row, area.bottom() - 1);
    int keys = area.bottom() - top > 1 ? 1 : 0;
    Area room = new Area(area.column(), top, area.columns(), area.bottom() - top - keys);
    LivePanel.paint(canvas, program.live(), program.waves().setup(), room);
    return keys > 0 ? area.bottom() - 1 : area.bottom();
  }

  /** Tells a joint that wastes power, above the keys, as soon as volts and amps show it. */
  private static int paintJoint(
      Canvas canvas, ProgramState program, StepState step, Area area, int row) {
    Bench bench = program.walk().orElseThrow().state().opened().bench();
    Optional<Entry> volts = step.latest(ReadingId.SUPPLY_VOLTS);
    Optional<Entry> amps = step.latest(ReadingId.SUPPLY_AMPS);
    OptionalDouble source = bench.setVolts();
    if (volts.isEmpty() || amps.isEmpty() || source.isEmpty()) {
      return row;
    }
    WireBackCheck check =
        WireBackCheck.of(
            bench,
            program.rules().wire(),
            source.getAsDouble(),
            volts.get().value(),
            amps.get().value());
    return check.state() == WireBackCheck.State.BAD_JOINT
        ? canvas.paragraph(
            area.column(),
            row,
            area.columns(),
            area.bottom() - 1 - row,
            Sentence.of("If the supply holds its setting: {}", check.text()),
            Style.HEED)
        : row;
  }
}
