package loadwalk.numeric;

import static loadwalk.numeric.StatisticsTest.assertClose;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.List;
import loadwalk.numeric.MonteCarlo.Input;
import loadwalk.numeric.MonteCarlo.Model;
import loadwalk.numeric.MonteCarlo.Normal;
import loadwalk.numeric.MonteCarlo.Rectangular;
import loadwalk.numeric.MonteCarlo.StudentT;
import org.junit.jupiter.api.Test;

/** JCGM 101:2008, clause 9; interval ends of a million trials wobble, so they are held loosely. */
class MonteCarloTest {
  private static final int TRIALS = 1_000_000;
  private static final long SEED = 101;
  private static final JsonNode PUBLISHED = Reference.json("gum.json").get("JCGM101");
  private static final Model SUM = x -> x[0] + x[1] + x[2] + x[3];

  private static MonteCarlo run(Model model, List<Input> inputs) {
    return MonteCarlo.of(model, inputs, TRIALS, SEED, 0.95);
  }

  @Test
  void fourNormals_meet922() {
    MonteCarlo y = run(SUM, Collections.nCopies(4, new Normal(0, 1)));
    assertEquals(0, y.mean(), 0.01);
    assertEquals(PUBLISHED.at("/9.2.2/analytic/u").asDouble(), y.u(), 0.006);
    double half = PUBLISHED.at("/9.2.2/analytic/half95").asDouble();
    assertEquals(-half, y.symmetric().low(), 0.02);
    assertEquals(half, y.symmetric().high(), 0.02);
  }

  @Test
  void fourRectangulars_meet923() {
    MonteCarlo y = run(SUM, Collections.nCopies(4, new Rectangular(0, Math.sqrt(3))));
    assertEquals(0, y.mean(), 0.01);
    assertEquals(2, y.u(), 0.006);
    double half = PUBLISHED.at("/9.2.3/analytic/half95").asDouble();
    assertEquals(half, y.symmetric().high(), 0.02);
    assertEquals(2 * half, y.shortest().width(), 0.04);
  }

  @Test
  void oneWideRectangular_meets924() {
    Input narrow = new Rectangular(0, Math.sqrt(3));
    Input wide = new Rectangular(0, 10 * Math.sqrt(3));
    MonteCarlo y = run(SUM, List.of(narrow, narrow, narrow, wide));
    assertClose(PUBLISHED.at("/9.2.4/analytic/u").asDouble(), y.u(), 0.002);
    double end = PUBLISHED.at("/9.2.4/published/mcm_interval/1").asDouble();
    assertEquals(-end, y.symmetric().low(), 0.06);
    assertEquals(end, y.symmetric().high(), 0.06);
  }

  @Test
  void massCalibration_meets93() {
    MonteCarlo y =
        run(
            x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000,
            List.of(
                new Normal(100_000, 0.050),
                new Normal(1.234, 0.020),
                new Rectangular(1.20, 0.10),
                new Rectangular(8000, 1000),
                new Rectangular(8000, 50)));
    assertEquals(PUBLISHED.at("/9.3/analytic/y").asDouble(), y.mean(), 0.0003);
    assertClose(PUBLISHED.at("/9.3/analytic/u").asDouble(), y.u(), 0.003);
    assertEquals(
        PUBLISHED.at("/9.3/published/MCM/interval/0").asDouble(), y.shortest().low(), 0.003);
    assertEquals(
        PUBLISHED.at("/9.3/published/MCM/interval/1").asDouble(), y.shortest().high(), 0.003);
  }

  @Test
  void comparisonLoss_meets94() {
    for (JsonNode c : PUBLISHED.at("/9.4/cases")) {
      double r = c.get("r").asDouble();
      double first = c.get("x1").asDouble();
      double rest = Math.sqrt(1 - r * r);
      MonteCarlo y =
          run(
              z -> {
                double x1 = first + 0.005 * z[0];
                double x2 = 0.005 * (r * z[0] + rest * z[1]);
                return 1e6 * (x1 * x1 + x2 * x2);
              },
              List.of(new Normal(0, 1), new Normal(0, 1)));
      String which = "r " + r + ", x1 " + first;
      double width = c.at("/mc_check/3").asDouble() - c.at("/mc_check/2").asDouble();
      assertEquals(c.get("exact_mean").asDouble(), y.mean(), 0.005 * y.u(), which);
      assertEquals(c.get("exact_u").asDouble(), y.u(), 0.01 * y.u(), which);
      assertEquals(c.at("/mc_check/2").asDouble(), y.shortest().low(), 0.012 * width, which);
      assertEquals(c.at("/mc_check/3").asDouble(), y.shortest().high(), 0.012 * width, which);
    }
  }

  /** The arcsine and the curvilinear trapezoids of 9.5 are built from rectangulars. */
  @Test
  void gaugeBlock_meets95() {
    MonteCarlo y =
        MonteCarlo.of(
            x -> {
              double theta = x[4] + 0.5 * Math.sin(Math.PI * x[5]);
              double alphaDifference = (1e-6 + 0.1e-6 * x[7]) * x[8];
              double thetaDifference = (0.050 + 0.025 * x[9]) * x[10];
              double ls = 50_000_623 + x[0];
              double difference = x[1] + x[2] + x[3];
              return ls
                  + difference
                  - ls * (alphaDifference * theta + x[6] * thetaDifference)
                  - 50_000_000;
            },
            List.of(
                new StudentT(0, 25, 18),
                new StudentT(215, 6, 24),
                new StudentT(0, 4, 5),
                new StudentT(0, 7, 8),
                new Normal(-0.1, 0.2),
                new Rectangular(0, 0.5),
                new Rectangular(11.5e-6, 2e-6),
                new Rectangular(0, 1),
                new Rectangular(0, 1),
                new Rectangular(0, 1),
                new Rectangular(0, 1)),
            TRIALS,
            SEED,
            0.99);
    assertEquals(PUBLISHED.at("/9.5/published/MCM/y").asDouble(), y.mean(), 0.5);
    assertEquals(PUBLISHED.at("/9.5/published/MCM/u").asDouble(), y.u(), 0.5);
    assertEquals(PUBLISHED.at("/9.5/published/MCM/interval99/0").asDouble(), y.shortest().low(), 6);
    assertEquals(
        PUBLISHED.at("/9.5/published/MCM/interval99/1").asDouble(), y.shortest().high(), 6);
  }

  /** The power vectors: P = V²/R, whose mean lies above V²/R by the second-order term. */
  @Test
  void power_hasItsSecondOrderShift() {
    MonteCarlo y = run(x -> x[0] * x[0] / x[1], List.of(new Normal(20, 0.5), new Normal(4, 0.1)));
    double shift = 0.25 / 4 + 400 * 0.01 / 64;
    assertEquals(100 + shift, y.mean(), 0.03);
  }

  @Test
  void sameSeed_givesTheSameResult() {
    List<Input> inputs = List.of(new StudentT(1, 2, 0.9), new Rectangular(0, 1));
    Model model = x -> Math.tanh(x[0]) + x[1];
    assertEquals(
        MonteCarlo.of(model, inputs, 500, 4, 0.9), MonteCarlo.of(model, inputs, 500, 4, 0.9));
  }

  @Test
  void badModelOrInput_isRefused() {
    List<Input> inputs = List.of(new Normal(0, 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> MonteCarlo.of(x -> Math.log(x[0]), inputs, 1000, 1, 0.95));
    assertThrows(IllegalArgumentException.class, () -> MonteCarlo.of(x -> 0, inputs, 9, 1, 0.95));
    assertThrows(IllegalArgumentException.class, () -> new Normal(0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Rectangular(0, -1));
  }
}
