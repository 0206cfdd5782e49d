package loadwalk.view;

import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.walk.WalkScreen;

/**
 * Paints programs one after another, as they follow from keys.
 *
 * <p>A key typed into a reading changes nothing but the row of that reading, which is the row of
 * the cursor; so that row alone is painted anew. The frame is the one that {@link Program#paint}
 * gives.
 */
public final class ProgramPainter {
  private final Look look;
  private Program before;
  private Frame shown;

  /** Makes a painter for a terminal that shows these characters. */
  public ProgramPainter(Look look) {
    this.look = look;
  }

  /** Paints a program for a size. */
  public Frame paint(Program program, Size size) {
    boolean typed =
        shown != null && shown.size().equals(size) && size.isEnough() && isTyped(program);
    shown = typed ? typedOn(program, size) : program.paint(size, look);
    before = program;
    return shown;
  }

  private Frame typedOn(Program program, Size size) {
    int row = shown.cursor() / size.columns();
    Canvas canvas = shown.canvas(look);
    WalkScreen screen = (WalkScreen) program.screen();
    return shown.cursor() >= 0 && screen.paintTyped(canvas, program.state(), row)
        ? canvas.frame()
        : program.paint(size, look);
  }

  /** Tells whether a program differs from the last one by nothing but the text of its field. */
  private boolean isTyped(Program program) {
    return program.screen() instanceof WalkScreen now
        && before.screen() instanceof WalkScreen then
        && program.walk().isPresent()
        && program.ofKeys().equals(before.ofKeys())
        && program.state().showsTheSameAs(before.state())
        && now.isTypedOnFrom(then, program.state());
  }
}
