package loadwalk.app;

import loadwalk.tui.Input;
import loadwalk.view.ProgramEvent;

/** What reaches the event loop of the terminal. */
sealed interface Signal {

  /** The keyboard sent something. */
  record FromKeyboard(Input input) implements Signal {}

  /** The window changed its size. */
  record Resized() implements Signal {}

  /** Something was read in the background. */
  record Ready(ProgramEvent event) implements Signal {}

  /** A meter has spoken. */
  record MetersSpoke() implements Signal {}

  /** A thread other than the loop's ended by a fault. */
  record Broken(Throwable fault) implements Signal {}

  /** A second went by. */
  record SecondPassed() implements Signal {}
}
