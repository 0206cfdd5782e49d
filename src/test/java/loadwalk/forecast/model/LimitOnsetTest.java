package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The chance of a limit in the octaves ahead, and how it spreads a prediction. */
class LimitOnsetTest {
  private static final LimitOnset ONSET = new LimitOnset(2);
  private static final Mixture TOLD = Mixture.normal(2.9, 0.01);
  private static final double LEVEL = 2.95;

  private static final double[] SLOPES = LimitOnset.SLOPES;
  private static final double[] WEIGHTS = LimitOnset.SLOPE_WEIGHTS;

  @Test
  void probability_atTheSameLoad_orAGreaterOne_isNone() {
    assertEquals(0, ONSET.probability(4, 4));
    assertEquals(0, ONSET.probability(3.88, 4));
    assertEquals(0, ONSET.probability(8, 4));
    assertTrue(ONSET.probability(3.87, 4) > 0);
  }

  /** A hazard per octave, higher below the least load that the maker rates and below 2 Ω. */
  @Test
  void probability_growsWithTheOctaves_fasterBelowTheLeastRatedLoad_andLowLoads() {
    double rated = hazard(ONSET, 4, 8);
    double lowAndUnrated = hazard(ONSET, 0.5, 1);
    double low = hazard(new LimitOnset(0.5), 1, 2);
    assertTrue(rated > 0 && rated < low && low < lowAndUnrated);
    assertEquals(2 * rated, hazard(ONSET, 4, 16), 1e-12, "two octaves are twice the hazard");
    double unrated = lowAndUnrated - low + rated;
    double below = Math.log(2 * 0.97 / 1) / Math.log(2);
    double whole = unrated * below + rated * (2 - below) + low - rated;
    assertEquals(whole, hazard(ONSET, 1, 4), 1e-12);
  }

  private static double hazard(LimitOnset onset, double ohms, double fromOhms) {
    return -Math.log(1 - onset.probability(ohms, fromOhms));
  }

  @Test
  void extend_betweenTheLoadsMeasured_changesNothing() {
    Mixture same = extended(3, new LimitOnset.Reach(2, 4, LEVEL), 0);
    assertEquals(TOLD.mean(), same.mean(), 1e-12);
    assertEquals(TOLD.deviation(), same.deviation(), 1e-12);
  }

  /** If the limit sets in at once the volts fall with its slope; else anywhere up to not at all. */
  @Test
  void extend_belowTheLoadsMeasured_spreadsDownToEachLimit() {
    double limited = ONSET.probability(0.5, 1);
    assertMoments(limited, Math.log(0.5 / 1), 0, extended(0.5, reach(1, 4), 0));
  }

  @Test
  void extend_alongALimit_allowsForSteeperOnesOnly() {
    double limited = ONSET.probability(0.5, 1);
    assertMoments(limited, Math.log(0.5), 0.5, extended(0.5, reach(1, 4), 0.5));
    assertMoments(limited, Math.log(0.5), 1, extended(0.5, reach(1, 4), 1));
  }

  /** Above the loads measured a limit that ruled them may let go, and the volts rise. */
  @Test
  void extend_aboveTheLoadsMeasured_spreadsUpwards() {
    assertMoments(LimitOnset.RELEASED, Math.log(8 / 4.0), 0, extended(8, reach(1, 4), 0));
    Mixture same = extended(4.11, reach(1, 4), 0);
    assertEquals(TOLD.mean(), same.mean(), 1e-12);
    assertTrue(extended(4.13, reach(1, 4), 0).deviation() > TOLD.deviation());
  }

  private static void assertMoments(double chance, double whole, double ruling, Mixture actual) {
    double rest = 1;
    double mean = 0;
    double square = 0;
    for (int i = 0; i < SLOPES.length; i++) {
      if (SLOPES[i] > ruling + LimitOnset.LEAST_STEEPER) {
        double weight = chance * WEIGHTS[i];
        double range = LEVEL + SLOPES[i] * whole - TOLD.mean();
        double middle = TOLD.mean() + range / 2;
        // Strata of a flat density have the variance of it less that of a stratum.
        double stratum = range / LimitOnset.STRATA;
        double flat = (range * range - stratum * stratum) / 12;
        double own = Math.hypot(LimitOnset.STRATUM_DEVIATION * stratum, LimitOnset.SOFTNESS);
        rest -= weight;
        mean += weight * middle;
        square += weight * (middle * middle + flat + own * own);
      }
    }
    mean += rest * TOLD.mean();
    square += rest * (TOLD.mean() * TOLD.mean() + 0.01 * 0.01);
    assertEquals(mean, actual.mean(), 1e-9);
    assertEquals(Math.sqrt(square - mean * mean), actual.deviation(), 1e-9);
  }

  private static LimitOnset.Reach reach(double least, double most) {
    return new LimitOnset.Reach(least, most, LEVEL);
  }

  private static Mixture extended(double ohms, LimitOnset.Reach reach, double slope) {
    Mixture.Builder builder = new Mixture.Builder();
    ONSET.extend(builder, 1, TOLD, ohms, reach, slope);
    return builder.build();
  }
}
