package loadwalk.tui;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Size;
import loadwalk.view.canvas.Style;

/**
 * Paints frames on a terminal, writing only the cells that changed.
 *
 * <p>Lanterna's screen keeps two buffers of cells and compares all of them at each refresh, which
 * takes longer than all other work for a key. A frame has one cell a column, so the differences
 * between two frames are written as they are found, in runs of neighbouring cells of one style. One
 * thread paints at a time.
 */
public final class Surface {
  private final Terminal terminal;
  private final Palette palette;
  private final StringBuilder run = new StringBuilder();
  private Frame shown;
  private Style written;

  /**
   * Makes a surface on a terminal in private mode.
   *
   * @param terminal the terminal
   * @param colour whether colours may be used
   */
  public Surface(Terminal terminal, boolean colour) {
    this.terminal = terminal;
    this.palette = colour ? Palette.COLOUR : Palette.PLAIN;
  }

  /**
   * Returns the size to paint for.
   *
   * @throws IOException if the terminal does not give its size
   */
  public Size size() throws IOException {
    TerminalSize size = terminal.getTerminalSize();
    return new Size(size.getColumns(), size.getRows());
  }

  /** Forgets what is shown, so that the next frame is painted whole. */
  public synchronized void forget() {
    shown = null;
  }

  /**
   * Shows a frame.
   *
   * @return how many cells were painted
   * @throws IOException if the terminal cannot be written to
   */
  public int show(Frame frame) throws IOException {
    return show(frame, () -> {});
  }

  /**
   * Shows a frame.
   *
   * @param atLast what is done just before the terminal is given the last of it: whoever answers
   *     the frame may be quicker than this thread comes back from there
   * @return how many cells were painted
   * @throws IOException if the terminal cannot be written to
   */
  public synchronized int show(Frame frame, Runnable atLast) throws IOException {
    boolean whole = shown == null || !shown.size().equals(frame.size());
    if (whole) {
      written = null;
      terminal.resetColorAndSGR();
      terminal.clearScreen();
    }
    int painted = 0;
    for (int row = 0; row < frame.size().rows(); row++) {
      if (whole || !frame.sameRow(shown, row)) {
        painted += paintRow(frame, row, whole);
      }
    }
    boolean moved = painted > 0 || whole || shown.cursor() != frame.cursor();
    if (moved) {
      placeCursor(frame, whole);
    }
    atLast.run();
    if (moved) {
      terminal.flush();
    }
    shown = frame;
    return painted;
  }

  private int paintRow(Frame frame, int row, boolean whole) throws IOException {
    int painted = 0;
    int column = 0;
    while (column < frame.size().columns()) {
      int end = column;
      Style style = frame.style(column, row);
      while (end < frame.size().columns()
          && frame.style(end, row) == style
          && (whole || differs(frame, end, row))) {
        run.append(frame.glyph(end++, row));
      }
      if (end > column) {
        write(column, row, style);
        painted += end - column;
      }
      column = Math.max(end, column + 1);
    }
    return painted;
  }

  private boolean differs(Frame frame, int column, int row) {
    return shown.glyph(column, row) != frame.glyph(column, row)
        || shown.style(column, row) != frame.style(column, row);
  }

  private void write(int column, int row, Style style) throws IOException {
    terminal.setCursorPosition(column, row);
    if (style != written) {
      palette.put(style, terminal);
      written = style;
    }
    terminal.putString(run.toString());
    run.setLength(0);
  }

  private void placeCursor(Frame frame, boolean whole) throws IOException {
    boolean seen = frame.cursor() >= 0;
    if (whole || seen != shown.cursor() >= 0) {
      terminal.setCursorVisible(seen);
    }
    if (seen) {
      int columns = frame.size().columns();
      terminal.setCursorPosition(frame.cursor() % columns, frame.cursor() / columns);
    }
  }
}
