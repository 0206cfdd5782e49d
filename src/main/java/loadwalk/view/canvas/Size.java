package loadwalk.view.canvas;

/**
 * The size of the terminal.
 *
 * @param columns cells across
 * @param rows cells down
 */
public record Size(int columns, int rows) {
  /** The least size on which every screen shows whole. */
  public static final Size LEAST = new Size(80, 24);

  /** Tells whether screens can be shown whole. */
  public boolean isEnough() {
    return columns >= LEAST.columns && rows >= LEAST.rows;
  }
}
