package loadwalk.view.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Model;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;

/** Paints the walk: how far it has come, the panel of the current step, messages, keys. */
final class WalkPainter {
  private static final int SIDE_WIDTH = 38;
  private static final int SIDE_FROM_COLUMNS = 118;
  private static final int WIDE_KEYS = 90;

  private WalkPainter() {}

  static void paint(Canvas canvas, ProgramState program, WalkScreen screen) {
    Model model = program.walk().orElseThrow();
    if (model.isStopped()) {
      StopPanel.paint(canvas, program, screen);
      return;
    }
    paintHead(canvas, program, model);
    int top = paintStrip(canvas, model.state(), 1);
    canvas.rule(top);
    WalkFoot foot = WalkFoot.of(program, screen);
    Area area = panel(canvas, foot, top + 1);
    paintPanel(canvas, program, model.state(), screen, area);
    if (hasSide(canvas)) {
      Area side = new Area(area.columns() + 2, top + 1, SIDE_WIDTH, area.rows());
      SidePanel.paint(canvas, model.state(), program.rules().wire(), side);
    }
    foot.paint(canvas);
    paintKeys(canvas, program, model, screen);
  }

  private static boolean hasSide(Canvas canvas) {
    return canvas.columns() >= SIDE_FROM_COLUMNS;
  }

  /** Returns where the panel of the current step stands, from a row down to the foot. */
  static Area panel(Canvas canvas, WalkFoot foot, int row) {
    int width = hasSide(canvas) ? canvas.columns() - SIDE_WIDTH - 1 : canvas.columns();
    return new Area(1, row, width - 2, canvas.rows() - foot.rows(canvas) - row);
  }

  private static void paintHead(Canvas canvas, ProgramState program, Model model) {
    WalkState state = model.state();
    String left = Sentence.of("Loadwalk  {}", state.opened().amplifier().name());
    String sequence = state.opened().sequence().name();
    String right =
        program
            .practice()
            .map(p -> Sentence.of("{} · practice bench, {}×", sequence, p.speed()))
            .orElse(sequence);
    canvas.text(1, 0, canvas.shortened(left, canvas.columns() - right.length() - 4), Style.HEADING);
    canvas.text(canvas.columns() - right.length() - 1, 0, right, Style.FAINT);
  }

  /** Paints every step with its mark and returns the row behind; the current one is named. */
  private static int paintStrip(Canvas canvas, WalkState state, int top) {
    int column = 1;
    int row = top;
    String current = state.current().map(PlannedStep::id).orElse("");
    for (PlannedStep planned : state.plan()) {
      StepState step = state.step(planned.id());
      boolean now = planned.id().equals(current);
      String text = mark(canvas, step, now) + planned.id();
      if (column + text.length() > canvas.columns() - 1) {
        column = 1;
        row++;
      }
      Style style = now ? Style.FOCUS : step.status().isOver() ? Style.TEXT : Style.FAINT;
      column = canvas.text(column, row, text, style) + 1;
    }
    return row + 1;
  }

  private static String mark(Canvas canvas, StepState step, boolean now) {
    if (!step.openDoubts().isEmpty()) {
      return "?";
    }
    if (step.ended().isPresent()) {
      return "!";
    }
    if (step.status() == Status.DONE) {
      return String.valueOf(canvas.look().pick('✓', '+'));
    }
    if (step.status() == Status.SKIPPED) {
      return "-";
    }
    return now ? ">" : " ";
  }

  private static void paintPanel(
      Canvas canvas, ProgramState program, WalkState state, WalkScreen screen, Area area) {
    Optional<PlannedStep> current = state.current();
    if (state.hold() == WalkState.Hold.PAUSED) {
      PausePanel.paint(canvas, state, area);
      return;
    }
    if (current.isEmpty()) {
      DonePanel.paint(canvas, state, program.rules().wire(), area);
      return;
    }
    PlannedStep planned = current.get();
    StepState step = state.step(planned.id());
    if (step.status() != Status.RUNNING) {
      BriefPanel.paint(canvas, program, planned, screen, area);
    } else if (planned.step().warmUp().isPresent()) {
      WarmPanel.paint(canvas, program, planned, screen, area);
    } else {
      RunPanel.paint(canvas, program, planned, screen, area);
    }
  }

  private static void paintKeys(
      Canvas canvas, ProgramState program, Model model, WalkScreen screen) {
    if (screen.prompt().isPresent()) {
      Prompt prompt = screen.prompt().get();
      prompt.paint(canvas, model.message().or(program::notice));
      screen.field().paint(canvas, 1, canvas.rows() - 2, canvas.columns() - 2, true);
      Keys.paint(canvas, prompt.keys());
    } else {
      Keys.paint(canvas, keys(model, program, screen, canvas.columns()).toArray(String[]::new));
    }
  }

  private static List<String> keys(
      Model model, ProgramState program, WalkScreen screen, int columns) {
    WalkState state = model.state();
    if (model.keepProblem().isPresent()) {
      return List.of(
          "F9",
          "write it all to …",
          "F1",
          "help",
          "F4",
          "readings",
          "F6",
          "sheet",
          "F10",
          "leave",
          "Esc",
          "STOP");
    }
    if (state.hold() == WalkState.Hold.PAUSED) {
      return List.of("Enter", "resume", "F2", "note", "F6", "sheet", "F10", "leave", "Esc", "STOP");
    }
    if (state.isFinished()) {
      return List.of(
          "F6",
          "sheet",
          "F4",
          "readings",
          "F2",
          "note",
          "F10",
          "leave",
          "F1",
          "help",
          "Esc",
          "STOP");
    }
    return stepKeys(program, screen, columns);
  }

  /** The keys of a step that goes on; the less needed ones give way where the line is short. */
  private static List<String> stepKeys(ProgramState program, WalkScreen screen, int columns) {
    boolean field = screen.hasMeterInFocus(program);
    boolean fill = program.practice().isPresent() || !program.meters().isEmpty();
    List<String> keys = new ArrayList<>();
    Collections.addAll(keys, "F1", "help", "F2", "note", "F3");
    keys.add(WalkScreen.isDriving(program.walk().orElseThrow().state()) ? "ended" : "skip");
    Collections.addAll(keys, "F4", fill ? "list" : "readings", "F5", "pause");
    if (!field || columns >= WIDE_KEYS) {
      Collections.addAll(keys, "F6", "sheet");
    }
    if (fill) {
      Collections.addAll(keys, "F8", "fill");
    }
    if (field) {
      Collections.addAll(keys, "F11", "this");
    }
    Collections.addAll(keys, "F10", "leave", "Esc", "STOP");
    return keys;
  }
}
