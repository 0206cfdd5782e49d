package loadwalk.view;

import java.util.List;
import java.util.Optional;
import loadwalk.walk.Effect;

/** One place the operator can be; immutable, pure. */
public interface Screen {

  /** Paints the screen below the program's own lines. */
  void paint(Canvas canvas, Program program);

  /** Returns what a key does here. */
  Answer press(Key key, Program program);

  /** Returns it as the screen of the walk, where it is that one. */
  default Optional<WalkScreen> ofWalk() {
    return Optional.empty();
  }

  /** Returns the lines of the text that it shows; empty where it is no text. */
  default List<String> text() {
    return List.of();
  }

  /** Returns the screen after a wave was read; most wait for none. */
  default Screen afterCapture(Effect.ReadCapture asked, WaveFound found) {
    return this;
  }

  /** Returns the screen that shows a ledger read; empty where it would take somebody away. */
  default Optional<Screen> withLedger(ProgramEvent.LedgerReady ledger) {
    return Optional.empty();
  }
}
