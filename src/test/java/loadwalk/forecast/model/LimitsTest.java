package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a limit may have set in: the volts fall much faster from one load to the next. */
class LimitsTest {
  /** Rails that sag by a few percent an octave are no limit. */
  @Test
  void rails_thatSagALittle_showNone() {
    assertEquals(List.of(), Limits.candidates(points(4, 20, 2, 19.5, 1, 18.6)));
    assertEquals(List.of(), Limits.candidates(points(4, 20)));
    assertEquals(List.of(), Limits.candidates(List.of()));
  }

  /** A hard current limit halves the volts with the load, from where it sets in. */
  @Test
  void currentLimit_isLookedFor_whereItSetsIn() {
    assertEquals(List.of(0.5), Limits.candidates(points(4, 20, 2, 19.5, 1, 18.6, 0.5, 14)));
    assertEquals(List.of(4.0, 1.0), Limits.candidates(points(4, 20, 2, 19.6, 1, 11.8, 0.5, 6)));
  }

  @Test
  void volts_thatFallAllAlong_maySpeakOfALimitAboveAllLoads() {
    assertEquals(4.0, Limits.candidates(points(4, 20, 2, 10, 1, 5)).get(0));
  }

  /** A fall that goes on as before is one limit, not another with every load. */
  @Test
  void fallThatGoesOn_isOneLimit() {
    assertEquals(List.of(4.0, 2.0), Limits.candidates(points(4, 20, 2, 14, 1, 9.8, 0.5, 6.9)));
  }

  @Test
  void loadsAlmostEqual_areAveraged() {
    assertEquals(
        List.of(1.0),
        Limits.candidates(points(4, 20, 3.9, 20.2, 2.02, 19.4, 1.98, 19.8, 2, 19.6, 1, 16)));
    assertEquals(List.of(), Limits.candidates(points(4, 20, 3.7, 14)));
  }

  /** The fall is told per octave: over two octaves it may be twice as deep. */
  @Test
  void fall_isToldPerOctave() {
    assertEquals(List.of(), Limits.candidates(points(4, 20, 1, 17.2)));
    assertEquals(List.of(2.0), Limits.candidates(points(4, 20, 2, 18.1)));
  }

  private static List<WalkReadings.Point> points(double... ohmsAndVolts) {
    List<WalkReadings.Point> points = new ArrayList<>();
    for (int i = 0; i < ohmsAndVolts.length; i += 2) {
      points.add(
          new WalkReadings.Point(
              ohmsAndVolts[i], false, Math.log(ohmsAndVolts[i + 1]), Double.NaN, Double.NaN));
    }
    return points;
  }
}
