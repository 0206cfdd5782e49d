package loadwalk.report.ledger;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import loadwalk.report.ledger.LedgerEntry.Load;

/** The orders of a ledger. */
public enum LedgerSort {
  /** The newest record first. */
  NEWEST("newest", Comparator.comparingLong(LedgerEntry::wallMillis).reversed()),
  /** By amplifier, A to Z. */
  NAME("name", Comparator.comparing(e -> e.amplifier().toLowerCase(Locale.ROOT))),
  /** The most total power first. */
  POWER("power", true, LedgerSort::power),
  /** The most watts per ampere of fuse first. */
  FUSE("watts-per-fuse-amp", true, LedgerSort::perFuseAmp),
  /** The highest worst-case ratio of measured to rated power first. */
  HONESTY("honesty", false, LedgerSort::honesty),
  /** The best efficiency first. */
  EFFICIENCY("efficiency", true, LedgerSort::efficiency);

  /**
   * What a walk is ranked by.
   *
   * @param load the result
   * @param value the higher the better
   */
  record Ranked(Load load, double value) {}

  private final String word;
  private final Comparator<LedgerEntry> order;
  private final boolean amongAlike;
  private final Function<LedgerEntry, Optional<Ranked>> ranked;

  LedgerSort(String word, Comparator<LedgerEntry> order) {
    this(word, order, false, e -> Optional.empty());
  }

  LedgerSort(String word, boolean amongAlike, Function<LedgerEntry, Optional<Ranked>> ranked) {
    this(word, Comparator.comparing(LedgerEntry::walk), amongAlike, ranked);
  }

  LedgerSort(
      String word,
      Comparator<LedgerEntry> order,
      boolean amongAlike,
      Function<LedgerEntry, Optional<Ranked>> ranked) {
    this.word = word;
    this.order = order.thenComparing(LedgerEntry::walk);
    this.amongAlike = amongAlike;
    this.ranked = ranked;
  }

  /** Returns the word that the operator types for this order. */
  public String word() {
    return word;
  }

  /** Tells whether this order ranks by a measured value. */
  public boolean ranks() {
    return this != NEWEST && this != NAME;
  }

  /**
   * Tells whether results rank only among those alike; a ratio to a rating was read under the
   * conditions of that rating, whatever those are.
   */
  boolean isAmongAlike() {
    return amongAlike;
  }

  /** Returns the order of walks that are not ranked. */
  Comparator<LedgerEntry> order() {
    return order;
  }

  /** Returns what a walk is ranked by; empty where none of its results rank. */
  Optional<Ranked> ranked(LedgerEntry walk) {
    return ranked.apply(walk);
  }

  /** Finds the order with the given word. */
  public static Optional<LedgerSort> ofWord(String word) {
    for (LedgerSort sort : values()) {
      if (sort.word.equals(word)) {
        return Optional.of(sort);
      }
    }
    return Optional.empty();
  }

  /** Returns why a walk is not ranked in this order. */
  String unranked(LedgerEntry walk) {
    if (walk.strongestRanked().isEmpty()) {
      return walk.unranked();
    }
    return switch (this) {
      case FUSE -> "fuses not known";
      case EFFICIENCY -> "input not read";
      default -> "no rating under like conditions";
    };
  }

  private static Optional<Ranked> power(LedgerEntry walk) {
    return walk.strongestRanked().map(load -> new Ranked(load, load.watts()));
  }

  private static Optional<Ranked> perFuseAmp(LedgerEntry walk) {
    return walk.wattsPerFuseAmp().isPresent()
        ? walk.strongestRanked().map(load -> new Ranked(load, walk.wattsPerFuseAmp().getAsDouble()))
        : Optional.empty();
  }

  private static Optional<Ranked> honesty(LedgerEntry walk) {
    return walk.worstOfRated().map(load -> new Ranked(load, load.ratio().getAsDouble()));
  }

  private static Optional<Ranked> efficiency(LedgerEntry walk) {
    return walk.mostEfficient().map(load -> new Ranked(load, load.efficiency().getAsDouble()));
  }
}
