package loadwalk.view;

/**
 * Paints programs one after another, as they follow from keys.
 *
 * <p>A key typed into a reading changes nothing but the row the reading stands in, which is the row
 * of the cursor; so that row alone is painted anew. The frame is the one that {@link Program#paint}
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
        shown != null
            && shown.size().equals(size)
            && size.isEnough()
            && isTyped(program)
            && RunPanel.takesTyping(program, (WalkScreen) program.screen());
    shown = typed ? typedOn(program, size) : program.paint(size, look);
    before = program;
    return shown;
  }

  private Frame typedOn(Program program, Size size) {
    int cursor = shown.cursor() / size.columns();
    Canvas canvas = shown.canvas(look);
    WalkScreen screen = (WalkScreen) program.screen();
    Area panel = WalkPainter.panel(canvas, WalkFoot.of(program, screen), cursor);
    if (shown.cursor() < 0 || panel.rows() < 1) {
      return program.paint(size, look);
    }
    Area row = new Area(panel.column(), cursor, panel.columns(), 1);
    RunPanel.paintFocus(canvas, program, screen, row);
    return canvas.frame();
  }

  /** Tells whether a program differs from the last one by nothing but the text of its field. */
  private boolean isTyped(Program program) {
    return program.screen() instanceof WalkScreen now
        && before.screen() instanceof WalkScreen then
        && now.focus() == then.focus()
        && now.prompt().isEmpty()
        && then.prompt().isEmpty()
        && program.walk().isPresent()
        && before.walk().isPresent()
        && program.walk().get() == before.walk().get()
        && program.library() == before.library()
        && program.practice() == before.practice()
        && program.meters() == before.meters()
        && program.waves() == before.waves()
        && program.live() == before.live()
        && program.notice().equals(before.notice());
  }
}
