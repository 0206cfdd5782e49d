package loadwalk.report.ledger;

import java.nio.charset.StandardCharsets;
import java.util.List;
import loadwalk.bench.Bench;
import loadwalk.journal.ByteSum;
import loadwalk.result.Repeatability;

/**
 * What a walk tells of how well its bench repeats a reading.
 *
 * @param bench names the bench: equal only where its name and its meters are
 * @param pairs its runs that can be learned from
 */
record BenchRepeats(String bench, List<Repeatability.Pair> pairs) {
  BenchRepeats {
    pairs = List.copyOf(pairs);
  }

  /** Names a bench; other supplies, leads or loads leave the setting of the limit as it was. */
  static String name(Bench bench) {
    String meters = bench.meters().toString();
    return bench.name() + ' ' + ByteSum.of(meters.getBytes(StandardCharsets.UTF_8));
  }
}
