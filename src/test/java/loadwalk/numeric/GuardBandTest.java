package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;

class GuardBandTest {
  private static final GuardBand BAND = GuardBand.AT_95_PERCENT;
  private static final double KNOWN = Double.POSITIVE_INFINITY;

  @Test
  void threeVerdicts_areTold() {
    assertEquals(1.6449, BAND.width(1, KNOWN), 0.0001);
    assertEquals(Conformance.SHOWN_TO_MEET, BAND.atLeast(101.65, 1, KNOWN, 100));
    assertEquals(Conformance.TOO_CLOSE, BAND.atLeast(101.64, 1, KNOWN, 100));
    assertEquals(Conformance.TOO_CLOSE, BAND.atLeast(98.36, 1, KNOWN, 100));
    assertEquals(Conformance.SHOWN_TO_MISS, BAND.atLeast(98.35, 1, KNOWN, 100));
  }

  @Test
  void fewDegreesOfFreedom_widenTheBand() {
    assertEquals(2.9200, BAND.width(1, 2), 0.0001);
    assertEquals(1.6449, BAND.width(1, KNOWN), 0.0001);
  }

  @Test
  void verdict_isTurnedByMirroring() {
    long seed = 7;
    Random random = new Random(seed);
    for (int i = 0; i < 1000; i++) {
      double value = random.nextGaussian();
      double u = random.nextDouble();
      Conformance mirrored = BAND.atLeast(0.2 - value, u, KNOWN, 0.1);
      assertEquals(
          BAND.atLeast(value, u, KNOWN, 0.1) == Conformance.SHOWN_TO_MEET,
          mirrored == Conformance.SHOWN_TO_MISS,
          "seed " + seed);
      if (value < 0.1) {
        assertNotEquals(Conformance.SHOWN_TO_MEET, BAND.atLeast(value, u, KNOWN, 0.1));
      }
    }
  }

  @Test
  void unknown_neverPasses() {
    assertThrows(IllegalArgumentException.class, () -> BAND.atLeast(Double.NaN, 1, KNOWN, 100));
    assertThrows(IllegalArgumentException.class, () -> BAND.atLeast(200, Double.NaN, KNOWN, 100));
    assertThrows(IllegalArgumentException.class, () -> BAND.atLeast(200, 1, KNOWN, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new GuardBand(0.5));
  }

  /** JCGM 106:2012, 8.3.3: the acceptance limit itself is accepted. */
  @Test
  void valueOnTheEdgeOfItsBand_isShown() {
    double width = BAND.width(1, KNOWN);
    assertEquals(Conformance.SHOWN_TO_MEET, BAND.atLeast(width, 1, KNOWN, 0));
    assertEquals(Conformance.SHOWN_TO_MISS, BAND.atLeast(-width, 1, KNOWN, 0));
    assertEquals(Conformance.SHOWN_TO_MEET, BAND.atLeast(100, 0, KNOWN, 100));
  }

  @Test
  void level_ofCertainty_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new GuardBand(1));
    assertThrows(IllegalArgumentException.class, () -> new GuardBand(Double.NaN));
  }
}
