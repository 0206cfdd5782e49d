package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the heat of a resistor to what catalogues say and to the closed form of one mass. */
class HotResistorTest {
  private static HotResistor of(double rated, HotResistor.Mount mount) {
    return new HotResistor(0, rated, mount);
  }

  @ParameterizedTest
  @CsvSource({"10, 5.5", "50, 20", "75, 35", "300, 75", "600, 150"})
  void freeAir_bearsForEverWhatCataloguesSay(double rated, double watts) {
    HotResistor resistor = of(rated, HotResistor.Mount.FREE_AIR);
    assertEquals(watts, resistor.bears(Double.POSITIVE_INFINITY), 1e-6 * watts);
  }

  @Test
  void onItsHeatsink_bearsItsRatingForEver_andFiveTimesForFiveSeconds() {
    HotResistor resistor = of(100, HotResistor.Mount.HEATSINK);
    assertEquals(100, resistor.bears(Double.POSITIVE_INFINITY), 1e-6);
    assertEquals(500, resistor.bears(5), 3);
  }

  @Test
  void wireOnAColdCase_risesAsOneMass() {
    double seconds = -5 / Math.log(0.8);
    for (double time : new double[] {2, 10, 60}) {
      double closed = 225 * 0.8 * (1 - Math.exp(-time / seconds));
      assertEquals(closed, of(100, HotResistor.Mount.HEATSINK).rise(80, time), 0.004 * 225);
    }
  }

  @Test
  void freeAir_bearsLessTheLonger_andNeverMoreThanOnAHeatsink() {
    HotResistor air = of(100, HotResistor.Mount.FREE_AIR);
    double before = Double.POSITIVE_INFINITY;
    for (double time : new double[] {5, 20, 60, 300, 1800}) {
      double bears = air.bears(time);
      assertTrue(bears < before, time + " s: " + bears + " W");
      assertTrue(bears <= of(100, HotResistor.Mount.HEATSINK).bears(time), time + " s");
      before = bears;
    }
    assertEquals(50, before, 0.1);
  }
}
