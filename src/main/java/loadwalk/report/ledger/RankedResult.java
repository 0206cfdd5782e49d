package loadwalk.report.ledger;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.quantity.Quantity;
import loadwalk.report.ledger.LedgerEntry.Load;
import loadwalk.result.Conditions;
import loadwalk.result.Criterion;

/**
 * A result that ranks, with its walk.
 *
 * @param walk the walk
 * @param load its output at one load
 */
record RankedResult(LedgerEntry walk, Load load) {
  static final Comparator<RankedResult> STRONGEST_FIRST =
      Comparator.<RankedResult>comparingDouble(r -> r.watts())
          .reversed()
          .thenComparing(r -> r.walk().walk());

  double watts() {
    return load.watts();
  }

  Quantity total() {
    return load.total(walk.walk());
  }

  boolean isLike(RankedResult other) {
    return Likeness.alike(load, other.load);
  }

  /** Tells whether the difference lies within its own expanded uncertainty. */
  boolean isCloseTo(RankedResult other) {
    Quantity difference = total().minus(other.total());
    return Math.abs(difference.value()) <= difference.expanded();
  }

  /**
   * The conditions that are alike only where they are equal; the others, which may differ a little,
   * are compared pair by pair.
   */
  record Exactly(
      Mode mode,
      Criterion criterion,
      double limitThdPercent,
      Optional<Boolean> warm,
      boolean practice,
      boolean toneRead,
      double unreadHertz,
      boolean supplyRead) {
    static Exactly of(Load load) {
      boolean toneRead = load.conditions().hertz().isPresent();
      return new Exactly(
          load.mode(),
          load.criterion(),
          load.criterion() == Criterion.THD_LIMIT ? load.limitThdPercent() : 0,
          load.conditions().around().warm(),
          load.isPractice(),
          toneRead,
          toneRead ? 0 : load.askedHertz(),
          load.supplyVolts().isPresent());
    }
  }

  /** A cell of loads, tones and supply volts so small that all within it are alike. */
  record Cell(long ohms, long hertz, long supplyVolts) {
    static Cell of(Load load) {
      return new Cell(
          step(OptionalDouble.of(load.ohms()), Likeness.SAME_OHMS),
          step(load.conditions().hertz(), Conditions.SAME_READING),
          step(load.supplyVolts(), Conditions.SAME_READING));
    }

    /** Half as wide as what may differ, on a logarithmic scale; zero and less stand alone. */
    private static long step(OptionalDouble read, double alike) {
      double value = read.orElse(1);
      return value > 0
          ? (long) Math.floor(2 * Math.log(value) / alike)
          : Double.doubleToLongBits(value);
    }
  }
}
