package loadwalk.numeric;

import static loadwalk.numeric.StatisticsTest.assertClose;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class PropagationTest {
  private static final JsonNode GUM = Reference.json("gum.json");

  /**
   * JCGM 100:2008, H.1: end gauge, a product model whose sensitivities are given in closed form.
   */
  @Test
  void endGauge_meetsGumH1() {
    JsonNode in = GUM.at("/H1/inputs");
    double ls = in.at("/ls_nm/x").asDouble();
    double uDiff =
        Math.sqrt(
            List.of("d_mean_nm", "d1_nm", "d2_nm").stream()
                .mapToDouble(name -> Math.pow(in.get(name).get("u").asDouble(), 2))
                .sum());
    double uAlpha = in.at("/d_alpha_per_C/half_width").asDouble() / Math.sqrt(3);
    double uTheta = in.at("/d_theta_C/half_width").asDouble() / Math.sqrt(3);
    double theta = in.at("/theta_mean_C/x").asDouble();
    double alpha = in.at("/alpha_s_per_C/x").asDouble();
    double[] gradient = {1, 1, -ls * theta, -ls * alpha};
    double[] u = {in.at("/ls_nm/u").asDouble(), uDiff, uAlpha, uTheta};
    JsonNode full = GUM.at("/H1/full_precision");
    assertClose(full.get("u_d_nm").asDouble(), uDiff, 1e-9);
    assertClose(full.get("uc_nm").asDouble(), Propagation.u(gradient, diagonal(u)), 1e-9);

    double nuDiff =
        Gum.effectiveDegreesOfFreedom(new double[] {5.8, 3.9, 6.7}, new double[] {24, 5, 8});
    assertClose(full.get("nu_d").asDouble(), nuDiff, 1e-9);
    double[] parts = new double[4];
    for (int i = 0; i < 4; i++) {
      parts[i] = Math.abs(gradient[i]) * u[i];
    }
    double nu = Gum.effectiveDegreesOfFreedom(parts, new double[] {18, nuDiff, 50, 2});
    assertEquals(GUM.at("/H1/published/nu_eff").asDouble(), nu, 0.06);
    double t99 = Gum.coverageFactor(0.99, Math.floor(nu));
    assertClose(full.get("U99_nm").asDouble(), t99 * Propagation.u(gradient, diagonal(u)), 1e-7);
  }

  /** JCGM 100:2008, H.2: resistance and reactance from quantities observed together. */
  @Test
  void resistanceAndReactance_meetGumH2() {
    JsonNode data = GUM.at("/H2/data");
    double[][] observed = {
      Reference.numbers(data.get("V_V")),
      Reference.numbers(data.get("I_A")),
      Reference.numbers(data.get("phi_rad"))
    };
    double[][] covariance = Gum.covarianceOfMeans(observed);
    double[] x = new double[3];
    double[] u = new double[3];
    for (int i = 0; i < 3; i++) {
      x[i] = Statistics.mean(observed[i]);
      u[i] = Statistics.standardDeviationOfMean(observed[i]);
    }
    JsonNode full = GUM.at("/H2/full_precision");
    assertClose(full.get("u_V").asDouble(), u[0], 1e-9);
    assertClose(full.get("r_Vphi").asDouble(), covariance[0][2] / (u[0] * u[2]), 1e-9);

    double v = x[0];
    double i = x[1];
    double cos = Math.cos(x[2]);
    double sin = Math.sin(x[2]);
    double[] r = {cos / i, -v * cos / (i * i), -v * sin / i};
    double[] react = {sin / i, -v * sin / (i * i), v * cos / i};
    double[] z = {1 / i, -v / (i * i), 0};
    double uR = Propagation.u(r, covariance);
    double uX = Propagation.u(react, covariance);
    double uZ = Propagation.u(z, covariance);
    assertClose(full.get("R").asDouble(), v / i * cos, 1e-12);
    assertClose(full.get("u_R").asDouble(), uR, 1e-9);
    assertClose(full.get("u_X").asDouble(), uX, 1e-9);
    assertClose(full.get("u_Z").asDouble(), uZ, 1e-9);
    assertClose(
        full.get("r_RX").asDouble(),
        Propagation.covariance(r, react, covariance) / (uR * uX),
        1e-9);
    assertClose(
        full.get("r_XZ").asDouble(),
        Propagation.covariance(react, z, covariance) / (uX * uZ),
        1e-9);
    assertClose(GUM.at("/H2/trap/u_R_wrong").asDouble(), Propagation.u(r, diagonal(u)), 1e-9);
  }

  @Test
  void numericGradient_agreesWithTheClosedForm() {
    ToDoubleFunction<double[]> power = x -> x[0] * x[0] / x[1];
    for (JsonNode vector : GUM.at("/power_vectors/vectors")) {
      double[] x = {vector.get("V").asDouble(), vector.get("R").asDouble()};
      double[] u = {vector.get("u_V").asDouble(), vector.get("u_R").asDouble()};
      double[] gradient = Gum.gradient(power, x, u);
      assertClose(vector.get("u_P").asDouble(), Propagation.u(gradient, diagonal(u)), 2e-4);
    }
  }

  @Test
  void fullCorrelation_cancelsOrAdds() {
    double[][] same = {{4, 4}, {4, 4}};
    assertEquals(0, Propagation.u(new double[] {1, -1}, same));
    assertEquals(4, Propagation.u(new double[] {1, 1}, same));
  }

  @Test
  void notANumber_isRefused() {
    double[][] covariance = {{1, Double.NaN}, {0, 1}};
    assertThrows(
        IllegalArgumentException.class, () -> Propagation.u(new double[] {1, 0}, covariance));
    assertThrows(IllegalArgumentException.class, () -> Propagation.u(new double[] {1}, covariance));
  }

  private static double[][] diagonal(double[] u) {
    double[][] covariance = new double[u.length][u.length];
    for (int i = 0; i < u.length; i++) {
      covariance[i][i] = u[i] * u[i];
    }
    return covariance;
  }
}
