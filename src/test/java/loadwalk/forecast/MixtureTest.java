package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MixtureTest {
  private static final long SEED = 4711;

  @Test
  void quantile_ofOneNormal_isTheNormalQuantile() {
    Mixture normal = Mixture.normal(3, 0.5);
    assertEquals(3 - 1.959964 * 0.5, normal.quantile(0.025), 2e-4);
    assertEquals(3 + 1.959964 * 0.5, normal.quantile(0.975), 2e-4);
  }

  @Test
  void quantile_invertsCumulative_forSkewedMixtures() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 200; round++) {
      Mixture mixture = drawn(random, 1 + random.nextInt(60));
      for (double p : new double[] {0.025, 0.5, 0.975}) {
        double at = mixture.quantile(p);
        double slope = Math.exp(mixture.logDensity(at));
        String what = "seed " + SEED + ", round " + round + ", p " + p;
        assertEquals(p, mixture.cumulative(at), 5e-5 + 2e-4 * slope, what);
      }
    }
  }

  @Test
  void logDensity_integratesToOne_andStaysFiniteFarOut() {
    Mixture mixture = new Mixture.Builder().add(1, 0, 0.01).add(1, 0.3, 0.1).add(0.1, 0, 1).build();
    double sum = 0;
    for (double x = -8; x < 8; x += 0.0005) {
      sum += 0.0005 * Math.exp(mixture.logDensity(x));
    }
    assertEquals(1, sum, 1e-6);
    double far = Mixture.normal(0, 0.01).logDensity(5);
    assertEquals(-0.5 * 500 * 500 - Math.log(0.01 * Math.sqrt(2 * Math.PI)), far, 1e-6);
  }

  @Test
  void compressed_keepsMeanDeviationAndNearlyTheTails() {
    SplittableRandom random = new SplittableRandom(SEED + 1);
    for (int round = 0; round < 100; round++) {
      Mixture mixture = drawn(random, 200);
      Mixture small = mixture.compressed();
      String what = "seed " + (SEED + 1) + ", round " + round;
      assertTrue(small.size() <= 72, what);
      assertEquals(mixture.mean(), small.mean(), 1e-9, what);
      assertEquals(mixture.deviation(), small.deviation(), 1e-9, what);
      assertEquals(0.025, mixture.cumulative(small.quantile(0.025)), 0.006, what);
      assertEquals(0.975, mixture.cumulative(small.quantile(0.975)), 0.006, what);
    }
  }

  @Test
  void build_withoutWeight_isRefused() {
    assertThrows(IllegalStateException.class, () -> new Mixture.Builder().build());
    Mixture.Builder lost = new Mixture.Builder().add(Double.NaN, 0, 1);
    assertThrows(IllegalStateException.class, lost::build);
  }

  private static Mixture drawn(SplittableRandom random, int parts) {
    Mixture.Builder builder = new Mixture.Builder();
    for (int i = 0; i < parts; i++) {
      double weight = Math.exp(3 * random.nextDouble());
      builder.add(weight, random.nextDouble(), Math.exp(-4 + 2 * random.nextDouble()));
    }
    return builder.build();
  }
}
