package loadwalk.view;

/** One place the operator can be; immutable, pure. */
public interface Screen {

  /** Paints the screen below the program's own lines. */
  void paint(Canvas canvas, Program program);

  /** Returns what a key does here. */
  Answer press(Key key, Program program);
}
