package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A ledger: walks side by side.
 *
 * @param entries the walks in the order shown
 * @param ways each way of measuring with its letter, the most common first
 * @param notes what a reader is to know of journals that are copies, renamed or left out
 * @param counted the walk that counts, by the name of each copy of it
 */
public record Ledger(
    List<LedgerEntry> entries,
    Map<LedgerEntry.Done, String> ways,
    List<String> notes,
    Map<String, String> counted) {
  private static final int LETTERS = 26;

  /** Copies the collections, keeping their order. */
  public Ledger {
    entries = List.copyOf(entries);
    ways = Collections.unmodifiableMap(new LinkedHashMap<>(ways));
    notes = List.copyOf(notes);
    counted = Map.copyOf(counted);
  }

  /** Returns a ledger with the newest walk first. */
  public static Ledger of(List<LedgerEntry> entries) {
    Map<LedgerEntry.Done, Integer> counts = new LinkedHashMap<>();
    entries.forEach(e -> counts.merge(e.done(), 1, Integer::sum));
    List<LedgerEntry.Done> common = new ArrayList<>(counts.keySet());
    common.sort(
        Comparator.<LedgerEntry.Done>comparingInt(d -> -counts.get(d))
            .thenComparing(LedgerEntry.Done::sequence)
            .thenComparing(LedgerEntry.Done::contentHash)
            .thenComparingDouble(LedgerEntry.Done::supplyVolts));
    Map<LedgerEntry.Done, String> ways = new LinkedHashMap<>();
    common.forEach(d -> ways.put(d, letter(ways.size())));
    return new Ledger(entries, ways, List.of(), Map.of()).sorted(LedgerSort.NEWEST);
  }

  /** Returns this ledger with notes, and with the walks that count in place of copies. */
  public Ledger noting(List<String> more, Map<String, String> copies) {
    return new Ledger(entries, ways, more, copies);
  }

  /**
   * Returns this ledger in another order; a ranking by measured values ranks each way of measuring
   * separately.
   */
  public Ledger sorted(LedgerSort sort) {
    List<LedgerEntry.Done> order = List.copyOf(ways.keySet());
    Map<LedgerEntry.Done, Integer> places = new LinkedHashMap<>();
    order.forEach(d -> places.put(d, places.size()));
    Comparator<LedgerEntry> byKey = sort.order().thenComparing(LedgerEntry::walk);
    Comparator<LedgerEntry> all =
        sort.ranks()
            ? Comparator.<LedgerEntry>comparingInt(e -> places.get(e.done())).thenComparing(byKey)
            : byKey;
    return new Ledger(entries.stream().sorted(all).toList(), ways, notes, counted);
  }

  /** Returns the walks whose name, amplifier or sequence contains every word, ignoring case. */
  public Ledger filtered(String words) {
    String[] sought = words.strip().toLowerCase(Locale.ROOT).split("\\s+");
    List<LedgerEntry> found = new ArrayList<>();
    for (LedgerEntry e : entries) {
      String text =
          (e.walk() + ' ' + e.amplifier() + ' ' + e.done().sequence()).toLowerCase(Locale.ROOT);
      boolean all = true;
      for (String word : sought) {
        all &= text.contains(word);
      }
      if (all) {
        found.add(e);
      }
    }
    return new Ledger(found, ways, notes, counted);
  }

  /** Finds a walk by its name or by that of a copy of it. */
  public Optional<LedgerEntry> find(String walk) {
    String sought = counted.getOrDefault(walk, walk);
    return entries.stream().filter(e -> e.walk().equals(sought)).findFirst();
  }

  /** Returns the letter for the way a walk was measured. */
  public String way(LedgerEntry entry) {
    return ways.getOrDefault(entry.done(), "?");
  }

  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
  }
}
