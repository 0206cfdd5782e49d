package loadwalk.view;

import java.util.Optional;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Size;
import loadwalk.view.canvas.Style;
import loadwalk.walk.Model;

/** What shows on a terminal too small for the screens: its need, and that the stop key works. */
final class TooSmall {
  private static final String OFF = "OUTPUT DOWN, SUPPLY OFF. Then make the window larger.";

  private TooSmall() {}

  static void paint(Canvas canvas, Optional<Model> walk, Optional<String> ofKeys) {
    if (walk.filter(Model::isStopped).isPresent()) {
      canvas.paragraph(0, 0, canvas.columns(), 3, OFF, Style.HALT);
      return;
    }
    String sentence =
        Sentence.of(
            walk.isPresent()
                ? "Loadwalk needs {} columns and {} rows; this window has {} and {}."
                    + " Esc still stops the walk at once."
                : "Loadwalk needs {} columns and {} rows; this window has {} and {}.",
            Size.LEAST.columns(),
            Size.LEAST.rows(),
            canvas.columns(),
            canvas.rows());
    int row = canvas.paragraph(0, 0, canvas.columns(), canvas.rows(), sentence, Style.STRONG);
    canvas.paragraph(0, row, canvas.columns(), canvas.rows() - row, ofKeys.orElse(""), Style.HEED);
  }
}
