package loadwalk.plan.wiring;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import loadwalk.bench.LoadResistor;

/**
 * Builds every series-parallel network, size by size, from the networks of all smaller selections.
 *
 * <p>If two networks have the same resistors and the same value, only the one that handles more
 * watts is kept, because it can replace the other in any larger network. Nothing is lost, and the
 * number of networks stays far below the number of possible drawings.
 */
final class ExactSearch {
  private final Stock stock;
  private final NetworkStore store;
  private final Candidates candidates;
  private final WiringRequest request;
  private final Map<Long, Range> ranges = new HashMap<>();

  /** The networks of the selection being built, by their value in billionths of an ohm. */
  private Map<Long, Integer> byOhms = new HashMap<>();

  private int done;

  private record Range(int from, int to) {}

  ExactSearch(
      Stock stock,
      NetworkStore store,
      Candidates candidates,
      WiringRequest request,
      ToDoubleFunction<LoadResistor> bears) {
    this.stock = stock;
    this.store = store;
    this.candidates = candidates;
    this.request = request;
    for (int kind = 0; kind < stock.kindCount(); kind++) {
      int node =
          store.addPart(
              kind,
              stock.one(kind),
              stock.kind(kind).ohms(),
              bears.applyAsDouble(stock.kind(kind)));
      ranges.put(stock.one(kind), new Range(node, node + 1));
      offer(node);
    }
    done = 1;
  }

  /** Returns the size up to which every network has been examined. */
  int done() {
    return done;
  }

  /**
   * Builds networks size by size, as long as a larger one could still be better and the number of
   * joins stays within a budget. Returns whether the budget was enough.
   */
  boolean run(int largest, long budget) {
    long left = budget;
    while (done < largest && candidates.mayImprove(done + 1)) {
      long joins = joinsOfSize(done + 1);
      if (joins > left) {
        return false;
      }
      left -= joins;
      done++;
      stock.forEachOfSize(stock.all(), done, this::build);
    }
    return true;
  }

  private long joinsOfSize(int size) {
    long[] sum = new long[1];
    stock.forEachOfSize(
        stock.all(),
        size,
        whole -> {
          for (int part = 1; part <= size / 2; part++) {
            stock.forEachOfSize(whole, part, a -> sum[0] += 2 * count(a) * count(whole - a));
          }
        });
    return sum[0];
  }

  private long count(long selection) {
    Range range = ranges.get(selection);
    return (long) range.to() - range.from();
  }

  private void build(long whole) {
    byOhms = new HashMap<>();
    int from = store.size();
    for (int part = 1; part <= done / 2; part++) {
      boolean half = 2 * part == done;
      stock.forEachOfSize(
          whole,
          part,
          a -> {
            if (!half || a <= whole - a) {
              joinAll(ranges.get(a), ranges.get(whole - a));
            }
          });
    }
    ranges.put(whole, new Range(from, store.size()));
    for (int node = from; node < store.size(); node++) {
      offer(node);
    }
  }

  private void joinAll(Range left, Range right) {
    for (int a = left.from(); a < left.to(); a++) {
      for (int b = right.from(); b < right.to(); b++) {
        join(NetworkStore.SERIES, a, b);
        join(NetworkStore.PARALLEL, a, b);
      }
    }
  }

  private void join(byte join, int a, int b) {
    double ohms = NetworkStore.joinedOhms(join, store.ohms(a), store.ohms(b));
    long value = Math.round(1e9 * ohms);
    Integer node = byOhms.get(value);
    if (node == null) {
      byOhms.put(value, store.addJoin(join, a, b));
      return;
    }
    double watts =
        NetworkStore.joinedWatts(
            join, store.ohms(a), store.watts(a), store.ohms(b), store.watts(b));
    if (watts > store.watts(node) * (1 + WiringRequest.ROUNDING)) {
      store.replace(node, join, a, b, watts);
    }
  }

  private void offer(int node) {
    if (request.isMetBy(store.ohms(node), store.watts(node))) {
      candidates.offer(
          store.selection(node),
          store.ohms(node),
          NetworkStore.PART,
          new Candidates.Grid(node, 1, 1),
          Optional.empty());
    }
  }
}
