package loadwalk.tui;

import java.io.IOException;

/** Says that the machine lacks what sets up a terminal, and what to do without it. */
public final class NoStty extends IOException {
  private static final long serialVersionUID = 1L;

  NoStty() {
    super(
        "Loadwalk's screens need the programs sh and stty; one of them is not on the PATH. Install"
            + " it (stty is in coreutils), or use --plain for the same walk as lines of text.");
  }
}
