package loadwalk.journal;

import java.util.Arrays;
import java.util.List;

/** What an interrupted write leaves at the end of a journal, for tests. */
public final class TornLine {
  private TornLine() {}

  /** Returns the first bytes of a next record behind the records of a journal. */
  public static byte[] after(byte[] journal, int length) {
    List<JournalRecord> records = Recovery.read(journal).records();
    JournalRecord last = records.get(records.size() - 1);
    String after = records.size() > 1 && last.after().isEmpty() ? "" : last.sum();
    return Arrays.copyOf(
        Framing.line(last.seq() + 1, after, "{\"text\":\"" + "x".repeat(length) + "\"}"), length);
  }
}
