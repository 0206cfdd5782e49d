package loadwalk.view;

import loadwalk.walk.Model;

/** What shows on a terminal too small for the screens: its need, and that the stop key works. */
final class TooSmall {
  private TooSmall() {}

  static void paint(Canvas canvas, Program program) {
    boolean stopped = program.walk().filter(Model::isStopped).isPresent();
    if (stopped) {
      canvas.paragraph(
          0,
          0,
          canvas.columns(),
          3,
          "OUTPUT DOWN, SUPPLY OFF. Then make the window larger.",
          Style.HALT);
      return;
    }
    String walking = program.walk().isPresent() ? " Esc still stops the walk at once." : "";
    String sentence =
        "Loadwalk needs "
            + Size.LEAST.columns()
            + " columns and "
            + Size.LEAST.rows()
            + " rows; this window has "
            + canvas.columns()
            + " and "
            + canvas.rows()
            + "."
            + walking;
    canvas.paragraph(0, 0, canvas.columns(), canvas.rows(), sentence, Style.STRONG);
  }
}
