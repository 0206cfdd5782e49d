package loadwalk.experiment;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The shares measured on 5,000 amplifiers of each population, seed 20261209, of which
 * src/test/EVIDENCE.md gives the whole. No command renews them: they are what was promised.
 */
final class KnownShares {
  private static final String FILE = "/forecast/known-shares.txt";

  private final Map<String, Map<String, Share>> shares = new HashMap<>();

  private KnownShares() {}

  /** Reads them. */
  static KnownShares read() throws IOException {
    KnownShares known = new KnownShares();
    String run = "";
    for (String line : TestText.of(FILE).lines().toList()) {
      if (line.startsWith(Outcomes.RUN)) {
        run = line.substring(Outcomes.RUN.length());
      } else {
        Share share = share(line);
        known.shares.computeIfAbsent(run, title -> new HashMap<>()).put(share.what(), share);
      }
    }
    return known;
  }

  /** Reads a line such as {@code slips doubted: 99 of 100, 99.00 %}. */
  private static Share share(String line) {
    String[] parts = line.split(": | of |, (?=[0-9.]+ %)");
    return new Share(
        parts[0],
        Long.parseLong(parts[1]),
        Long.parseLong(parts[2]),
        EnumSet.noneOf(Share.Side.class));
  }

  /** Returns what is wrong with a run beside what is known; each must be counted in both. */
  List<String> against(Results run) {
    List<String> wrong = new ArrayList<>();
    Map<String, Share> counted = Share.of(run);
    Map<String, Share> known = shares.getOrDefault(Outcomes.title(run), Map.of());
    Set<String> all = new TreeSet<>(counted.keySet());
    all.addAll(known.keySet());
    for (String what : all) {
      Optional<String> fault =
          counted.containsKey(what) && known.containsKey(what)
              ? counted.get(what).against(known.get(what))
              : Optional.of(what + ": counted once, not twice");
      fault.ifPresent(words -> wrong.add(Outcomes.title(run) + ", " + words));
    }
    return wrong;
  }
}
