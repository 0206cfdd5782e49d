package loadwalk.plan.wiring;

import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import loadwalk.bench.LoadResistor;
import loadwalk.text.Sentence;

/**
 * The owner's resistors, with the counts of a selection packed into one long.
 *
 * <p>Each kind has a field wide enough for its count and one guard bit above it, so one addition
 * adds two selections and one subtraction checks them against the stock.
 */
final class Stock {
  /** The most resistors searched; a larger stock is not one person's load bank. */
  static final int MOST = 200;

  /** The bits of a long available for counts; the sign bit and one carry bit stay free. */
  private static final int MOST_BITS = 62;

  private final List<LoadResistor> kinds;
  private final int[] shifts;
  private final int[] masks;
  private final long guards;
  private final long all;

  private Stock(List<LoadResistor> kinds) {
    this.kinds = kinds;
    shifts = new int[kinds.size()];
    masks = new int[kinds.size()];
    int shift = 0;
    long guardBits = 0;
    long counts = 0;
    for (int i = 0; i < shifts.length; i++) {
      int bits = 32 - Integer.numberOfLeadingZeros(kinds.get(i).count());
      shifts[i] = shift;
      masks[i] = (1 << bits) - 1;
      counts |= (long) kinds.get(i).count() << shift;
      guardBits |= 1L << (shift + bits);
      shift += bits + 1;
    }
    guards = guardBits;
    all = counts;
  }

  /**
   * Packs a stock.
   *
   * @throws IllegalArgumentException with one sentence if the stock is too large to search
   */
  static Stock of(List<LoadResistor> kinds) {
    tooLarge(kinds)
        .ifPresent(
            sentence -> {
              throw new IllegalArgumentException(sentence);
            });
    return new Stock(List.copyOf(kinds));
  }

  /** Returns why a stock is too large to search, if it is. */
  static Optional<String> tooLarge(List<LoadResistor> kinds) {
    long total = kinds.stream().mapToLong(LoadResistor::count).sum();
    if (total > MOST) {
      return Optional.of(
          Sentence.of(
              "the stock holds {} resistors and the search looks through {} at most: enter those"
                  + " meant for the loads",
              total,
              MOST));
    }
    int bits =
        kinds.stream().mapToInt(kind -> 33 - Integer.numberOfLeadingZeros(kind.count())).sum();
    if (bits > MOST_BITS) {
      return Optional.of(
          Sentence.of(
              "the stock holds {} kinds of resistor, more than the search can tell apart: enter"
                  + " those of nearly equal value as one kind",
              kinds.size()));
    }
    return Optional.empty();
  }

  List<LoadResistor> kinds() {
    return kinds;
  }

  int kindCount() {
    return kinds.size();
  }

  LoadResistor kind(int index) {
    return kinds.get(index);
  }

  long all() {
    return all;
  }

  long one(int index) {
    return 1L << shifts[index];
  }

  int count(long selection, int index) {
    return (int) (selection >>> shifts[index]) & masks[index];
  }

  int size(long selection) {
    int size = 0;
    for (int i = 0; i < shifts.length; i++) {
      size += count(selection, i);
    }
    return size;
  }

  /** Tells whether the stock contains a sum of two selections. */
  boolean holds(long sum) {
    return ((all | guards) - sum & guards) == guards;
  }

  /** Tells whether another selection contains this one. */
  boolean inside(long selection, long other) {
    return ((other | guards) - selection & guards) == guards;
  }

  /** Returns how many times a selection can be taken from the stock. */
  int copies(long selection) {
    int copies = Integer.MAX_VALUE;
    for (int i = 0; i < shifts.length; i++) {
      int taken = count(selection, i);
      if (taken > 0) {
        copies = Math.min(copies, count(all, i) / taken);
      }
    }
    return copies;
  }

  /** Visits every selection of a given size contained in another, in a fixed order. */
  void forEachOfSize(long inside, int size, LongConsumer visit) {
    choose(inside, 0, size, 0, visit);
  }

  private void choose(long inside, int kind, int left, long chosen, LongConsumer visit) {
    if (left == 0) {
      visit.accept(chosen);
      return;
    }
    if (kind == shifts.length) {
      return;
    }
    int most = Math.min(left, count(inside, kind));
    for (int n = most; n >= 0; n--) {
      choose(inside, kind + 1, left - n, chosen + n * one(kind), visit);
    }
  }
}
