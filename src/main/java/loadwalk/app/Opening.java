package loadwalk.app;

import java.util.Optional;
import loadwalk.journal.Recovered;

/** What came of opening a walk. */
public sealed interface Opening {
  /**
   * The walk is open for writing.
   *
   * @param walk where records go; to be closed
   * @param read what stands in the journal
   * @param told what the operator is to know, such as a torn line that was kept aside
   */
  record Writing(OpenWalk walk, Recovered read, Optional<String> told) implements Opening {}

  /**
   * The walk may be looked at, not written on.
   *
   * @param read what stands in the journal
   * @param why who holds it, or what is wrong with it, in whole sentences
   */
  record Watching(Recovered read, String why) implements Opening {}

  /**
   * The walk cannot be opened at all.
   *
   * @param why one sentence
   */
  record Refused(String why) implements Opening {}
}
