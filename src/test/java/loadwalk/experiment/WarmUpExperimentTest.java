package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How often a warm-up is called steady while the heatsink still moves. */
class WarmUpExperimentTest {
  private static final long SEED = Long.getLong("experiment.seed", 20261201);
  private static final int WHOLE = 5000;

  /** A part of the curves may stray by three standard errors of the share; all of them may not. */
  private static void holds(int count) {
    WarmUpExperiment run = WarmUpExperiment.run(SEED, count);
    String table = "seed " + SEED + "\n" + run;
    System.out.println(table);
    double room = 300 * Math.sqrt(0.01 * 0.99 / count);
    assertTrue(run.movingPercent() <= (count < WHOLE ? 1 + room : 1), table);
    assertTrue(run.called > 0.9 * run.curves, table);
    assertTrue(run.calledInFiveMinutes > 0.7 * run.waitedFor, table);
    assertTrue(run.calledInTenMinutes > 0.9 * run.waitedFor, table);
  }

  @Test
  void steady_isSaidOfHeatsinksThatAre() {
    holds(500);
  }

  @Tag("long")
  @Test
  void steady_isSaidOfHeatsinksThatAre_overFiveThousand() {
    holds(WHOLE);
  }
}
