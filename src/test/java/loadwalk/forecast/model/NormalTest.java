package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loadwalk.numeric.Gum;
import org.junit.jupiter.api.Test;

class NormalTest {
  @Test
  void cumulative_agreesWithTheStatisticsLibrary() {
    for (double z = -9; z <= 9; z += 0.0137) {
      assertEquals(Gum.normalCdf(z), Normal.cumulative(z), 1e-7, "z = " + z);
      assertEquals(Gum.normalCdf(z), Normal.quickCumulative(z), 1e-6, "z = " + z);
    }
  }

  /** Beyond the table and beyond eight deviations nothing is left. */
  @Test
  void cumulative_farOut_isNothingOrAll() {
    assertEquals(0, Normal.quickCumulative(-6));
    assertEquals(1, Normal.quickCumulative(6));
    assertEquals(0, Normal.quickCumulative(Double.NaN), "unknown is never likely");
    assertEquals(0, Normal.cumulative(-8.01));
    assertEquals(1, Normal.cumulative(8.01));
  }
}
