package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import loadwalk.forecast.model.EfficiencyAtLoad.Way;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** What makes the volts fall, told by how fast they do and by the efficiency seen to fall along. */
class EfficiencyFallTest {
  private static final double HALVED = -Math.log(2);
  private static final double LINEAR = 0;
  private static final double SWITCHING = 1;

  @Test
  void weights_areProbabilities_atAnySlope() {
    for (EfficiencyFall fall :
        new EfficiencyFall[] {
          new EfficiencyFall(LINEAR),
          new EfficiencyFall(0.35),
          new EfficiencyFall(SWITCHING, HALVED, -0.2, -0.1)
        }) {
      for (double slope : new double[] {-3, 0, 0.3, 0.6, 0.75, 1, 5}) {
        double sum = 0;
        for (Way way : fall.at(slope)) {
          assertTrue(way.weight() > 0 && way.spread() > 0);
          sum += way.weight();
        }
        assertEquals(1, sum, 1e-4, "slope " + slope);
      }
    }
  }

  /**
   * Class B at a current limit: the load's current stays, and with it the supply's, while the
   * output falls as v², R halved: η = 2 v²/R over a constant, so η ∝ v. A switching stage draws
   * what it delivers: η stays (energy balance).
   */
  @Test
  void fallWithTheLoad_isACurrentLimit() {
    assertTrue(likeliest(new EfficiencyFall(LINEAR).at(1)).beta() > 0.9);
    assertTrue(likeliest(new EfficiencyFall(SWITCHING).at(1)).beta() < 0.1);
  }

  /** A fall with the root of the load may be a converter at its end or several causes. */
  @Test
  void fallWithTheRootOfTheLoad_leavesItOpen() {
    for (Way way : new EfficiencyFall(LINEAR).at(0.5)) {
      assertTrue(way.weight() < 0.5, way.toString());
    }
  }

  @Test
  void shares_goOverInStraightLines() {
    double[] low = weights(new EfficiencyFall(LINEAR).at(0.55));
    double[] high = weights(new EfficiencyFall(LINEAR).at(0.70));
    double[] between = weights(new EfficiencyFall(LINEAR).at(0.60));
    for (int i = 0; i < low.length; i++) {
      assertEquals(low[i] * 2 / 3 + high[i] / 3, between[i], 1e-9);
    }
    double[] flat = weights(new EfficiencyFall(LINEAR).at(0));
    assertArrayEquals(flat, weights(new EfficiencyFall(LINEAR).at(0.35)), 1e-12);
  }

  @Test
  void classNotKnown_isBetweenBoth() {
    double[] linear = weights(new EfficiencyFall(LINEAR).at(0.9));
    double[] switching = weights(new EfficiencyFall(SWITCHING).at(0.9));
    double[] open = weights(new EfficiencyFall(0.25).at(0.9));
    for (int i = 0; i < open.length; i++) {
      assertEquals(0.75 * linear[i] + 0.25 * switching[i], open[i], 1e-12);
    }
  }

  /** Bayes' rule over the shares before, with the scatter of two readings in each fall. */
  @Test
  void fallSeen_tellsWhatGoesOn_moreSoAtAnAlikeSlope() {
    EfficiencyFall sagging = new EfficiencyFall(LINEAR, HALVED, -0.2, -0.05);
    EfficiencyFall resisting = new EfficiencyFall(LINEAR, HALVED, -0.2, -0.19);
    double slope = 0.2 / Math.log(2);
    assertTrue(beta(sagging.at(slope)) < 0.35, String.valueOf(beta(sagging.at(slope))));
    assertTrue(beta(resisting.at(slope)) > 0.85, String.valueOf(beta(resisting.at(slope))));
    double unlike = beta(sagging.at(1));
    assertTrue(unlike > beta(sagging.at(slope)) && unlike < beta(resisting.at(1)));
  }

  /** Worked with a library's normal: η fell by 0.15 of the 0.2 that ln v fell. */
  @Test
  void fallSeen_isWeighedByBayesRule() {
    double seenSlope = 0.2 / Math.log(2);
    Way[] there = new EfficiencyFall(LINEAR).at(seenSlope);
    double[] seen = new double[there.length];
    double total = 0;
    for (int i = 0; i < seen.length; i++) {
      double spread = Math.hypot(there[i].spread(), EfficiencyFall.FALL_SCATTER / 0.2);
      double density = new NormalDistribution(there[i].beta(), spread).density(0.75);
      seen[i] = there[i].weight() * density;
      total += seen[i];
    }
    double[] before = weights(new EfficiencyFall(LINEAR).at(0.6));
    double[] told = weights(new EfficiencyFall(LINEAR, HALVED, -0.2, -0.15).at(0.6));
    double kept = (told[1] - before[1]) / (seen[1] / total - before[1]);
    assertTrue(kept > 0.5 && kept < 1, kept + " of what was seen");
    for (int i = 0; i < seen.length; i++) {
      assertEquals((1 - kept) * before[i] + kept * seen[i] / total, told[i], 1e-5, "way " + i);
    }
  }

  @Test
  void smallFall_orRise_tellsNothing() {
    double[] none = weights(new EfficiencyFall(LINEAR).at(0.4));
    for (double fall : new double[] {-0.01, 0, 0.2, Double.NaN}) {
      assertArrayEquals(
          none, weights(new EfficiencyFall(LINEAR, HALVED, fall, -0.2).at(0.4)), 0, "" + fall);
    }
    double[] told = weights(new EfficiencyFall(LINEAR, HALVED, -0.05, -0.05).at(0.4));
    assertTrue(Math.abs(told[3] - none[3]) > 1e-3);
  }

  /** An efficiency that rose or fell beyond reason still leaves every way its chance. */
  @Test
  void changeBeyondReason_isNoCertainty() {
    for (double change : new double[] {2, -3}) {
      for (Way way : new EfficiencyFall(LINEAR, HALVED, -0.3, change).at(0.43)) {
        assertTrue(way.weight() > 1e-3, way.toString());
      }
    }
  }

  private static Way likeliest(Way[] ways) {
    return Arrays.stream(ways).max((a, b) -> Double.compare(a.weight(), b.weight())).orElseThrow();
  }

  private static double beta(Way[] ways) {
    return Arrays.stream(ways).mapToDouble(w -> w.weight() * w.beta()).sum();
  }

  private static double[] weights(Way[] ways) {
    return Arrays.stream(ways).mapToDouble(Way::weight).toArray();
  }
}
