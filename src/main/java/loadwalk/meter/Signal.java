package loadwalk.meter;

/** Something that reaches a dialogue from its line; every one says when, ms of one clock. */
public sealed interface Signal {
  /** Returns the moment, ms. */
  long atMillis();

  /** Returns what follows from it. */
  Dialogue.Turn reach(Dialogue dialogue);

  /** The line is open. */
  record Opened(long atMillis) implements Signal {
    @Override
    public Dialogue.Turn reach(Dialogue dialogue) {
      return dialogue.opened(atMillis);
    }
  }

  /** Characters came, any number of lines or a piece of one. */
  record Received(String text, long atMillis) implements Signal {
    @Override
    public Dialogue.Turn reach(Dialogue dialogue) {
      return dialogue.received(text, atMillis);
    }
  }

  /** The line is gone, or could not be opened. */
  record Lost(String why, long atMillis) implements Signal {
    @Override
    public Dialogue.Turn reach(Dialogue dialogue) {
      return dialogue.lost(why, atMillis);
    }
  }

  /** Time went on. */
  record Clock(long atMillis) implements Signal {
    @Override
    public Dialogue.Turn reach(Dialogue dialogue) {
      return dialogue.clock(atMillis);
    }
  }
}
