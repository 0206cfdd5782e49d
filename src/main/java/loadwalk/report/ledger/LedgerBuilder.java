package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.text.Visible;

/**
 * Gathers a ledger journal by journal: what the index knows is taken from it, the rest as folded.
 *
 * <p>It can be stopped after any journal; {@link #index} then holds all that was folded so far.
 */
public final class LedgerBuilder {
  private final LedgerIndex known;
  private final Map<String, LedgerIndex.Kept> kept = new LinkedHashMap<>();
  private final List<LedgerEntry> damaged = new ArrayList<>();
  private final List<String> unreadable = new ArrayList<>();
  private int folded;

  /** Begins with what is remembered. */
  public LedgerBuilder(LedgerIndex known) {
    this.known = known;
  }

  /** Takes a journal from the index; returns whether it was there and is unchanged. */
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

  /** Takes what is sound of a damaged journal; the index does not, so its damage is told again. */
  public void takeDamaged(LedgerEntry entry) {
    damaged.add(entry);
  }

  /** Remembers that a journal cannot be read, or not to its end. */
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

  /** Returns the ledger of all that was gathered. */
  public Ledger ledger() {
    List<LedgerEntry> all = new ArrayList<>(damaged);
    kept.values().forEach(k -> all.add(k.entry()));
    return Ledger.of(all);
  }

  /** Returns what to remember. */
  public LedgerIndex index() {
    return new LedgerIndex(kept);
  }
}
