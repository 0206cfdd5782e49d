package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Checks load resistors against catalogue figures. */
class ResistorDeratingTest {
  private static final ResistorDerating DERATING = new ResistorDerating(Tables.stock());

  /** Catalogue figure, from memory, not sure: 5 times the rating for 5 s. */
  @Test
  void burst_atFiveTimes_lastsFiveSeconds() {
    assertEquals(5, DERATING.burstSeconds(500, 100), 1e-9);
    assertEquals(12.5, DERATING.burstSeconds(200, 100), 1e-9);
    assertEquals(Double.POSITIVE_INFINITY, DERATING.burstSeconds(75, 100));
    assertEquals(0, DERATING.burstSeconds(501, 100));
    assertEquals(25 / 0.76, DERATING.burstSeconds(76, 100), 1e-9);
    assertEquals(5, DERATING.largestMultiple());
    assertEquals(0.75, DERATING.continuousShare());
  }

  @Test
  void assumption_isTheOneOfTheTables() {
    assertEquals(
        "burst times are estimates: 5 times the rating for 5 s, from cold, on the heatsink",
        DERATING.burstAssumption());
    String rows =
        "key,value,unit,source,how\n"
            + "resistor-burst-multiple,10,1,x,read\nresistor-burst-seconds,2.5,s,x,read";
    assertEquals(
        "burst times are estimates: 10 times the rating for 2.5 s, from cold, on the heatsink",
        new ResistorDerating(Tables.stock().with("limits.csv", rows)).burstAssumption());
  }

  @Test
  void absurdInput_getsASentence() {
    assertThrows(IllegalArgumentException.class, () -> DERATING.burstSeconds(-1, 100));
    assertThrows(IllegalArgumentException.class, () -> DERATING.burstSeconds(1, 0));
    assertThrows(IllegalArgumentException.class, () -> DERATING.burstSeconds(Double.NaN, 100));
  }
}
