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

  /** Worked by hand with a library's normal: η fell by 0.15 of the 0.2 that ln v fell. */
  @Test
  void fallSeen_isWeighedByBayesRule() {
    double seenSlope = 0.2 / Math.log(2);
    double[] shares = {0.03, 0.45, 0.10, 0.42};
    double[] betas = {0.07, 0.25, 0.55, 0.9 + 0.05 * (seenSlope - 0.1) / 0.3};
    double[] spreads = {0.07, 0.08, 0.2, 0.025};
    double total = 0;
    for (int i = 0; i < shares.length; i++) {
      double spread = Math.hypot(spreads[i], 0.024 / 0.2);
      shares[i] = shares[i] * new NormalDistribution(betas[i], spread).density(0.75) + 1e-6;
      total += shares[i];
    }
    double[] before = {0.02, 0.11, 1.37 / 3, 1.24 / 3};
    double near = (0.6 - seenSlope) / 0.3;
    double kept = 0.2 + 0.72 * Math.exp(-0.5 * near * near);
    Way[] told = new EfficiencyFall(LINEAR, HALVED, -0.2, -0.15).at(0.6);
    for (int i = 0; i < shares.length; i++) {
      double expected = (1 - kept) * before[i] + kept * shares[i] / total;
      assertEquals(expected, told[i].weight(), 1e-6, "way " + i);
    }
    assertEquals(0.95 + 0.05 * 0.2 / 0.45, told[3].beta(), 1e-9);
  }

  @Test
  void smallFall_orRise_tellsNothing() {
    double[] none = weights(new EfficiencyFall(LINEAR).at(0.4));
    for (double fall : new double[] {-0.03, 0, 0.2, Double.NaN}) {
      assertArrayEquals(
          none, weights(new EfficiencyFall(LINEAR, HALVED, fall, -0.2).at(0.4)), 0, "" + fall);
    }
    double[] told = weights(new EfficiencyFall(LINEAR, HALVED, -0.031, -0.031).at(0.4));
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
