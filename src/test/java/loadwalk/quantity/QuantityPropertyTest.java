package loadwalk.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class QuantityPropertyTest {
  private static final long SEED = 7_310_826L;
  private static final int TRIALS = 10_000;

  @Test
  void minusItself_isZeroWithoutUncertainty() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      Quantity x = any(random);
      Quantity difference = x.minus(x);
      assertEquals(0, difference.value(), told(i));
      assertEquals(0, difference.u(), told(i));
    }
  }

  @Test
  void dividedByItself_isOneWithoutUncertainty() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      Quantity x = any(random);
      Quantity ratio = x.dividedBy(x, Unit.ONE);
      assertEquals(1, ratio.value(), told(i));
      assertEquals(0, ratio.u(), 1e-15 * x.u() / Math.abs(x.value()), told(i));
    }
  }

  @Test
  void plusItself_isTwiceWithTwiceTheUncertainty() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      Quantity x = any(random);
      assertEquals(2 * x.u(), x.plus(x).u(), 1e-12 * x.u(), told(i));
      assertEquals(x.scaledBy(2).u(), x.plus(x).u(), 1e-12 * x.u(), told(i));
    }
  }

  @Test
  void sumAndProduct_doNotDependOnTheOrder() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      Quantity a = any(random);
      Quantity b = any(random);
      assertEquals(a.plus(b), b.plus(a), told(i));
      assertEquals(a.times(b, Unit.WATT), b.times(a, Unit.WATT), told(i));
    }
  }

  @Test
  void everyResult_hasAnUncertaintyOfZeroOrMore() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      Quantity a = any(random);
      Quantity b = any(random);
      Quantity result =
          switch (random.nextInt(4)) {
            case 0 -> a.plus(b);
            case 1 -> a.minus(b);
            case 2 -> a.times(b, Unit.WATT);
            default -> a.dividedBy(b, Unit.OHM);
          };
      assertTrue(result.u() >= 0, told(i));
      assertEquals(2 * result.u(), result.expanded(), told(i));
      assertTrue(result.withPart("scatter", 1).u() >= result.u(), told(i));
    }
  }

  @Test
  void independentSources_addBySquares() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      double u1 = random.nextDouble();
      double u2 = random.nextDouble();
      Quantity a = Quantity.of(5, Unit.VOLT, "first meter", u1);
      Quantity b = Quantity.of(3, Unit.VOLT, "second meter", u2);
      double expected = Math.sqrt(u1 * u1 + u2 * u2);
      assertEquals(expected, a.plus(b).u(), 1e-12, told(i));
      assertEquals(expected, a.minus(b).u(), 1e-12, told(i));
    }
  }

  /** P = V²/R by JCGM 100:2008, 5.1.2: ∂P/∂V = 2V/R, ∂P/∂R = −V²/R². */
  @Test
  void power_throughProducts_followsThePartialDerivatives() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      double volts = 1 + 50 * random.nextDouble();
      double ohms = 0.25 + 8 * random.nextDouble();
      double uVolts = 0.01 * volts * random.nextDouble();
      double uOhms = 0.01 * ohms * random.nextDouble();
      Quantity v = Quantity.of(volts, Unit.VOLT, "meter", uVolts);
      Quantity r = Quantity.of(ohms, Unit.OHM, "load", uOhms);
      Quantity power = v.times(v, Unit.ONE).dividedBy(r, Unit.WATT);
      double byVolts = 2 * volts / ohms * uVolts;
      double byOhms = volts * volts / (ohms * ohms) * uOhms;
      assertEquals(volts * volts / ohms, power.value(), 1e-9 * power.value(), told(i));
      assertEquals(Math.hypot(byVolts, byOhms), power.u(), 1e-9 * power.u(), told(i));
      Quantity mapped = v.mapped(volts * volts, 2 * volts, Unit.ONE).dividedBy(r, Unit.WATT);
      assertEquals(power.u(), mapped.u(), 1e-9 * power.u(), told(i));
    }
  }

  /**
   * The impedance of JCGM 100:2008, H.2 (Table H.2 and H.3), the correlations of the means carried
   * by shared sources: u(V) = 0.0032 V, u(I) = 0.0095 mA, r(V,I) = −0.36; Z = V/I = 254.26 Ω with u
   * = 0.236 Ω. Without the correlation the value would come out too small.
   */
  @Test
  void impedanceOfGumH2_withItsCorrelation_agrees() {
    double uVolts = 0.0032093613071761794;
    double uAmps = 9.471008394040896e-06;
    double r = -0.3553112198174771;
    Quantity volts = Quantity.of(4.9990000000000006, Unit.VOLT, "shared", uVolts);
    Map<String, Double> parts = new TreeMap<>();
    parts.put("shared", r * uAmps);
    parts.put("amps alone", Math.sqrt(1 - r * r) * uAmps);
    Quantity amps = new Quantity(0.019661, Unit.AMPERE, parts);
    Quantity impedance = volts.dividedBy(amps, Unit.OHM);
    assertEquals(254.25970194801894, impedance.value(), 1e-9);
    assertEquals(0.23633613008237028, impedance.u(), 1e-9);
    Quantity apart = volts.dividedBy(Quantity.of(0.019661, Unit.AMPERE, "b", uAmps), Unit.OHM);
    assertTrue(apart.u() < 0.21, "without its correlation u is " + apart.u());
  }

  @Test
  void nonsense_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Quantity.exact(Double.NaN, Unit.VOLT));
    assertThrows(IllegalArgumentException.class, () -> Quantity.of(1, Unit.VOLT, "meter", -0.1));
    assertThrows(
        IllegalArgumentException.class, () -> Quantity.of(1, Unit.VOLT, "meter", Double.NaN));
    Quantity volt = Quantity.exact(1, Unit.VOLT);
    Quantity ohm = Quantity.exact(1, Unit.OHM);
    assertThrows(IllegalArgumentException.class, () -> volt.plus(ohm));
    assertThrows(
        IllegalArgumentException.class,
        () -> volt.dividedBy(Quantity.exact(0, Unit.OHM), Unit.AMPERE));
  }

  private static Quantity any(Random random) {
    Map<String, Double> parts = new TreeMap<>();
    for (String source : new String[] {"a", "b", "c", "d"}) {
      if (random.nextBoolean()) {
        parts.put(source, random.nextGaussian());
      }
    }
    double value = (random.nextBoolean() ? 1 : -1) * (0.01 + 100 * random.nextDouble());
    return new Quantity(value, Unit.VOLT, parts);
  }

  private static String told(int trial) {
    return "seed " + SEED + ", trial " + trial;
  }
}
