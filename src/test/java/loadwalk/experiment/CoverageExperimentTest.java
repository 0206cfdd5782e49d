package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The truth lies within ±U in 94 to 97 % of cases, whichever part is the largest. */
class CoverageExperimentTest {
  private static final long SEED = Long.getLong("experiment.seed", 20261201);

  @Test
  void truth_isCovered() {
    covered(1500);
  }

  @Tag("long")
  @Test
  void truth_isCoveredClosely() {
    System.out.println(covered(200_000));
  }

  private static String covered(int draws) {
    Map<String, Tally> tallies = new CoverageExperiment(SEED, draws).run();
    String table = "seed " + SEED + "\n" + CoverageExperiment.table(tallies);
    List<String> off = new ArrayList<>();
    tallies.forEach(
        (name, tally) -> {
          double share = (double) tally.hits() / tally.tries();
          // Three binomial standard errors beyond the limits.
          double room = 3 * Math.sqrt(0.95 * 0.05 / tally.tries());
          if (share < 0.94 - room || share > 0.97 + room) {
            off.add(name);
          }
        });
    assertEquals(List.of(), off, table);
    return table;
  }
}
