package loadwalk.journal;

import java.util.Objects;

/**
 * One record of a journal.
 *
 * @param seq its number, from 1
 * @param body the JSON object in it, on one line, as written
 */
public record JournalRecord(long seq, String body) {
  /** Checks that the record is numbered from 1 and has a body. */
  public JournalRecord {
    Objects.requireNonNull(body, "body");
    if (seq < 1) {
      throw new IllegalArgumentException("seq must be 1 or more, got " + seq);
    }
  }
}
