package loadwalk.walk;

import java.util.List;

/** What an update asks the outside world to do. */
public sealed interface Effect {

  /**
   * Writes facts to the journal, in order, and forces them to disk.
   *
   * @param facts the facts; the answer is {@link Event.Kept} or {@link Event.NotKept}
   */
  record AppendJournal(List<Stamped> facts) implements Effect {
    /** Copies the list. */
    public AppendJournal {
      facts = List.copyOf(facts);
    }
  }

  /** Rings the terminal's bell. */
  record Bell() implements Effect {}
}
