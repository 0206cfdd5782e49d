package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loadwalk.bench.Bench;
import loadwalk.result.Repeatability;
import loadwalk.text.Sentence;

/**
 * A ledger: walks side by side.
 *
 * @param entries the walks in the order shown
 * @param sort that order
 * @param groups the walks ranked in it, by what they have alike
 * @param notes what a reader is to know of journals that are copies, renamed or left out
 * @param counted the walk that counts, by the name of each copy of it
 */
public record Ledger(
    List<LedgerEntry> entries,
    LedgerSort sort,
    List<RankGroup> groups,
    List<String> notes,
    Map<String, String> counted) {
  /** Copies the collections, keeping their order. */
  public Ledger {
    entries = List.copyOf(entries);
    groups = List.copyOf(groups);
    notes = List.copyOf(notes);
    counted = Map.copyOf(counted);
  }

  /** Returns a ledger with the newest walk first. */
  public static Ledger of(List<LedgerEntry> entries) {
    return new Ledger(entries, LedgerSort.NEWEST, List.of(), List.of(), Map.of())
        .sorted(LedgerSort.NEWEST);
  }

  /** Returns this ledger with notes, and with the walks that count in place of copies. */
  public Ledger noting(List<String> more, Map<String, String> copies) {
    return new Ledger(entries, sort, groups, more, copies);
  }

  /**
   * Returns this ledger in another order. A ranking by measured values ranks by itself what was
   * reached under like conditions; what does not rank comes last.
   */
  public Ledger sorted(LedgerSort by) {
    List<RankGroup> ranked = RankGroup.of(entries, by);
    List<LedgerEntry> order = new ArrayList<>();
    ranked.forEach(group -> order.addAll(group.walks()));
    Set<LedgerEntry> placed = Collections.newSetFromMap(new IdentityHashMap<>());
    placed.addAll(order);
    entries.stream().filter(e -> !placed.contains(e)).sorted(by.order()).forEach(order::add);
    return new Ledger(order, by, ranked, notes, counted);
  }

  /** Returns the walks whose name, amplifier or sequence contains every word, ignoring case. */
  public Ledger filtered(String words) {
    String[] sought = words.strip().toLowerCase(Locale.ROOT).split("\\s+");
    List<LedgerEntry> found =
        entries.stream().filter(e -> Arrays.stream(sought).allMatch(text(e)::contains)).toList();
    return new Ledger(found, sort, groups, notes, counted);
  }

  private static String text(LedgerEntry e) {
    return (e.walk() + ' ' + e.amplifier() + ' ' + e.done().sequence()).toLowerCase(Locale.ROOT);
  }

  /** Finds a walk by its name or by that of a copy of it. */
  public Optional<LedgerEntry> find(String walk) {
    String sought = counted.getOrDefault(walk, walk);
    return entries.stream().filter(e -> e.walk().equals(sought)).findFirst();
  }

  /**
   * Learns how well a bench repeats a reading, from the sound walks on it; practice teaches only
   * practice.
   */
  public Repeatability repeatability(Bench bench, boolean practice) {
    String name = BenchRepeats.name(bench);
    return Repeatability.pooled(
        entries.stream()
            .filter(e -> e.practice() == practice && !e.soundness().standing().isFaulty())
            .filter(e -> e.repeats().bench().equals(name))
            .flatMap(e -> e.repeats().pairs().stream())
            .toList());
  }

  /**
   * Returns the place of each walk that is ranked, such as "A 2", by its name; empty in an order
   * that ranks nothing.
   */
  public Map<String, String> places() {
    Map<String, String> places = new LinkedHashMap<>();
    for (RankGroup group : groups) {
      int place = 1;
      for (LedgerEntry walk : group.walks()) {
        places.put(walk.walk(), Sentence.of("{} {}", group.letter(), place++));
      }
    }
    return places;
  }
}
