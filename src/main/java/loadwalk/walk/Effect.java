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

  /**
   * Finds a photo and keeps a copy of it beside the walk's journal.
   *
   * @param walk the walk's name
   * @param path where it lies, as typed
   * @param caption what it shows; the answer, {@link Event.PhotoKept} or {@link
   *     Event.PhotoRefused}, gives it back
   */
  record KeepPhoto(String walk, String path, String caption) implements Effect {}

  /** Rings the terminal's bell. */
  record Bell() implements Effect {}
}
