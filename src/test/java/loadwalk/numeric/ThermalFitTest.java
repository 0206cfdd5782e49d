package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ThermalFitTest {
  private static double[] minutes(int count) {
    return IntStream.range(0, count).mapToDouble(i -> i + 3).toArray();
  }

  private static double[] celsius(int count, DoubleUnaryOperator curve) {
    return IntStream.range(0, count).mapToDouble(curve::applyAsDouble).toArray();
  }

  @Test
  void exactWarmUp_isFound() {
    double[] readings = celsius(16, t -> 60 - 38 * Math.exp(-t / 6));
    ThermalFit.Settling fit =
        assertInstanceOf(ThermalFit.Settling.class, ThermalFit.of(minutes(16), readings));
    assertEquals(60, fit.endCelsius(), 1e-6);
    assertEquals(22, fit.startCelsius(), 1e-6);
    assertEquals(6, fit.tauMinutes(), 1e-6);
    assertEquals(38 / 6.0 * Math.exp(-15 / 6.0), fit.now().celsiusPerMinute(), 1e-6);
    assertEquals(readings[7], fit.celsiusAt(7), 1e-6);
  }

  @Test
  void noisyWarmUp_isFoundWithinItsUncertainty() {
    long seed = 11;
    Random random = new Random(seed);
    int runs = 300;
    int end = 0;
    int slope = 0;
    for (int run = 0; run < runs; run++) {
      double[] readings =
          celsius(20, t -> 55 - 33 * Math.exp(-t / 7) + 0.3 * random.nextGaussian());
      ThermalFit.Settling fit =
          assertInstanceOf(
              ThermalFit.Settling.class, ThermalFit.of(minutes(20), readings), "seed " + seed);
      double k = Gum.coverageFactor(0.95, 17);
      end += Math.abs(fit.endCelsius() - 55) <= k * fit.endU() ? 1 : 0;
      double trueSlope = 33 / 7.0 * Math.exp(-19 / 7.0);
      slope += Math.abs(fit.now().celsiusPerMinute() - trueSlope) <= k * fit.now().u() ? 1 : 0;
    }
    assertEquals(0.95, (double) end / runs, 0.04, "seed " + seed);
    assertEquals(0.95, (double) slope / runs, 0.04, "seed " + seed);
  }

  @Test
  void coolingDown_settlesToo() {
    ThermalFit fit = ThermalFit.of(minutes(16), celsius(16, t -> 25 + 40 * Math.exp(-t / 5)));
    ThermalFit.Settling settling = assertInstanceOf(ThermalFit.Settling.class, fit);
    assertTrue(settling.now().celsiusPerMinute() < 0);
    assertEquals(25, settling.endCelsius(), 1e-5);
  }

  @Test
  void flatTemperatures_tellNothing() {
    ThermalFit fit = ThermalFit.of(minutes(10), celsius(10, t -> 41.5));
    assertInstanceOf(ThermalFit.CannotTell.class, fit);
  }

  /** A slow rise read every twenty seconds with the scatter of whole degrees. */
  @Test
  void straightRise_isNotSaidToEnd() {
    long seed = 3;
    Random random = new Random(seed);
    double[] minutes = IntStream.range(0, 45).mapToDouble(i -> i / 3.0).toArray();
    int told = 0;
    for (int run = 0; run < 400; run++) {
      double[] readings =
          celsius(45, i -> 20 + 0.5 * minutes[(int) i] + 0.5 * random.nextGaussian());
      told += ThermalFit.of(minutes, readings) instanceof ThermalFit.Settling ? 1 : 0;
    }
    assertTrue(told <= 2, "told an end " + told + " times of 400, seed " + seed);
  }

  @Test
  void pureNoise_neverGivesASharpEnd() {
    long seed = 5;
    Random random = new Random(seed);
    int told = 0;
    for (int run = 0; run < 200; run++) {
      ThermalFit fit =
          ThermalFit.of(minutes(12), celsius(12, t -> 30 + 0.2 * random.nextGaussian()));
      told += fit instanceof ThermalFit.Settling ? 1 : 0;
    }
    assertTrue(told <= 20, "told an end from noise " + told + " times of 200, seed " + seed);
  }

  @Test
  void tooFewReadings_areExplained() {
    assertInstanceOf(ThermalFit.CannotTell.class, ThermalFit.of(new double[0], new double[0]));
    ThermalFit.CannotTell three =
        assertInstanceOf(
            ThermalFit.CannotTell.class, ThermalFit.of(minutes(3), new double[] {20, 21, 22}));
    assertEquals("Fewer than five temperatures are too few to tell.", three.reason());
  }

  @Test
  void badReadings_areRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> ThermalFit.of(new double[] {1, 1}, new double[] {20, 21}));
    assertThrows(
        IllegalArgumentException.class,
        () -> ThermalFit.of(new double[] {1, 2}, new double[] {20, Double.NaN}));
  }
}
