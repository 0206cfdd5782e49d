package loadwalk.tui;

import loadwalk.view.Key;

/** What came from the keyboard. */
public sealed interface Input {

  /** A key that screens know. */
  record Pressed(Key key) implements Input {}

  /** A pasted text begins or ends. */
  record Paste(boolean begins) implements Input {}

  /** Leave now: Ctrl-C, Ctrl-\, or the keyboard is gone. */
  record Leave(boolean keyboardGone) implements Input {}

  /** Suspend the program: Ctrl-Z. */
  record Suspend() implements Input {}

  /** A key without meaning here. */
  record Nothing() implements Input {}
}
