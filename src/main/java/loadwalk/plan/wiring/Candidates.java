package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Collects networks that meet a request, keeping the closest in value for each selection of
 * resistors.
 */
final class Candidates {
  private static final Comparator<Candidate> BEST_FIRST =
      Comparator.comparingInt(Candidate::size)
          .thenComparingDouble(Candidate::off)
          .thenComparingLong(Candidate::selection);

  private final Stock stock;
  private final WiringRequest request;
  private final Map<Long, Candidate> bySelection = new HashMap<>();
  private int smallest = Integer.MAX_VALUE;

  /** The best networks; none since the last candidate came. */
  private Optional<List<Candidate>> best = Optional.empty();

  Candidates(Stock stock, WiringRequest request) {
    this.stock = stock;
    this.request = request;
  }

  /**
   * A grid of equal networks.
   *
   * @param node the network
   * @param series how many in series
   * @param parallel how many such rows in parallel
   */
  record Grid(int node, int series, int parallel) {}

  /**
   * A network that meets the request.
   *
   * @param selection the resistors it uses
   * @param size how many resistors it uses
   * @param off how far its value is from the one requested, ohms
   * @param join how the two grids are joined
   * @param first the first grid
   * @param second the second grid, if there is one
   */
  record Candidate(
      long selection, int size, double off, byte join, Grid first, Optional<Grid> second) {}

  void offer(long selection, double ohms, byte join, Grid first, Optional<Grid> second) {
    double off = Math.abs(ohms - request.ohms());
    Candidate before = bySelection.get(selection);
    if (before != null && before.off() <= off) {
      return;
    }
    int size = stock.size(selection);
    bySelection.put(selection, new Candidate(selection, size, off, join, first, second));
    smallest = Math.min(smallest, size);
    best = Optional.empty();
  }

  /**
   * Tells whether a network of this size could still use fewer resistors in total than the best.
   */
  boolean mayImprove(int size) {
    List<Candidate> known = best();
    if (known.isEmpty()) {
      return true;
    }
    int total = known.stream().mapToInt(Candidate::size).sum();
    return request.loads() == 1 ? size < total : size + Math.min(size, smallest) < total;
  }

  /** Returns the best networks, one for each load; empty if there are none. */
  List<Candidate> best() {
    if (best.isEmpty()) {
      best =
          Optional.of(
              request.loads() == 1
                  ? bySelection.values().stream().min(BEST_FIRST).stream().toList()
                  : bestPair(leastSelections()));
    }
    return best.get();
  }

  /**
   * Returns the selections that contain no other suitable selection. The rest are never needed, not
   * even in a best pair.
   */
  private List<Candidate> leastSelections() {
    List<Candidate> least = new ArrayList<>();
    for (Candidate candidate : bySelection.values().stream().sorted(BEST_FIRST).toList()) {
      boolean needed =
          least.stream().noneMatch(l -> stock.inside(l.selection(), candidate.selection()));
      if (needed) {
        least.add(candidate);
      }
    }
    return least;
  }

  private List<Candidate> bestPair(List<Candidate> sorted) {
    List<Candidate> pair = List.of();
    int fewest = Integer.MAX_VALUE;
    double closest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sorted.size(); i++) {
      Candidate a = sorted.get(i);
      for (int j = i; j < sorted.size() && a.size() + sorted.get(j).size() <= fewest; j++) {
        Candidate b = sorted.get(j);
        int size = a.size() + b.size();
        double off = Math.max(a.off(), b.off());
        boolean better = size < fewest || off < closest;
        if (better && stock.holds(a.selection() + b.selection())) {
          pair = List.of(a, b);
          fewest = size;
          closest = off;
        }
      }
    }
    return pair;
  }
}
