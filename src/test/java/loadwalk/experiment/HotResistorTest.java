package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import loadwalk.bench.Mount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the heat of a resistor to what catalogues say and to the closed form of one mass. */
class HotResistorTest {
  private static final Mount COLD = Mount.heatsink(1e-3);
  private static final Mount FREE_AIR = Mount.of(Mount.Kind.FREE_AIR);

  private static HotResistor of(double rated, Mount mount) {
    return new HotResistor(0, rated, Optional.of(mount));
  }

  @ParameterizedTest
  @CsvSource({"10, 5.5", "50, 20", "75, 35", "300, 75", "2400, 300"})
  void freeAir_bearsForEverWhatCataloguesSay(double rated, double watts) {
    HotResistor resistor = of(rated, FREE_AIR);
    assertEquals(watts, resistor.bears(Double.POSITIVE_INFINITY), 1e-6 * watts);
  }

  @Test
  void onItsHeatsink_bearsItsRatingForEver_andFiveTimesForFiveSeconds() {
    HotResistor resistor = of(100, COLD);
    assertEquals(100, resistor.bears(Double.POSITIVE_INFINITY), 0.05);
    assertEquals(500, resistor.bears(5), 3);
  }

  @Test
  void whatIsNotSaid_countsAsFreeAir_andAHeatsinkAddsItsKelvins() {
    HotResistor silent = new HotResistor(0, 100, Optional.empty());
    assertEquals(of(100, FREE_AIR).bears(60), silent.bears(60));
    HotResistor sunk = of(100, Mount.heatsink(1));
    assertEquals(225 / 3.25, sunk.bears(Double.POSITIVE_INFINITY), 1e-6);
  }

  @Test
  void wireOnAColdCase_risesAsOneMass() {
    double seconds = -5 / Math.log(0.8);
    for (double time : new double[] {2, 10, 60}) {
      double closed = 225 * 0.8 * (1 - Math.exp(-time / seconds));
      assertEquals(closed, of(100, COLD).rise(80, time), 0.004 * 225);
    }
  }

  @Test
  void freeAir_bearsLessTheLonger_andNeverMoreThanOnAHeatsink() {
    HotResistor air = of(100, FREE_AIR);
    double before = Double.POSITIVE_INFINITY;
    for (double time : new double[] {5, 20, 60, 300, 1800}) {
      double bears = air.bears(time);
      assertTrue(bears < before, time + " s: " + bears + " W");
      assertTrue(bears <= of(100, COLD).bears(time), time + " s");
      before = bears;
    }
    assertEquals(50, before, 0.1);
  }
}
