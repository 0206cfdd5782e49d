package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Checks what holds for every lead. */
class WirePropertyTest {
  private static final long SEED = 183_425;

  private final Wire wire = new Wire(Tables.stock());

  @Test
  void moreCopper_neverDropsMore() {
    Random random = new Random(SEED);
    for (int i = 0; i < 5000; i++) {
      double area = Math.exp(random.nextDouble() * Math.log(2000)) / 4;
      double more = area * (1 + random.nextDouble());
      double metres = 0.01 + 10 * random.nextDouble();
      int parallel = 1 + random.nextInt(4);
      double amps = 500 * random.nextDouble();
      double celsius = -20 + 120 * random.nextDouble();
      double thin = drop(new Lead.Mm2(area), metres, parallel, amps, celsius);
      double thick = drop(new Lead.Mm2(more), metres, parallel, amps, celsius);
      double beside = drop(new Lead.Mm2(area), metres, parallel + 1, amps, celsius);
      double longer = drop(new Lead.Mm2(area), metres * 1.1, parallel, amps, celsius);
      String told = "seed " + SEED + ", trial " + i + ": " + area + " and " + more + " mm²";
      assertTrue(thick <= thin, told);
      assertTrue(beside <= thin, told);
      assertTrue(longer >= thin, told);
    }
  }

  @Test
  void thickerAwg_neverDropsMoreAndNeverCarriesLess() {
    for (int number = 40; number > -3; number--) {
      Lead thin = new Lead("plus", new Lead.Awg(number), 2, 1);
      Lead thick = new Lead("plus", new Lead.Awg(number - 1), 2, 1);
      assertTrue(wire.ohms(thick, 50) < wire.ohms(thin, 50), "AWG " + number);
      assertTrue(wire.ampacity(thick) > wire.ampacity(thin), "AWG " + number);
    }
  }

  private double drop(Lead.Gauge gauge, double metres, int parallel, double amps, double celsius) {
    return wire.dropVolts(new Lead("run", gauge, metres, parallel), amps, celsius);
  }
}
