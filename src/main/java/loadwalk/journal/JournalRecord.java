package loadwalk.journal;

import java.util.Objects;

/**
 * One record of a journal.
 *
 * @param seq its number, from 1
 * @param after the sum of the record before it; empty where it does not name one
 * @param sum its own sum
 * @param body the JSON object in it, on one line, as written
 */
public record JournalRecord(long seq, String after, String sum, String body) {
  /** Checks that the record is numbered from 1 and has its parts. */
  public JournalRecord {
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(sum, "sum");
    Objects.requireNonNull(body, "body");
    if (seq < 1) {
      throw new IllegalArgumentException("seq must be 1 or more, got " + seq);
    }
  }

  /** Returns its line as it stands in the journal, line feed included. */
  public byte[] line() {
    return Framing.line(seq, after, body);
  }
}
