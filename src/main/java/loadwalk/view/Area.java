package loadwalk.view;

/** A part of the screen: its top left cell and its size in cells. */
record Area(int column, int row, int columns, int rows) {
  int bottom() {
    return row + rows;
  }
}
