package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Mode;
import loadwalk.result.Criterion;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * The strongest amplifier at one load, among walks measured the same way and read at the same
 * point.
 *
 * @param done how the walks were measured
 * @param mode how the load was connected
 * @param ohms the nominal load
 * @param criterion the point at which its output was read
 * @param walk the walk of the strongest amplifier
 * @param load its output at this load
 * @param compared how many walks were compared
 * @param tooClose the walks too close to tell from it within the uncertainties
 */
record BestAtLoad(
    LedgerEntry.Done done,
    Mode mode,
    double ohms,
    Criterion criterion,
    LedgerEntry walk,
    LedgerEntry.Load load,
    int compared,
    List<LedgerEntry> tooClose) {

  private record Key(LedgerEntry.Done done, Mode mode, double ohms, Criterion criterion) {}

  private record Run(LedgerEntry walk, LedgerEntry.Load load) {}

  /**
   * Returns the best at each load, the most common way of measuring first; unfinished walks count
   * too, damaged ones do not.
   */
  static List<BestAtLoad> of(Ledger ledger) {
    Map<Key, List<Run>> runs = new LinkedHashMap<>();
    for (LedgerEntry entry : ledger.entries()) {
      if (entry.soundness().standing().isFaulty()) {
        continue;
      }
      entry.loads().forEach(load -> add(runs, entry, load));
    }
    Map<LedgerEntry.Done, Integer> places = new HashMap<>();
    ledger.ways().keySet().forEach(done -> places.put(done, places.size()));
    Comparator<BestAtLoad> order =
        Comparator.<BestAtLoad>comparingInt(b -> places.get(b.done()))
            .thenComparing(BestAtLoad::mode)
            .thenComparing(Comparator.comparingDouble(BestAtLoad::ohms).reversed())
            .thenComparing(BestAtLoad::criterion);
    return runs.entrySet().stream().map(e -> best(e.getKey(), e.getValue())).sorted(order).toList();
  }

  private static void add(Map<Key, List<Run>> runs, LedgerEntry entry, LedgerEntry.Load load) {
    if (load.criterion() != Criterion.BELOW_LIMIT && entry.openDoubts() == 0) {
      Key key = new Key(entry.done(), load.mode(), load.ohms(), load.criterion());
      runs.computeIfAbsent(key, k -> new ArrayList<>()).add(new Run(entry, load));
    }
  }

  private static BestAtLoad best(Key key, List<Run> runs) {
    Run most =
        runs.stream().max(Comparator.comparingDouble(r -> r.load().totalWatts())).orElseThrow();
    List<LedgerEntry> close =
        runs.stream().filter(r -> r != most && isClose(r, most)).map(Run::walk).toList();
    return new BestAtLoad(
        key.done(),
        key.mode(),
        key.ohms(),
        key.criterion(),
        most.walk(),
        most.load(),
        runs.size(),
        close);
  }

  /** Tells whether the difference is within its expanded uncertainty, k = 2. */
  private static boolean isClose(Run run, Run most) {
    double u = Math.hypot(run.load().totalU(), most.load().totalU());
    return most.load().totalWatts() - run.load().totalWatts() <= 2 * u;
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
