package loadwalk.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loadwalk.numeric.MonteCarlo;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

class PowerTest {
  private static final long SEED = 20080901;

  @Test
  void power_meetsTheVectors() throws IOException {
    // Values computed from JCGM 100:2008, 5.1.2 (reference/gum.json, power_vectors).
    JsonNode vectors = gum().at("/power_vectors/vectors");
    assertEquals(4, vectors.size());
    for (JsonNode vector : vectors) {
      Quantity volts = volts(vector.get("V").asDouble(), vector.get("u_V").asDouble());
      Quantity ohms = ohms(vector.get("R").asDouble(), vector.get("u_R").asDouble());
      Quantity power = Power.ofVolts(volts, ohms, "step");
      assertEquals(vector.get("P").asDouble(), power.value(), 1e-9);
      Quantity firstOrder = without(power, "step second order");
      assertEquals(vector.get("u_P").asDouble(), firstOrder.u(), 1e-12);
      assertEquals(vector.get("U_k2").asDouble(), firstOrder.expanded(), 1e-12);
      // The second order is there and does not matter at these values.
      assertTrue(power.u() > firstOrder.u());
      assertEquals(firstOrder.u(), power.u(), 1e-4 * firstOrder.u());
    }
  }

  @Test
  void power_atZeroVolts_keepsSecondOrderUncertainty() {
    Quantity power = Power.ofVolts(volts(0, 0.1), ohms(4, 0.04), "step");
    assertEquals(0, power.value());
    assertEquals(Math.sqrt(2) * 0.01 / 4, power.u(), 1e-15);
  }

  @Test
  void power_nearZero_meetsTheExactUncertaintyOfASquare() throws IOException {
    // JCGM 101:2008, 9.4, r = 0: Y = X1² + X2², u(X) = 0.005 and X2 = 0, y and u in 1e-6. With x1
    // the exact u(Y)² is 4·x1²·u² + 2·u⁴ + 2·u⁴; each square is a power into 1 ohm.
    for (JsonNode testCase : gum().at("/JCGM101/9.4/cases")) {
      if (testCase.get("r").asDouble() != 0) {
        continue;
      }
      double x1 = testCase.get("x1").asDouble();
      Quantity exactOhm = Quantity.exact(1, Unit.OHM);
      Quantity first = Power.ofVolts(volts(x1, 0.005), exactOhm, "first");
      Quantity second = Power.ofVolts(Quantity.of(0, Unit.VOLT, "x2", 0.005), exactOhm, "second");
      assertEquals(
          testCase.get("exact_u").asDouble() * 1e-6, first.plus(second).u(), 1e-15, "x1 = " + x1);
    }
  }

  @Test
  void power_agreesWithMonteCarlo() {
    // JCGM 101:2008, 7: rectangular inputs drawn, u compared with the propagated one.
    double[][] cases = {
      {20, 0.3, 4, 0.04}, {0.05, 0.03, 2, 0.02}, {44.7, 0.5, 0.5, 0.025}, {0, 0.2, 1, 0}
    };
    for (double[] c : cases) {
      MonteCarlo drawn =
          MonteCarlo.of(
              in -> in[0] * in[0] / in[1],
              List.of(new MonteCarlo.Normal(c[0], c[1]), new MonteCarlo.Rectangular(c[2], c[3])),
              200_000,
              SEED,
              0.95);
      double expected = drawn.u();
      Quantity watts = Power.ofVolts(volts(c[0], c[1]), ohms(c[2], c[3] / Math.sqrt(3)), "step");
      // 200 000 draws know a standard deviation to about 0.3 %; the series leaves out as much.
      assertEquals(expected, watts.u(), 0.015 * expected, "seed " + SEED + ", V = " + c[0]);
    }
  }

  @Test
  void budget_addsUpToTheUncertainty() throws IOException {
    // The form of JCGM 100:2008, table H.1: contribution = |sensitivity| · u(input).
    Quantity volts =
        new Quantity(20, Unit.VOLT, Map.of("gain", 0.0577350269, "digit", -0.0173205081));
    Quantity ohms = ohms(4, 0.02);
    Quantity power = Power.ofVolts(volts, ohms, "step");
    List<BudgetLine> budget = Budget.of(power, List.of(volts, ohms));
    double squares = 0;
    double before = Double.POSITIVE_INFINITY;
    for (BudgetLine line : budget) {
      assertEquals(Math.abs(line.sensitivity()) * line.inputU(), line.contribution(), 1e-15);
      assertTrue(line.contribution() <= before, "largest first");
      before = line.contribution();
      squares += line.contribution() * line.contribution();
    }
    assertEquals(power.u(), Math.sqrt(squares), 1e-12);
    assertEquals(
        List.of("gain", "load", "digit", "step second order"),
        budget.stream().map(BudgetLine::source).toList());
    assertEquals(10, budget.get(0).sensitivity(), 1e-12);
    assertEquals(-25, budget.get(1).sensitivity(), 1e-12);
  }

  @Test
  void rectangular_andResolution_meetTheFormulas() {
    // JCGM 100:2008, 4.3.7 and F.2.2.1: a/sqrt(3); a step's u is 0.29 of it.
    assertEquals(1 / Math.sqrt(3), rectangular(1), 1e-15);
    assertEquals(0.29, rectangular(0.5), 0.002);
  }

  private static Quantity volts(double value, double u) {
    return Quantity.of(value, Unit.VOLT, "volts", u);
  }

  private static Quantity ohms(double value, double u) {
    return Quantity.of(value, Unit.OHM, "load", u);
  }

  private static Quantity without(Quantity quantity, String source) {
    Map<String, Double> parts = new HashMap<>(quantity.contributions());
    parts.remove(source);
    return new Quantity(quantity.value(), quantity.unit(), parts);
  }

  private static JsonNode gum() throws IOException {
    try (InputStream in = PowerTest.class.getResourceAsStream("/reference/gum.json")) {
      return new ObjectMapper().readTree(in);
    }
  }

  private static double rectangular(double halfWidth) {
    return Quantity.exact(1, Unit.VOLT).withRectangular("limits", halfWidth).u();
  }
}
