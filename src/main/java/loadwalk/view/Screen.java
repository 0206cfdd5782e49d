package loadwalk.view;

/** One place the operator can be; immutable, pure. */
public interface Screen {

  /** Paints the screen below the desk's own lines. */
  void paint(Canvas canvas, Desk desk);

  /** Returns what a key does here. */
  Answer press(Key key, Desk desk);
}
