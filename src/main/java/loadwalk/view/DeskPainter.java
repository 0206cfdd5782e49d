package loadwalk.view;

/**
 * Paints desks one after another, as they follow from keys.
 *
 * <p>A key typed into a reading changes nothing but the row the reading stands in, which is the row
 * of the cursor; so that row alone is painted anew. The frame is the one that {@link Desk#paint}
 * gives.
 */
public final class DeskPainter {
  private final Look look;
  private Desk before;
  private Frame shown;
  private Desk expected;
  private Frame ahead;

  /** Makes a painter for a terminal that shows these characters. */
  public DeskPainter(Look look) {
    this.look = look;
  }

  /** Paints a desk that is likely to come, so that it need not be painted then. */
  public void expect(Desk desk, Size size) {
    expected = desk;
    ahead = desk.paint(size, look);
  }

  /** Paints a desk for a size. */
  public Frame paint(Desk desk, Size size) {
    if (desk == expected && ahead.size().equals(size)) {
      shown = ahead;
      before = desk;
      return shown;
    }
    boolean typed =
        shown != null
            && shown.size().equals(size)
            && size.isEnough()
            && isTyped(desk)
            && RunPanel.takesTyping(desk, (WalkScreen) desk.screen());
    shown = typed ? typedOn(desk, size) : desk.paint(size, look);
    before = desk;
    return shown;
  }

  private Frame typedOn(Desk desk, Size size) {
    int cursor = shown.cursor() / size.columns();
    Canvas canvas = shown.canvas(look);
    WalkScreen screen = (WalkScreen) desk.screen();
    Area panel = WalkPainter.panel(canvas, WalkFoot.of(desk, screen), cursor);
    if (shown.cursor() < 0 || panel.rows() < 1) {
      return desk.paint(size, look);
    }
    Area row = new Area(panel.column(), cursor, panel.columns(), 1);
    RunPanel.paintFocus(canvas, desk, screen, row);
    return canvas.frame();
  }

  /** Tells whether a desk differs from the last one by nothing but the text of its field. */
  private boolean isTyped(Desk desk) {
    return desk.screen() instanceof WalkScreen now
        && before.screen() instanceof WalkScreen then
        && now.focus() == then.focus()
        && now.prompt().isEmpty()
        && then.prompt().isEmpty()
        && desk.walk().isPresent()
        && before.walk().isPresent()
        && desk.walk().get() == before.walk().get()
        && desk.library() == before.library()
        && desk.practice() == before.practice()
        && desk.meters() == before.meters()
        && desk.waves() == before.waves()
        && desk.live() == before.live()
        && desk.notice().equals(before.notice());
  }
}
