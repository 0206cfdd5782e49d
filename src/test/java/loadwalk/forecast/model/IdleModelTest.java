package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class IdleModelTest {
  private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
  private final IdleModel read = IdleModel.of(OptionalDouble.of(2), UNKNOWN);

  @Test
  void reading_isTaken_whateverTheFusesSay() {
    IdleModel model = IdleModel.of(OptionalDouble.of(2), OptionalDouble.of(100));
    assertEquals(2, model.amps());
    assertTrue(model.measured());
    assertEquals(Math.log(2), model.density().mean(), 1e-12);
  }

  /** Common practice, no source: an idle current is told by fuses to a factor of two or so. */
  @Test
  void guess_growsWithTheFuses_andIsWide() {
    IdleModel small = IdleModel.of(UNKNOWN, OptionalDouble.of(25));
    IdleModel large = IdleModel.of(UNKNOWN, OptionalDouble.of(100));
    assertTrue(small.amps() > 0.3 && small.amps() < 0.8, small.amps() + " A");
    assertTrue(large.amps() > 2 * small.amps() && large.amps() < 4 * small.amps());
    assertFalse(small.measured());
    assertTrue(small.density().deviation() > 5 * read.density().deviation());
    assertTrue(small.error() > 0.5 * small.amps() && small.error() < small.amps());
    assertEquals(1.0, IdleModel.of(UNKNOWN, UNKNOWN).amps(), 1e-12);
  }

  @Test
  void readingBelowNothing_isNotTaken_butNothingIs() {
    assertFalse(IdleModel.of(OptionalDouble.of(-0.1), UNKNOWN).measured());
    IdleModel none = IdleModel.of(OptionalDouble.of(0), UNKNOWN);
    assertTrue(none.measured());
    assertEquals(0, none.amps());
    assertEquals(Math.log(0.01), none.density().mean(), 1e-12);
  }

  @Test
  void logAbove_isLnOfTheRest_andNeverLessThanASmallPart() {
    assertEquals(Math.log(8), read.logAbove(10), 1e-12);
    assertEquals(Math.log(0.03 * 2), read.logAbove(2), 1e-12);
    assertEquals(Math.log(0.03), read.logAbove(1), 1e-12);
  }

  @Test
  void steepness_isTheDerivativeOfLogAbove() {
    double h = 1e-6;
    for (double amps : new double[] {1, 2.5, 10, 80}) {
      double slope =
          (read.logAbove(amps * Math.exp(h)) - read.logAbove(amps * Math.exp(-h))) / (2 * h);
      double expected = amps > 2 ? slope : 1 / 0.03;
      assertEquals(expected, read.steepness(amps), 1e-6 * expected, amps + " A");
    }
  }

  @Test
  void relativeError_isTheIdleErrorOverTheRest_andAtMostOne() {
    assertEquals(0.16, read.error(), 1e-12, "8 % of 2 A");
    assertEquals(0.16 / 8, read.relativeError(10), 1e-12);
    assertEquals(1, read.relativeError(2));
  }
}
