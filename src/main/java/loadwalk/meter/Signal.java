package loadwalk.meter;

/** An event on the line of a dialogue, with its time in ms of one clock. */
public sealed interface Signal {
  /** Returns the time of the event, ms. */
  long atMillis();

  /** Returns the turn that follows from it in a dialogue. */
  Dialogue.Turn reach(Dialogue dialogue);

  /** The line is open. */
  record Opened(long atMillis) implements Signal {
    @Override
    public Dialogue.Turn reach(Dialogue dialogue) {
      return dialogue.opened(atMillis);
    }
  }

  /** Characters arrived: any number of lines or part of one. */
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

  /** Time has passed. */
  record Clock(long atMillis) implements Signal {
    @Override
    public Dialogue.Turn reach(Dialogue dialogue) {
      return dialogue.clock(atMillis);
    }
  }
}
