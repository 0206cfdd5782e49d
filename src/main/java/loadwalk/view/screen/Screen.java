package loadwalk.view.screen;

import java.util.List;
import java.util.Optional;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Key;
import loadwalk.view.state.LedgerRows;
import loadwalk.view.state.ProgramState;
import loadwalk.view.state.WaveFound;
import loadwalk.walk.Effect;
import loadwalk.walk.fact.WalkState;

/** One place the operator can be; immutable, pure. */
public interface Screen {

  /** Paints the screen below the program's own lines. */
  void paint(Canvas canvas, ProgramState program);

  /** Returns what a key does here. */
  Answer press(Key key, ProgramState program);

  /** Tells whether the open walk itself shows here, with its current step. */
  default boolean isWalk() {
    return false;
  }

  /** Tells whether the screen itself shows an alarm. */
  default boolean tellsAlarm() {
    return false;
  }

  /** Tells whether the screen itself shows that the last entry is not on disk. */
  default boolean tellsNotKept(ProgramState program) {
    return false;
  }

  /** Returns the lines of the text that it shows; empty where it is no text. */
  default List<String> text() {
    return List.of();
  }

  /** Returns the screen once the walk has moved from one state to another. */
  default Screen afterWalk(WalkState before, WalkState now) {
    return this;
  }

  /** Tells whether a wave just read is the one waited for; one that enters at once always is. */
  default boolean awaits(Effect.ReadCapture asked) {
    return asked.take();
  }

  /** Returns the screen after a wave was read; most wait for none. */
  default Screen afterCapture(WaveFound found) {
    return this;
  }

  /** Returns the screen that shows a ledger read; empty where it would take somebody away. */
  default Optional<Screen> withLedger(LedgerRows ledger) {
    return Optional.empty();
  }

  /** Tells whether walks are compared from here. */
  default boolean comparesWalks() {
    return false;
  }

  /** Returns the screen that offers a held wave, now a file; empty where it has no place. */
  default Optional<Screen> withHeld(String step, String file, ProgramState program) {
    return Optional.empty();
  }
}
