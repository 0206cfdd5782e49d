package loadwalk.view.walk;

import loadwalk.text.Sentence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Keys;
import loadwalk.view.canvas.Style;
import loadwalk.walk.Model;

/** The whole screen after the stop key: first what to do, then the question why. */
final class StopPanel {
  private StopPanel() {}

  static void paint(Canvas canvas, Model model, WalkScreen screen) {
    int middle = canvas.rows() / 2;
    for (int row = middle - 7; row <= middle - 1; row++) {
      canvas.fill(row, Style.HALT);
    }
    centre(canvas, middle - 5, "S T O P", Style.HALT);
    centre(canvas, middle - 3, "OUTPUT DOWN", Style.HALT);
    centre(canvas, middle - 2, "SUPPLY OFF", Style.HALT);
    canvas.text(2, middle + 1, "When that is done: why did you stop?", Style.STRONG);
    screen.field().paint(canvas, 2, middle + 2, canvas.columns() - 4, true);
    String message =
        model
            .keepProblem()
            .map(why -> Sentence.of("NOT ON DISK: {} Trying again.", why))
            .or(model::message)
            .orElse("The walk is held. The step starts again from its brief.");
    canvas.paragraph(2, middle + 4, canvas.columns() - 4, 2, message, Style.HEED);
    Keys.paint(canvas, "Enter", "keep the reason");
  }

  private static void centre(Canvas canvas, int row, String text, Style style) {
    canvas.text((canvas.columns() - text.length()) / 2, row, text, style);
  }
}
