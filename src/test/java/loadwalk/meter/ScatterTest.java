package loadwalk.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScatterTest {

  /** JCGM 100:2008, 4.4.3: twenty temperatures, s = 1.489, s/√20 = 0.333; from memory. */
  @Test
  void of_theGuidesTemperatures_givesTheGuidesNumbers() {
    List<Double> temperatures =
        List.of(
            96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42,
            100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72);
    Scatter scatter = Scatter.of(temperatures).orElseThrow();
    assertEquals(100.145, scatter.mean(), 5e-4);
    assertEquals(0.333, scatter.standardUncertainty(), 5e-4);
    assertEquals(1.489, scatter.deviation(), 5e-4);
    assertEquals(5.82, scatter.spread(), 1e-9);
  }

  @Test
  void of_fewerThanTwo_isUnknown() {
    assertTrue(Scatter.of(List.of()).isEmpty());
    assertTrue(Scatter.of(List.of(13.7)).isEmpty());
  }
}
