package loadwalk.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ScalePropertyTest {
  private static final long SEED = 41;

  @Test
  void everyValue_liesInsideAndTicksAreFewAndRound() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      double size = Math.pow(10, 8 * random.nextDouble() - 3);
      List<Double> values = new ArrayList<>();
      for (int n = 1 + random.nextInt(6); n > 0; n--) {
        values.add(size * (random.nextDouble() - (random.nextBoolean() ? 0 : 0.5)));
      }
      Axis axis = random.nextBoolean() ? Axis.fromZero("v") : Axis.overRange("v");
      Scale scale = Scale.of(axis, values);
      String what = "seed " + SEED + ", case " + i + ": " + values + " in " + scale;
      for (double v : values) {
        assertTrue(scale.at(v) >= -1e-9 && scale.at(v) <= 1 + 1e-9, what);
      }
      assertTrue(scale.ticks().size() >= 2 && scale.ticks().size() <= 9, what);
      for (Axis.Tick tick : scale.ticks()) {
        assertEquals(tick.value(), Double.parseDouble(tick.label()), 1e-12 * size, what);
      }
    }
  }

  @Test
  void ratios_equalRatiosTakeEqualLengths() {
    Scale scale = Scale.of(Axis.ratios("load", List.of()), List.of(0.5, 1.0, 2.0, 4.0));
    assertEquals(scale.at(1) - scale.at(0.5), scale.at(4) - scale.at(2), 1e-12);
    assertTrue(Double.isNaN(scale.at(0)));
  }

  @Test
  void point_thatIsNoNumber_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Series.Point.exact(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Series.Point(1, 2, 3, 4));
  }
}
