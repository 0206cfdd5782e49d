package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Checks load resistors against the straight line of MIL-PRF-39009 and catalogue figures. */
class ResistorDeratingTest {
  private static final ResistorDerating DERATING = new ResistorDerating(Tables.stock());

  private static LoadResistor rated(double watts) {
    return new LoadResistor("R", 4, 1, watts, 1, OptionalDouble.empty());
  }

  /** Percent at temperature: computed from the two read points 25 °C full, 250 °C nothing. */
  @Test
  void watts_atHeatsinkTemperatures_followTheLine() {
    double[][] line = {
      {0, 100},
      {25, 100},
      {50, 88.9},
      {70, 80.0},
      {100, 66.7},
      {125, 55.6},
      {150, 44.4},
      {200, 22.2},
      {250, 0},
      {300, 0}
    };
    for (double[] point : line) {
      assertEquals(point[1], DERATING.watts(rated(100), point[0]), 0.05, point[0] + " °C");
    }
  }

  /** Catalogue pairs, from memory, moderately sure. */
  @Test
  void freeAirWatts_areTheCataloguePairs() {
    assertEquals(5.5, DERATING.freeAirWatts(rated(10)), 1e-9);
    assertEquals(20, DERATING.freeAirWatts(rated(50)), 1e-9);
    assertEquals(50, DERATING.freeAirWatts(rated(100)), 1e-9);
    assertEquals(75, DERATING.freeAirWatts(rated(300)), 1e-9);
    assertEquals(75, DERATING.freeAirWatts(rated(1000)), 1e-9);
    assertTrue(DERATING.freeAirWatts(rated(5)) <= 5);
  }

  /** Catalogue figure, from memory, not sure: 5 times the rating for 5 s. */
  @Test
  void burst_atFiveTimes_lastsFiveSeconds() {
    assertEquals(5, DERATING.burstSeconds(500, 100), 1e-9);
    assertEquals(12.5, DERATING.burstSeconds(200, 100), 1e-9);
    assertEquals(Double.POSITIVE_INFINITY, DERATING.burstSeconds(75, 100));
    assertEquals(0, DERATING.burstSeconds(501, 100));
  }

  @Test
  void absurdInput_getsASentence() {
    assertThrows(IllegalArgumentException.class, () -> DERATING.burstSeconds(-1, 100));
    assertThrows(IllegalArgumentException.class, () -> DERATING.burstSeconds(1, 0));
    assertThrows(IllegalArgumentException.class, () -> DERATING.burstSeconds(Double.NaN, 100));
    assertThrows(IllegalArgumentException.class, () -> DERATING.watts(rated(10), Double.NaN));
  }
}
