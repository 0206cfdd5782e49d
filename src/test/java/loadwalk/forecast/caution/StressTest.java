package loadwalk.forecast.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import loadwalk.forecast.Band;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

class StressTest {
  private static final Band DEMAND = new Band(50, 60, 72);

  private static Stress stress(Band demand, Bears bears) {
    return new Stress("supply-amps", "supplies", "the supplies bear", demand, bears, Unit.AMPERE);
  }

  private static Verdict verdict(Band demand, double bears, boolean watched) {
    return stress(demand, Bears.always(bears)).verdict(watched);
  }

  @Test
  void share_isTheUpperEndOverWhatIsBorne() {
    Stress stress = stress(DEMAND, Bears.always(90));
    assertEquals(0.8, stress.share(), 1e-12);
    assertEquals(20, stress.marginPercent(), 1e-9);
    assertEquals(-20, stress(DEMAND, Bears.always(60)).marginPercent(), 1e-9);
  }

  /** The band's upper end is exceeded with 2.5 %, its middle with 50 %. */
  @Test
  void verdict_watched_heedsFromOneFortieth_andHaltsFromOneHalf() {
    assertEquals(Verdict.CLEAR, verdict(DEMAND, 72.1, true));
    assertEquals(Verdict.HEED, verdict(DEMAND, 71.9, true));
    assertEquals(Verdict.HEED, verdict(DEMAND, 60.1, true));
    assertEquals(Verdict.HALT, verdict(DEMAND, 59.9, true));
  }

  /** 60 A times (72/60) to the power of 1.6449/1.9600 is 69.9 A: exceeded with 5 %. */
  @Test
  void verdict_unwatched_haltsFromOneTwentieth() {
    assertEquals(Verdict.HEED, verdict(DEMAND, 70, false));
    assertEquals(Verdict.HALT, verdict(DEMAND, 69.8, false));
  }

  /** 40 A times 2 to the power of 1.6449/1.9600 is 71.6 A, a third more than 53.7 A. */
  @Test
  void verdict_ofAWideForecast_haltsWhereNoHandIsQuickEnough() {
    Band wide = new Band(20, 40, 80);
    assertEquals(Verdict.HEED, verdict(wide, 53.9, true));
    assertEquals(Verdict.HALT, verdict(wide, 53.5, true));
  }

  @Test
  void verdict_ofAPartThatBearsMoreForAReading_haltsByThat() {
    Stress fuse = stress(new Band(90, 100, 110), new Bears(90, 120, 95));
    assertEquals(Verdict.HEED, fuse.verdict(true));
    assertEquals(Verdict.HEED, fuse.verdict(false));
    assertEquals(
        Verdict.HALT, stress(new Band(90, 100, 110), new Bears(90, 105, 95)).verdict(false));
  }

  @Test
  void whatBearsNothing_orNobodyKnowsHowMuch_isRefused() {
    for (double limit : new double[] {0, -1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> Bears.always(limit));
    }
  }

  @Test
  void whatIsMissing_isNamed() {
    NullPointerException thrown =
        assertThrows(NullPointerException.class, () -> stress(null, Bears.always(1)));
    assertEquals("demand", thrown.getMessage());
  }
}
