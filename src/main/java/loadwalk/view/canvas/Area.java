package loadwalk.view.canvas;

/** A part of the screen: its top left cell and its size in cells. */
public record Area(int column, int row, int columns, int rows) {
  /** Returns the row below the last one. */
  public int bottom() {
    return row + rows;
  }
}
