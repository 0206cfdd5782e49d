package loadwalk.walk;

import java.util.List;

/** Something that reaches a walk from outside. */
public sealed interface Event
    permits Event.Kept, Event.NotKept, Event.Tick, Event.Reopened, Intent {

  /** The facts are on disk. */
  record Kept(List<Stamped> facts) implements Event {
    /** Copies the list. */
    public Kept {
      facts = List.copyOf(facts);
    }
  }

  /**
   * The facts could not be written; nothing of them counts.
   *
   * @param why one sentence
   */
  record NotKept(String why) implements Event {}

  /**
   * Time went on.
   *
   * @param monoNanos a clock that only goes forward, ns
   * @param wallMillis the wall clock, ms since 1970
   */
  record Tick(long monoNanos, long wallMillis) implements Event {}

  /** The walk was read back from its journal. */
  record Reopened(long monoNanos, long wallMillis) implements Event {}
}
