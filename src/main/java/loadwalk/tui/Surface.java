package loadwalk.tui;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.screen.Screen;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import loadwalk.view.Frame;
import loadwalk.view.Size;
import loadwalk.view.Style;

/** Puts frames on a Lanterna screen, only the cells that changed. */
public final class Surface {
  private final Screen screen;
  private final Palette palette;
  // Lanterna looks each character's bounds up by locale data when a cell is made, so none is twice.
  private final Map<Integer, TextCharacter> cells = new HashMap<>();
  private Frame shown;

  /**
   * Makes a surface on a started screen.
   *
   * @param screen the screen
   * @param colour whether colours may be used
   */
  public Surface(Screen screen, boolean colour) {
    this.screen = screen;
    this.palette = colour ? Palette.COLOUR : Palette.PLAIN;
  }

  /** Returns the size to paint for, after taking in any resize. */
  public Size size() {
    TerminalSize resized = screen.doResizeIfNecessary();
    if (resized != null) {
      shown = null;
      screen.clear();
    }
    TerminalSize size = screen.getTerminalSize();
    return new Size(size.getColumns(), size.getRows());
  }

  /** Forgets what is shown, so that the next frame is painted whole. */
  public void forget() {
    shown = null;
    screen.clear();
  }

  /**
   * Shows a frame.
   *
   * @return how many cells were painted
   * @throws IOException if the terminal cannot be written
   */
  public int show(Frame frame) throws IOException {
    int painted = 0;
    Size size = frame.size();
    boolean whole = shown == null || !shown.size().equals(size);
    for (int row = 0; row < size.rows(); row++) {
      for (int column = 0; column < size.columns(); column++) {
        if (whole || differs(frame, column, row)) {
          screen.setCharacter(
              column, row, cell(frame.glyph(column, row), frame.style(column, row)));
          painted++;
        }
      }
    }
    boolean cursorMoved = shown == null || shown.cursor() != frame.cursor();
    if (painted > 0 || cursorMoved) {
      screen.setCursorPosition(cursor(frame));
      screen.refresh(whole ? Screen.RefreshType.COMPLETE : Screen.RefreshType.DELTA);
    }
    shown = frame;
    return painted;
  }

  private TextCharacter cell(char glyph, Style style) {
    return cells.computeIfAbsent(
        glyph | style.ordinal() << Character.SIZE, key -> palette.cell(glyph, style));
  }

  private boolean differs(Frame frame, int column, int row) {
    return shown.glyph(column, row) != frame.glyph(column, row)
        || shown.style(column, row) != frame.style(column, row);
  }

  private static TerminalPosition cursor(Frame frame) {
    return frame.cursor() < 0
        ? null
        : new TerminalPosition(
            frame.cursor() % frame.size().columns(), frame.cursor() / frame.size().columns());
  }
}
