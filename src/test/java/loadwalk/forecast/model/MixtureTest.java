package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
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

  /** Far out a density is taken from its nearest part; there the two ways must meet. */
  @Test
  void logDensity_isContinuous_whereItGoesFarOut() {
    Mixture mixture = new Mixture.Builder().add(3, 0, 0.1).add(1, 0.2, 0.05).build();
    double edge = 0.1 * Math.sqrt(2 * 600);
    double near = mixture.logDensity(-edge + 1e-7);
    double far = mixture.logDensity(-edge - 1e-7);
    assertEquals(near, far, 1e-3);
    assertEquals(Math.log(0.75 / 0.1) - 600 - 0.5 * Math.log(2 * Math.PI), far, 1e-3);
  }

  /** Two parts: the mean of the means, and between them their distance beside their widths. */
  @Test
  void meanAndDeviation_areThoseOfTheWholeDensity() {
    Mixture two = new Mixture.Builder().add(1, 1, 0.3).add(3, 2, 0.4).build();
    assertEquals(1.75, two.mean(), 1e-12);
    double between = 0.25 * 0.75;
    assertEquals(Math.sqrt(0.25 * 0.09 + 0.75 * 0.16 + between), two.deviation(), 1e-12);
    assertEquals(2, two.size());
  }

  @Test
  void affine_movesAndWidens() {
    Mixture moved = Mixture.normal(3, 0.2).affine(2, 1, 0.3);
    assertEquals(7, moved.mean(), 1e-12);
    assertEquals(0.5, moved.deviation(), 1e-12);
    Mixture.Builder builder = new Mixture.Builder();
    Mixture.normal(3, 0.2).addMoved(builder, 1, -2, 1, 0.3);
    assertEquals(-5, builder.build().mean(), 1e-12);
    assertEquals(0.5, builder.build().deviation(), 1e-12);
    Mixture.Builder half = new Mixture.Builder().add(0.5, 0, 1);
    Mixture.normal(4, 1).addTo(half, 1.5);
    assertEquals(3, half.build().mean(), 1e-12);
  }

  /** A part of a ten-millionth of the weight is not worth its exponential. */
  @Test
  void build_leavesOutPartsOfNoWeight() {
    assertEquals(1, new Mixture.Builder().add(2, 0, 1).add(1e-7, 5, 1).build().size());
    assertEquals(2, new Mixture.Builder().add(2, 0, 1).add(1e-6, 5, 1).build().size());
  }

  /** Parts that are narrow and wide beside each other are kept apart, so that tails stay. */
  @Test
  void compressed_keepsNarrowAndWideApart() {
    Mixture.Builder builder = new Mixture.Builder();
    for (int i = 0; i < 40; i++) {
      builder.add(1, 0.0001 * i, i % 2 == 0 ? 0.01 : 0.5);
    }
    Mixture whole = builder.build();
    Mixture small = whole.compressed();
    assertTrue(small.size() <= 48, small.size() + " parts");
    for (double at : new double[] {-0.8, -0.02, 0, 0.02, 0.8}) {
      assertEquals(whole.cumulative(at), small.cumulative(at), 2e-3, "at " + at);
    }
    Mixture few = drawn(new SplittableRandom(SEED + 2), 24);
    assertSame(few, few.compressed());
  }

  /** Looked for at the middles of the tall parts, the peak is near that of a search everywhere. */
  @Test
  void highest_isThePeakOfTheDensity() {
    SplittableRandom random = new SplittableRandom(SEED + 3);
    for (int round = 0; round < 50; round++) {
      Mixture mixture = drawn(random, 1 + random.nextInt(60));
      double most = Double.NEGATIVE_INFINITY;
      for (double at = -0.1; at < 1.1; at += 1e-4) {
        most = Math.max(most, mixture.logDensity(at));
      }
      double below = most - mixture.highest();
      String where = "seed " + (SEED + 3) + ", round " + round + ": " + below;
      assertTrue(below > -1e-3 && below < 0.2, where);
    }
  }

  @Test
  void heldBelow_farAboveAPart_leavesItWhole() {
    Mixture two = new Mixture.Builder().add(0.5, 0, 0.1).add(0.5, 1, 0.1).build();
    assertEquals(2, two.heldBelow(1.7, 0.01, 0.9).size());
    assertEquals(4, two.heldBelow(0.5, 0.01, 0.9).size());
    assertEquals(3, two.heldBelow(1.5, 0.01, 0.9).size());
    assertEquals(two.deviation(), two.heldBelow(1.7, 0.01, 0.9).deviation(), 1e-12);
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
