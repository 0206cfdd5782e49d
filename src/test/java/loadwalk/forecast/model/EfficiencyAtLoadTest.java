package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import loadwalk.forecast.model.EfficiencyAtLoad.Part;
import loadwalk.forecast.model.EfficiencyAtLoad.Way;
import loadwalk.forecast.model.EfficiencyAtLoad.Ways;
import org.junit.jupiter.api.Test;

/** The current above idle from the volts, through the efficiency of one load. */
class EfficiencyAtLoadTest {
  private static final double OHMS = 4;
  private static final double SUPPLY = 13.7;
  private static final double ANCHOR = Math.log(15);
  private static final double HALVED = -Math.log(2);
  private static final IdleModel NO_IDLE = new IdleModel(0, 0, true);
  private static final Part SURE = new Part(0.6, Math.log(0.58), 0.0009);
  private static final Part UNSURE = new Part(0.4, Math.log(0.55), 0.0025);
  private static final Way FLAT = new Way(0.7, 0, 0);
  private static final Way STEEP = new Way(0.3, 1, 0);

  @Test
  void mean_goesWithTheVolts_asEachWaySays() {
    EfficiencyAtLoad both = at(ways(FLAT, STEEP), SURE, UNSURE);
    double middle = 0.6 * SURE.mean() + 0.4 * UNSURE.mean();
    assertEquals(middle, both.mean(ANCHOR), 1e-12);
    assertEquals(middle - 0.3 * 0.2, both.mean(ANCHOR - 0.2), 1e-12);
    Part half = new Part(0.3, SURE.mean(), 1);
    Part rest = new Part(0.2, UNSURE.mean(), 1);
    double same = at(ways(FLAT, STEEP), half, rest).mean(ANCHOR - 0.2);
    assertEquals(both.mean(ANCHOR - 0.2), same, 1e-12, "weights need not sum to one");
  }

  /** Half the load at 0.35 less of ln v is a slope of about one half. */
  @Test
  void ways_areAskedForTheSlope_ofVoltsOverLoad() {
    List<Double> asked = new ArrayList<>();
    Ways ways =
        slope -> {
          asked.add(slope);
          return new Way[] {new Way(1, 0, 0)};
        };
    at(ways, SURE).mean(ANCHOR - 0.35);
    new EfficiencyAtLoad(new Part[] {SURE}, ANCHOR, 0, ways).mean(ANCHOR - 0.35);
    assertEquals(0.35 / Math.log(2), asked.get(0), 1e-12);
    assertEquals(0, asked.get(1), "the same load has no slope");
  }

  /** η = 2 V²/R over Vs I, so 112.5 W at 58 % and 13.7 V are 14.2 A above idle. */
  @Test
  void current_ofVoltsAtTheAnchor_isTheOutputOverTheEfficiency() {
    double amps = 2 * 15 * 15 / OHMS / (0.58 * SUPPLY);
    Mixture told =
        at(Ways.always(0), SURE).logAmpsAbove(Mixture.normal(ANCHOR, 1e-6), OHMS, SUPPLY, NO_IDLE);
    assertEquals(Math.log(amps), told.mean(), 1e-9);
    assertEquals(0.03, told.deviation(), 1e-6);
  }

  /** Constant η: the current goes as v²; η ∝ v: as v; η ∝ v²: it is the same at any volts. */
  @Test
  void current_followsTheVolts_byTwoLessBeta() {
    for (double beta : new double[] {0, 1, 2}) {
      EfficiencyAtLoad model = at(Ways.always(beta), SURE);
      Mixture there = model.logAmpsAbove(Mixture.normal(ANCHOR, 0.05), OHMS, SUPPLY, NO_IDLE);
      Mixture lower = model.logAmpsAbove(Mixture.normal(ANCHOR - 0.3, 0.05), OHMS, SUPPLY, NO_IDLE);
      assertEquals(0.3 * (2 - beta), there.mean() - lower.mean(), 1e-9);
      assertEquals(Math.hypot((2 - beta) * 0.05, 0.03), there.deviation(), 1e-9);
    }
  }

  /** Total probability: p(I) = ∫ p(I | v) p(v) dv, where the ways are the same at any slope. */
  @Test
  void densityOfTheCurrent_isThatAtKnownVolts_overAllVolts() {
    EfficiencyAtLoad model = at(ways(FLAT, STEEP), SURE, UNSURE);
    Mixture volts = Mixture.normal(ANCHOR - 0.1, 0.06);
    Mixture told = model.logAmpsAbove(volts, OHMS, SUPPLY, NO_IDLE);
    for (double logAmps : new double[] {2.2, 2.45, 2.7}) {
      double sum = 0;
      double step = 0.0005;
      for (double v = ANCHOR - 0.6; v < ANCHOR + 0.4; v += step) {
        double known = model.logDensity(logAmps, v, OHMS, SUPPLY, NO_IDLE);
        sum += step * Math.exp(volts.logDensity(v) + known);
      }
      assertEquals(Math.log(sum), told.logDensity(logAmps), 1e-6, "ln I = " + logAmps);
    }
  }

  @Test
  void density_atKnownVolts_isNormal_andFiniteFarOut() {
    EfficiencyAtLoad model = at(ways(FLAT, STEEP), SURE, UNSURE);
    double sum = 0;
    for (double x = 0; x < 5; x += 0.0005) {
      sum += 0.0005 * Math.exp(model.logDensity(x, ANCHOR - 0.2, OHMS, SUPPLY, NO_IDLE));
    }
    assertEquals(1, sum, 1e-6);
    double far = model.logDensity(50, ANCHOR, OHMS, SUPPLY, NO_IDLE);
    assertEquals(-300 * Math.log(10) - 0.5 * Math.log(2 * Math.PI), far, 1e-9);
  }

  /** The highest density, found at the middle of a part, is that of a search over all currents. */
  @Test
  void highest_isTheHeightOfTheDensity() {
    Part narrow = new Part(0.4, Math.log(0.45), 0.0002);
    EfficiencyAtLoad model = at(ways(FLAT, STEEP), SURE, narrow);
    for (double volts : new double[] {ANCHOR, ANCHOR - 0.4}) {
      double most = Double.NEGATIVE_INFINITY;
      for (double x = 0; x < 5; x += 1e-4) {
        most = Math.max(most, model.logDensity(x, volts, OHMS, SUPPLY, NO_IDLE));
      }
      assertEquals(most, model.highest(volts, OHMS, SUPPLY, NO_IDLE), 1e-3);
    }
  }

  /** At known volts the current is off by what the efficiency is off, in logarithms. */
  @Test
  void deviation_isThatOfTheCurrentAtKnownVolts() {
    Ways ways = ways(new Way(0.7, 0, 0.1), new Way(0.3, 1, 0.2));
    for (double volts : new double[] {ANCHOR, ANCHOR - 0.4}) {
      EfficiencyAtLoad model = at(ways, SURE, UNSURE);
      Mixture told = model.logAmpsAbove(Mixture.normal(volts, 1e-7), OHMS, SUPPLY, NO_IDLE);
      assertEquals(told.deviation(), model.deviation(volts), 1e-6);
      Part half = new Part(0.3, SURE.mean(), SURE.variance());
      Part rest = new Part(0.2, UNSURE.mean(), UNSURE.variance());
      assertEquals(told.deviation(), at(ways, half, rest).deviation(volts), 1e-6);
    }
  }

  /**
   * What idle may be off by, over what is drawn above it, and the looseness of β add in squares.
   */
  @Test
  void errorsOfIdleAndBeta_widenTheCurrent() {
    IdleModel idle = new IdleModel(2, 0.5, true);
    double fall = -0.3;
    double amps = 2 * Math.exp(2 * (ANCHOR + fall)) / OHMS / (0.58 * SUPPLY);
    double expected = Math.hypot(Math.hypot(0.03, 0.5 / amps), 0.17 * fall);
    EfficiencyAtLoad model = at(ways(new Way(1, 0, 0.17)), new Part(1, Math.log(0.58), 0.0009));
    Mixture volts = Mixture.normal(ANCHOR + fall, 1e-7);
    Mixture told = model.logAmpsAbove(volts, OHMS, SUPPLY, idle);
    assertEquals(expected, told.deviation(), 1e-6);
    double middle = model.logDensity(told.mean(), ANCHOR + fall, OHMS, SUPPLY, idle);
    assertEquals(-Math.log(expected * Math.sqrt(2 * Math.PI)), middle, 1e-6);
  }

  private static Ways ways(Way... ways) {
    return slope -> ways;
  }

  private static EfficiencyAtLoad at(Ways ways, Part... parts) {
    return new EfficiencyAtLoad(parts, ANCHOR, HALVED, ways);
  }
}
