package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BandTest {
  private static final double ENDLESS = Double.POSITIVE_INFINITY;

  @Test
  void holds_itsEnds_andNothingBeyond() {
    Band band = new Band(12, 13, 15);
    assertTrue(band.holds(12) && band.holds(13.7) && band.holds(15));
    assertFalse(band.holds(11.999) || band.holds(15.001));
  }

  @Test
  void holds_noNumber_isFalse() {
    assertFalse(new Band(12, 13, 15).holds(Double.NaN));
  }

  @Test
  void aSinglePoint_isABand() {
    assertTrue(new Band(4, 4, 4).holds(4));
  }

  @Test
  void endsOutOfOrder_endlessOrUnknown_areRefused() {
    double[][] wrong = {
      {14, 13, 15},
      {12, 16, 15},
      {Double.NaN, 13, 15},
      {12, Double.NaN, 15},
      {12, 13, Double.NaN},
      {-ENDLESS, 13, 15},
      {12, 13, ENDLESS}
    };
    for (double[] ends : wrong) {
      assertThrows(IllegalArgumentException.class, () -> new Band(ends[0], ends[1], ends[2]));
    }
  }
}
