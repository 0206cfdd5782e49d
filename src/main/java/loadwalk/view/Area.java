package loadwalk.view;

/** A part of the screen: its top left cell and its size in cells. */
record Area(int column, int row, int columns, int rows) {
  int bottom() {
    return row + rows;
  }

  /** Returns the area without so many rows at its top. */
  Area below(int taken) {
    return new Area(column, row + taken, columns, Math.max(0, rows - taken));
  }
}
