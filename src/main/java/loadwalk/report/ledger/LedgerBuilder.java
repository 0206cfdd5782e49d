package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loadwalk.text.Visible;

/**
 * Builds a ledger journal by journal. An entry comes from the index if the index knows the bytes of
 * the journal, otherwise from folding them.
 *
 * <p>The work can stop after any journal; {@link #index} then holds everything taken so far.
 */
public final class LedgerBuilder {
  private final Map<String, LedgerIndex.Kept> kept = new LinkedHashMap<>();
  private final List<Taken> taken = new ArrayList<>();
  private final List<String> unreadable = new ArrayList<>();
  private int folded;

  /**
   * A journal with its entry.
   *
   * @param journal the name of its file, without the ending
   * @param sum the sum of its bytes
   * @param kept its entry, and the sum of the record that opens its walk
   */
  public record Taken(String journal, String sum, LedgerIndex.Kept kept) {
    /** Returns the entry under the name that the journal is found by. */
    LedgerEntry entry() {
      return kept.entry().under(journal);
    }

    /** Returns the name that the journal itself gives its walk. */
    String named() {
      return kept.entry().walk();
    }
  }

  /** Takes a journal whose entry the index knew. */
  public void takeKnown(Taken journal) {
    taken.add(journal);
    kept.put(journal.sum(), journal.kept());
  }

  /** Takes a journal that was folded. */
  public void takeFolded(Taken journal) {
    takeKnown(journal);
    folded++;
  }

  /**
   * Takes the sound part of a damaged journal; it stays out of the index, so that the damage is
   * reported next time too.
   */
  public void takeDamaged(Taken journal) {
    taken.add(journal);
  }

  /** Records that a journal cannot be read, or not to its end. */
  public void cannotRead(String journal, String why) {
    unreadable.add(Visible.name(journal) + ": " + Visible.sentence(why));
  }

  /** Returns how many journals were folded rather than taken from the index. */
  public int folded() {
    return folded;
  }

  /** Returns each journal that cannot be read, or not to its end, with the reason. */
  public List<String> unreadable() {
    return List.copyOf(unreadable);
  }

  /**
   * Returns the ledger of all walks taken, each of them once.
   *
   * @param leftOut a sentence for each journal that was passed over
   * @param bytes reads journals again that begin alike
   */
  public Ledger ledger(List<String> leftOut, Copies.Bytes bytes) {
    Copies copies = Copies.among(taken, bytes);
    List<LedgerEntry> all = copies.kept().stream().map(Taken::entry).toList();
    List<String> notes = new ArrayList<>(leftOut);
    notes.addAll(copies.notes());
    return Ledger.of(all).noting(notes, copies.counted());
  }

  /** Returns the index to keep for the next time. */
  public LedgerIndex index() {
    return new LedgerIndex(kept);
  }
}
