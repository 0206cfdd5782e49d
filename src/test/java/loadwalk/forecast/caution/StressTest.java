package loadwalk.forecast.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import loadwalk.forecast.Band;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

class StressTest {
  private static final Band DEMAND = new Band(50, 60, 72);

  @Test
  void share_isTheUpperEndOverWhatIsBorne() {
    Stress stress = new Stress("supply-amps", "supplies", DEMAND, 90, Unit.AMPERE);
    assertEquals(0.8, stress.share(), 1e-12);
    assertEquals(20, stress.marginPercent(), 1e-9);
  }

  @Test
  void margin_isBelowZero_whereItIsExceeded() {
    Stress stress = new Stress("supply-amps", "supplies", DEMAND, 60, Unit.AMPERE);
    assertEquals(-20, stress.marginPercent(), 1e-9);
  }

  @Test
  void whatBearsNothing_orNobodyKnowsHowMuch_isRefused() {
    for (double limit : new double[] {0, -1, Double.NaN}) {
      assertThrows(
          IllegalArgumentException.class,
          () -> new Stress("supply-amps", "supplies", DEMAND, limit, Unit.AMPERE));
    }
  }

  @Test
  void whatIsMissing_isNamed() {
    assertMissing("code", null, "supplies", DEMAND, Unit.AMPERE);
    assertMissing("what", "supply-amps", null, DEMAND, Unit.AMPERE);
    assertMissing("demand", "supply-amps", "supplies", null, Unit.AMPERE);
    assertMissing("unit", "supply-amps", "supplies", DEMAND, null);
  }

  private static void assertMissing(
      String missing, String code, String what, Band demand, Unit unit) {
    NullPointerException thrown =
        assertThrows(NullPointerException.class, () -> new Stress(code, what, demand, 90, unit));
    assertEquals(missing, thrown.getMessage());
  }
}
