package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.text.Visible;

/**
 * Builds a ledger journal by journal. An entry comes from the index if the index has it, otherwise
 * from folding the journal.
 *
 * <p>The work can stop after any journal; {@link #index} then holds everything folded so far.
 */
public final class LedgerBuilder {
  private final LedgerIndex known;
  private final Map<String, LedgerIndex.Kept> kept = new LinkedHashMap<>();
  private final List<LedgerEntry> damaged = new ArrayList<>();
  private final List<String> unreadable = new ArrayList<>();
  private int folded;

  /** Starts from the entries of an index. */
  public LedgerBuilder(LedgerIndex known) {
    this.known = known;
  }

  /**
   * Takes the entry of a journal from the index; returns whether it was there and the journal is
   * unchanged.
   */
  public boolean takeKnown(String journal, long bytes, long changedMillis) {
    Optional<LedgerEntry> entry = known.entry(journal, bytes, changedMillis);
    entry.ifPresent(e -> kept.put(journal, new LedgerIndex.Kept(bytes, changedMillis, e)));
    return entry.isPresent();
  }

  /** Takes the entry of a journal that was folded. */
  public void takeFolded(String journal, long bytes, long changedMillis, LedgerEntry entry) {
    kept.put(journal, new LedgerIndex.Kept(bytes, changedMillis, entry));
    folded++;
  }

  /**
   * Takes the sound part of a damaged journal; it stays out of the index, so that the damage is
   * reported next time too.
   */
  public void takeDamaged(LedgerEntry entry) {
    damaged.add(entry);
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

  /** Returns the ledger of all entries taken. */
  public Ledger ledger() {
    List<LedgerEntry> all = new ArrayList<>(damaged);
    kept.values().forEach(k -> all.add(k.entry()));
    return Ledger.of(all);
  }

  /** Returns the index to keep for the next time. */
  public LedgerIndex index() {
    return new LedgerIndex(kept);
  }
}
