package loadwalk.view.walk;

import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.ProgramState;
import loadwalk.walk.Model;

/** The whole screen after the stop key: first what to do, then the question why. */
final class StopPanel {
  private StopPanel() {}

  static void paint(Canvas canvas, ProgramState program, WalkScreen screen) {
    Model model = program.walk().orElseThrow();
    int middle = canvas.rows() / 2;
    for (int row = middle - 7; row <= middle - 1; row++) {
      canvas.fill(row, Style.HALT);
    }
    centre(canvas, middle - 5, "S T O P", Style.HALT);
    centre(canvas, middle - 3, "OUTPUT DOWN", Style.HALT);
    centre(canvas, middle - 2, "SUPPLY OFF", Style.HALT);
    canvas.text(2, middle + 1, question(screen), Style.STRONG);
    screen.field().paint(canvas, 2, middle + 2, canvas.columns() - 4, true);
    canvas.paragraph(
        2, middle + 4, canvas.columns() - 4, 3, message(program, model, screen), Style.HEED);
    Keys.paint(canvas, keys(model, screen));
  }

  private static String question(WalkScreen screen) {
    return screen.isAskingWhere()
        ? screen.prompt().orElseThrow().kind().question()
        : "When that is done: why did you stop?";
  }

  private static String message(ProgramState program, Model model, WalkScreen screen) {
    Optional<String> refused = screen.isAskingWhere() ? model.message() : Optional.empty();
    return refused
        .or(() -> model.keepProblem().map(StopPanel::notOnDisk))
        .or(model::message)
        .or(program::notice)
        .orElse("The walk is held. The step starts again from its brief.");
  }

  private static String notOnDisk(String why) {
    return Sentence.of("NOT ON DISK: {} Trying again.", why);
  }

  private static String[] keys(Model model, WalkScreen screen) {
    if (screen.isAskingWhere()) {
      return screen.prompt().orElseThrow().keys();
    }
    return model.keepProblem().isPresent()
        ? new String[] {"Enter", "keep the reason", "F9", "write it all to …"}
        : new String[] {"Enter", "keep the reason"};
  }

  private static void centre(Canvas canvas, int row, String text, Style style) {
    canvas.text((canvas.columns() - text.length()) / 2, row, text, style);
  }
}
