package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loadwalk.report.ledger.LedgerEntry.Load;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * A result at one load that no result reached under like conditions beats in total power.
 *
 * @param best the result
 * @param compared the results alike to it, itself among them
 * @param tooClose the walks too close to tell from it within the uncertainties
 */
record BestAtLoad(RankedResult best, List<Load> compared, List<LedgerEntry> tooClose) {
  private static final Comparator<BestAtLoad> ORDER =
      Comparator.<BestAtLoad, Boolean>comparing(b -> b.load().isPractice())
          .thenComparing(b -> b.load().mode())
          .thenComparing(Comparator.<BestAtLoad>comparingDouble(b -> b.load().ohms()).reversed())
          .thenComparing(b -> b.load().criterion())
          .thenComparing(Comparator.<BestAtLoad>comparingInt(b -> b.compared().size()).reversed())
          .thenComparing(BestAtLoad::best, RankedResult.STRONGEST_FIRST);

  Load load() {
    return best.load();
  }

  /** Returns the best at each load, the most compared first; unfinished walks count too. */
  static List<BestAtLoad> of(List<LedgerEntry> walks) {
    Map<RankedResult.Exactly, List<RankedResult>> shelves = new LinkedHashMap<>();
    for (LedgerEntry walk : walks) {
      for (Load load : walk.loads()) {
        if (walk.ranks(load)) {
          shelves
              .computeIfAbsent(RankedResult.Exactly.of(load), key -> new ArrayList<>())
              .add(new RankedResult(walk, load));
        }
      }
    }
    return shelves.values().stream().flatMap(BestAtLoad::among).sorted(ORDER).toList();
  }

  /** Looks only at the strongest of each cell: it beats all others in the cell. */
  private static Stream<BestAtLoad> among(List<RankedResult> results) {
    Map<RankedResult.Cell, Double> most = new LinkedHashMap<>();
    results.forEach(r -> most.merge(RankedResult.Cell.of(r.load()), r.watts(), Math::max));
    return results.stream()
        .filter(r -> r.watts() >= most.get(RankedResult.Cell.of(r.load())))
        .flatMap(r -> best(r, results).stream());
  }

  private static Optional<BestAtLoad> best(RankedResult result, List<RankedResult> results) {
    List<Load> compared = new ArrayList<>();
    List<LedgerEntry> close = new ArrayList<>();
    for (RankedResult other : results) {
      if (!result.isLike(other)) {
        continue;
      }
      if (other.watts() > result.watts()) {
        return Optional.empty();
      }
      compared.add(other.load());
      if (other != result && other.isCloseTo(result)) {
        close.add(other.walk());
      }
    }
    return Optional.of(new BestAtLoad(result, List.copyOf(compared), List.copyOf(close)));
  }

  Optional<String> note() {
    if (tooClose.isEmpty()) {
      return Optional.empty();
    }
    String first = Visible.name(tooClose.get(0).amplifier());
    int more = tooClose.size() - 1;
    return Optional.of(
        more == 0
            ? Sentence.of("too close to {} to call", first)
            : Sentence.of("too close to {} and {} more to call", first, more));
  }
}
