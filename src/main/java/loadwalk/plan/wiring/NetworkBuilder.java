package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.ResistorNames;

/** Builds networks of numbered resistors from the rows found in the store. */
final class NetworkBuilder {
  private final Stock stock;
  private final NetworkStore store;
  private final List<List<String>> names;
  private final int[] taken;

  NetworkBuilder(Stock stock, NetworkStore store) {
    this.stock = stock;
    this.store = store;
    names = ResistorNames.of(stock.kinds());
    taken = new int[stock.kindCount()];
  }

  /** Returns a network of resistors that no earlier network uses. */
  Network build(Candidates.Candidate candidate) {
    Network first = grid(candidate.first());
    return candidate
        .second()
        .map(second -> joined(candidate.join(), List.of(first, grid(second))))
        .orElse(first);
  }

  private Network grid(Candidates.Grid grid) {
    List<Network> rows = new ArrayList<>();
    for (int row = 0; row < grid.parallel(); row++) {
      List<Network> members = new ArrayList<>();
      for (int i = 0; i < grid.series(); i++) {
        members.add(node(grid.node()));
      }
      rows.add(joined(NetworkStore.SERIES, members));
    }
    return joined(NetworkStore.PARALLEL, rows);
  }

  private Network node(int node) {
    if (store.join(node) == NetworkStore.PART) {
      int kind = store.left(node);
      String name = names.get(kind).get(taken[kind]);
      taken[kind]++;
      return new Network.Part(name, stock.kind(kind));
    }
    return joined(store.join(node), List.of(node(store.left(node)), node(store.right(node))));
  }

  /** Joins networks; members joined in the same way become one row, just as they are wired. */
  private static Network joined(byte join, List<Network> members) {
    if (members.size() == 1) {
      return members.get(0);
    }
    List<Network> flat = new ArrayList<>();
    for (Network member : members) {
      flat.addAll(join == NetworkStore.SERIES ? member.inSeries() : member.inParallel());
    }
    return join == NetworkStore.SERIES ? new Network.Series(flat) : new Network.Parallel(flat);
  }
}
