package loadwalk.view.canvas;

import java.util.List;

/** A list to choose one line from. */
public final class Menu {
  private Menu() {}

  /** Paints the lines, scrolled so that the chosen one shows. */
  public static void paint(Canvas canvas, int top, int room, List<String> lines, int chosen) {
    int first = Math.max(0, chosen - room + 1);
    for (int i = 0; i < room && first + i < lines.size(); i++) {
      boolean focus = first + i == chosen;
      String text = (focus ? "> " : "  ") + lines.get(first + i);
      canvas.text(
          1,
          top + i,
          canvas.shortened(text, canvas.columns() - 2),
          focus ? Style.FOCUS : Style.TEXT);
    }
  }

  /** Returns the line chosen after a key. */
  public static int moved(Key key, int chosen, int count) {
    switch (key.kind()) {
      case UP:
      case BACK_TAB:
        return count == 0 ? 0 : (chosen + count - 1) % count;
      case DOWN:
      case TAB:
        return count == 0 ? 0 : (chosen + 1) % count;
      case HOME:
        return 0;
      case END:
        return Math.max(0, count - 1);
      default:
        return chosen;
    }
  }

  /** Tells whether a key goes back. */
  public static boolean isBack(Key key) {
    return key.is(Key.Kind.ESCAPE) || key.is(Key.Kind.F10);
  }
}
