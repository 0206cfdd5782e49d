package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Searches beyond the reach of the exact search: grids of equal small networks, plain rows and
 * columns of any mix, and any two of these in series or in parallel.
 *
 * <p>A large load uses many resistors to handle its watts, and watts spread best over equal
 * branches, so good large networks are repetitive. This search proves nothing.
 */
final class GridSearch {
  /** Most grids examined; limits the search time. Chosen by hand. */
  private static final int MOST_GRIDS = 12_000;

  /** Most mixes examined. Chosen by hand. */
  private static final long MOST_MIXES = 12_000;

  private final Stock stock;
  private final NetworkStore store;
  private final Candidates candidates;
  private final WiringRequest request;
  private final List<Block> blocks = new ArrayList<>();

  /** A grid with its value and the most watts it can handle. */
  private record Block(Candidates.Grid grid, long selection, double ohms, double watts) {
    /** Returns what adds up in a join: ohms in series, conductance in parallel. */
    double scale(byte join) {
      return join == NetworkStore.PARALLEL ? 1 / ohms : ohms;
    }
  }

  GridSearch(Stock stock, NetworkStore store, Candidates candidates, WiringRequest request) {
    this.stock = stock;
    this.store = store;
    this.candidates = candidates;
    this.request = request;
  }

  /**
   * Searches all pairs of grids of the networks in the store, from the smallest. A grid alone is a
   * pair of smaller ones.
   */
  void run() {
    int networks = store.size();
    for (int node = 0; node < networks && blocks.size() < MOST_GRIDS; node++) {
      grids(node);
    }
    mixes();
    pairs(NetworkStore.PARALLEL);
    pairs(NetworkStore.SERIES);
  }

  private void grids(int node) {
    int copies = stock.copies(store.selection(node));
    for (int series = 1; series <= copies; series++) {
      for (int parallel = 1; series * parallel <= copies; parallel++) {
        int times = series * parallel;
        blocks.add(
            new Block(
                new Candidates.Grid(node, series, parallel),
                times * store.selection(node),
                store.ohms(node) * series / parallel,
                store.watts(node) * times));
      }
    }
  }

  /** Adds every mix of kinds wired all in parallel or all in series. */
  private void mixes() {
    long count = 1;
    for (int kind = 0; kind < stock.kindCount(); kind++) {
      count *= stock.count(stock.all(), kind) + 1L;
      if (count > MOST_MIXES) {
        return;
      }
    }
    mix(NetworkStore.PARALLEL, 0, -1, 0);
    mix(NetworkStore.SERIES, 0, -1, 0);
  }

  private void mix(byte join, int kind, int before, int kindsUsed) {
    if (kind == stock.kindCount()) {
      if (kindsUsed > 1) {
        blocks.add(
            new Block(
                new Candidates.Grid(before, 1, 1),
                store.selection(before),
                store.ohms(before),
                store.watts(before)));
      }
      return;
    }
    int node = before;
    mix(join, kind + 1, node, kindsUsed);
    for (int n = 1; n <= stock.count(stock.all(), kind); n++) {
      node = node < 0 ? kind : store.addJoin(join, node, kind);
      mix(join, kind + 1, node, kindsUsed + 1);
    }
  }

  /** Offers the pairs whose value fits. */
  private void pairs(byte join) {
    boolean parallel = join == NetworkStore.PARALLEL;
    double low = request.lowestOhms();
    double high = request.highestOhms();
    List<Block> sorted =
        blocks.stream().sorted(Comparator.comparingDouble(b -> b.scale(join))).toList();
    double[] scale = sorted.stream().mapToDouble(b -> b.scale(join)).toArray();
    double from = parallel ? 1 / high : low;
    double to = parallel ? 1 / low : high;
    int first = scale.length - 1;
    for (int i = 0; i < scale.length; i++) {
      while (first >= 0 && scale[first] + scale[i] >= from) {
        first--;
      }
      for (int j = Math.max(first + 1, i); j < scale.length && scale[i] + scale[j] <= to; j++) {
        pair(join, sorted.get(i), sorted.get(j));
      }
    }
  }

  private void pair(byte join, Block a, Block b) {
    long selection = a.selection() + b.selection();
    if (!stock.holds(selection)) {
      return;
    }
    double ohms = NetworkStore.joinedOhms(join, a.ohms(), b.ohms());
    double watts = NetworkStore.joinedWatts(join, a.ohms(), a.watts(), b.ohms(), b.watts());
    if (request.isMetBy(ohms, watts)) {
      candidates.offer(selection, ohms, join, a.grid(), Optional.of(b.grid()));
    }
  }
}
