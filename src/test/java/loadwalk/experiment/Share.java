package loadwalk.experiment;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A share that a run of the experiment is measured by, and its limits around a known one.
 *
 * @param what what is counted
 * @param hits how often it came true
 * @param tries how often it might have
 * @param faults on which sides of the known share it is a fault to be
 */
record Share(String what, long hits, long tries, Set<Side> faults) {
  /**
   * Standard errors that a share may lie off. Walks repeat themselves (one amplifier makes a dozen
   * slips), so the true error is a little more than the binomial one; seeds are fixed, so a run
   * that passes once always passes.
   */
  private static final double STANDARD_ERRORS = 4;

  /** Half-width up to which a band of bridged volts counts as narrow: the median of all. */
  private static final double NARROW = 0.026;

  /** A side of the known share. */
  enum Side {
    FEWER,
    MORE
  }

  /** Returns the shares of a run that were counted at all, by what they count. */
  static Map<String, Share> of(Results run) {
    Map<String, Share> shares = new LinkedHashMap<>();
    add(shares, "slips doubted at their entry", run.total(run.doubted), Side.FEWER);
    add(shares, "slips named at first guess", run.total(run.named), Side.FEWER);
    run.named.forEach(
        (slip, named) -> {
          if (run.counts(slip)) {
            add(shares, "named, " + slip.code(), named, Side.FEWER);
          }
        });
    add(shares, "honest entries doubted", run.honestDoubted, Side.MORE);
    run.inside.forEach(
        (id, inside) -> add(shares, "inside, " + id.key(), inside, Side.FEWER, Side.MORE));
    Tally narrow = new Tally();
    run.bridgedHalfWidths.forEach(width -> narrow.add(width <= NARROW));
    add(shares, "bridged bands up to 2.6 % either way", narrow, Side.FEWER, Side.MORE);
    return shares;
  }

  private static void add(
      Map<String, Share> shares, String what, Tally tally, Side fault, Side... faults) {
    if (tally.tries() > 0) {
      shares.put(what, new Share(what, tally.hits(), tally.tries(), EnumSet.of(fault, faults)));
    }
  }

  /**
   * Returns the standard error between a share of n and a known one of N: binomial, √(p(1−p)(1/n +
   * 1/N)), with p the known share. A known share of nothing or all leaves no room at all.
   */
  static double standardError(double p, long n, long known) {
    return Math.sqrt(p * (1 - p) * (1.0 / n + 1.0 / known));
  }

  /** Returns what is wrong with this share beside the known one, if anything is. */
  Optional<String> against(Share known) {
    double p = known.part();
    double room = STANDARD_ERRORS * standardError(p, tries, known.tries());
    boolean off =
        faults.contains(Side.FEWER) && part() < p - room
            || faults.contains(Side.MORE) && part() > p + room;
    return off
        ? Optional.of(this + ", known are " + known + ", give or take " + percent(room))
        : Optional.empty();
  }

  private double part() {
    return (double) hits / tries;
  }

  private static String percent(double part) {
    return String.format(Locale.ROOT, "%.2f %%", 100 * part);
  }

  @Override
  public String toString() {
    return what + ": " + hits + " of " + tries + ", " + percent(part());
  }
}
