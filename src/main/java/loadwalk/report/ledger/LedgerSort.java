package loadwalk.report.ledger;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The orders of a ledger; unknown values come last. */
public enum LedgerSort {
  /** The newest record first. */
  NEWEST("newest", false, Comparator.comparingLong(LedgerEntry::wallMillis).reversed()),
  /** By amplifier, A to Z. */
  NAME("name", false, Comparator.comparing(e -> e.amplifier().toLowerCase(Locale.ROOT))),
  /** The most total power first. */
  POWER("power", true, most(e -> optional(e.strongest().map(LedgerEntry.Load::totalWatts)))),
  /** The most watts per ampere of fuse first. */
  FUSE("watts-per-fuse-amp", true, most(LedgerEntry::wattsPerFuseAmp)),
  /** The highest worst-case ratio of measured to rated power first. */
  HONESTY("honesty", true, most(e -> optional(e.worstOfRated().map(l -> l.ratio().getAsDouble())))),
  /** The best efficiency first. */
  EFFICIENCY("efficiency", true, most(LedgerEntry::bestEfficiency));

  private final String word;
  private final boolean measured;
  private final Comparator<LedgerEntry> order;

  LedgerSort(String word, boolean measured, Comparator<LedgerEntry> order) {
    this.word = word;
    this.measured = measured;
    this.order = order;
  }

  /** Returns the word that the operator types for this order. */
  public String word() {
    return word;
  }

  /**
   * Tells whether this order ranks by a measured value; only walks measured the same way may be
   * ranked.
   */
  boolean ranks() {
    return measured;
  }

  Comparator<LedgerEntry> order() {
    return order;
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

  private static OptionalDouble optional(Optional<Double> value) {
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  private static Comparator<LedgerEntry> most(Function<LedgerEntry, OptionalDouble> what) {
    // What a damaged journal lacks may be what takes a value back.
    Comparator<LedgerEntry> soundFirst =
        Comparator.comparing(e -> e.soundness().standing().isFaulty());
    return soundFirst.thenComparingDouble(
        e -> {
          OptionalDouble value = what.apply(e);
          return value.isPresent() ? -value.getAsDouble() : Double.POSITIVE_INFINITY;
        });
  }
}
