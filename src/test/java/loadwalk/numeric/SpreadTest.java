package loadwalk.numeric;

import static loadwalk.numeric.StatisticsTest.assertClose;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import loadwalk.numeric.LogInterpolation.Found;
import loadwalk.numeric.LogInterpolation.Point;
import loadwalk.numeric.MonteCarlo.StudentT;
import org.junit.jupiter.api.Test;

/** Uncertainties against a second way to the same number. */
class SpreadTest {
  private static double[] readings(int count, DoubleUnaryOperator curve) {
    return IntStream.range(0, count).mapToDouble(curve::applyAsDouble).toArray();
  }

  private static double[] minutes(int count) {
    return readings(count, i -> i);
  }

  /** The law of propagation by differences, and the documented width of the bend. */
  @Test
  void limitVolts_haveTheUncertaintyOfTheirFourNumbers() {
    double[] x = {20, 22, 0.2, 3};
    double[] u = {0.01, 0.03, 0.004, 0.15};
    ToDoubleFunction<double[]> volts =
        v -> v[0] + (v[1] - v[0]) * Math.log(1 / v[2]) / Math.log(v[3] / v[2]);
    double[] small = Arrays.stream(u).map(one -> one / 1000).toArray();
    double[] gradient = Gum.gradient(volts, x, small);
    double variance = 0;
    for (int i = 0; i < 4; i++) {
      variance += gradient[i] * gradient[i] * u[i] * u[i];
    }
    double part = (volts.applyAsDouble(x) - 20) / 2;
    double bend = 2 * part * (1 - part) / Math.sqrt(3);
    List<Point> points =
        List.of(new Point(x[0], u[0], x[2], u[2]), new Point(x[1], u[1], x[3], u[3]));
    Found found = assertInstanceOf(Found.class, LogInterpolation.at(1, points));
    assertClose(volts.applyAsDouble(x), found.volts(), 1e-12);
    assertClose(Math.sqrt(variance + bend * bend), found.u(), 1e-7);
    List<Point> steep = List.of(new Point(20, 0, 0.999, 0.1), new Point(20.001, 0, 1.002, 0.2));
    Found near = assertInstanceOf(Found.class, LogInterpolation.at(1, steep));
    assertTrue(near.u() > 0.02, "THD that may be anything leaves the volts open: " + near);
  }

  /** Student's t by its table: from few observations down to less than two. */
  @Test
  void studentDraws_lieWhereTheDistributionSays() {
    for (double degrees : new double[] {1.2, 1.9, 3, 12}) {
      for (double level : new double[] {0.5, 0.9}) {
        MonteCarlo drawn =
            MonteCarlo.of(x -> x[0], List.of(new StudentT(10, 2, degrees)), 200_000, 9, level);
        double reach = 2 * Quantiles.studentQuantile((1 + level) / 2, degrees);
        String which = level + " at " + degrees;
        assertEquals(10 - reach, drawn.symmetric().low(), 0.02 * reach, which);
        assertEquals(10 + reach, drawn.symmetric().high(), 0.02 * reach, which);
      }
    }
  }

  /** The slope at the end, from the covariance of the curve's three parameters. */
  @Test
  void slopeOfAWarmUp_hasTheUncertaintyOfItsCurve() throws Exception {
    Random random = new Random(4);
    double[] celsius = readings(16, t -> 60 - 38 * Math.exp(-t / 6) + 0.3 * random.nextGaussian());
    ThermalFit.Settling settling =
        assertInstanceOf(ThermalFit.Settling.class, ThermalFit.of(minutes(16), celsius));
    double[] p = {settling.endCelsius(), settling.startCelsius(), settling.tauMinutes()};
    NonlinearFit fit =
        NonlinearFit.of(
            (t, q) -> q[0] - (q[0] - q[1]) * Math.exp(-t / q[2]), minutes(16), celsius, p);
    ToDoubleFunction<double[]> slope = q -> (q[0] - q[1]) / q[2] * Math.exp(-15 / q[2]);
    double[] gradient = Gum.gradient(slope, p, new double[] {1e-4, 1e-4, 1e-4});
    assertClose(slope.applyAsDouble(p), settling.now().celsiusPerMinute(), 1e-9);
    assertClose(Propagation.u(gradient, fit.covariance()), settling.now().u(), 1e-4);
    assertClose(fit.u(2), settling.tauU(), 1e-4);
  }

  @Test
  void fiveReadingsOfACurve_areEnough() {
    ThermalFit five = ThermalFit.of(minutes(5), readings(5, t -> 50 - 30 * Math.exp(-t / 1.5)));
    assertEquals(50, assertInstanceOf(ThermalFit.Settling.class, five).endCelsius(), 1e-6);
  }

  /** From a clear bend to none, in noise: an end far out of sight is never told. */
  @Test
  void endOutOfSight_isNeverTold_andEveryReasonIsGiven() {
    long seed = 8;
    Random random = new Random(seed);
    TreeMap<String, Integer> told = new TreeMap<>();
    for (int run = 0; run < 600; run++) {
      double tau = 3 + run % 60;
      double noise = run % 3 == 0 ? 0.02 : 0.3;
      double rise = run % 7 == 0 ? 0.2 : 15;
      double[] celsius =
          readings(12, t -> 20 + rise * (1 - Math.exp(-t / tau)) + noise * random.nextGaussian());
      ThermalFit fit = ThermalFit.of(minutes(12), celsius);
      if (fit instanceof ThermalFit.Settling settling) {
        assertTrue(settling.tauMinutes() > 0 && settling.tauMinutes() <= 33, fit.toString());
        assertTrue(settling.tauU() <= settling.tauMinutes() / 2, fit.toString());
        told.merge("settling", 1, Integer::sum);
      } else {
        ThermalFit.CannotTell open = assertInstanceOf(ThermalFit.CannotTell.class, fit);
        told.merge(open.reason(), 1, Integer::sum);
      }
    }
    List<String> expected =
        List.of(
            "The temperature curve levels off too little to tell its end.",
            "The temperature curve has not started to level off, so its end cannot be told.",
            "The temperature moves no more than its scatter.",
            "settling");
    assertTrue(told.keySet().containsAll(expected), "seed " + seed + ": " + told);
  }
}
