package loadwalk.numeric;

import static loadwalk.numeric.StatisticsTest.assertClose;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class LinearFitTest {
  /** NIST StRD Norris. */
  @Test
  void line_throughNorris_meetsTheCertifiedValues() {
    JsonNode certified = Reference.json("nist-strd/certified.json").get("Norris");
    double[][] xy = Reference.columns("nist-strd/Norris.csv");
    LinearFit fit = LinearFit.line(xy[0], xy[1]);
    assertClose(certified.at("/params/B0").asDouble(), fit.intercept(), 1e-11);
    assertClose(certified.at("/params/B1").asDouble(), fit.slope(), 1e-13);
    assertClose(certified.at("/param_sd/B0").asDouble(), fit.interceptU(), 1e-12);
    assertClose(certified.at("/param_sd/B1").asDouble(), fit.slopeU(), 1e-12);
    assertClose(certified.get("residual_sd").asDouble(), fit.residualSd(), 1e-12);
    assertEquals(certified.get("dof").asInt(), fit.degreesOfFreedom());
  }

  /** JCGM 100:2008, H.3: calibration of a thermometer. */
  @Test
  void line_throughTheThermometer_meetsGumH3() {
    JsonNode h3 = Reference.json("gum.json").get("H3");
    double[] x = Reference.numbers(h3.get("t_C"));
    for (int i = 0; i < x.length; i++) {
      x[i] -= h3.get("t0_C").asDouble();
    }
    LinearFit fit = LinearFit.line(x, Reference.numbers(h3.get("b_C")));
    JsonNode full = h3.get("full_precision");
    assertClose(full.get("y1").asDouble(), fit.intercept(), 1e-9);
    assertClose(full.get("u_y1").asDouble(), fit.interceptU(), 1e-9);
    assertClose(full.get("y2").asDouble(), fit.slope(), 1e-9);
    assertClose(full.get("u_y2").asDouble(), fit.slopeU(), 1e-9);
    assertClose(
        full.get("r").asDouble(), fit.covariance() / (fit.interceptU() * fit.slopeU()), 1e-9);
    assertClose(full.get("s").asDouble(), fit.residualSd(), 1e-9);
    assertClose(full.get("b30").asDouble(), fit.at(10), 1e-9);
    assertClose(full.get("u_b30").asDouble(), fit.standardErrorAt(10), 1e-9);
    assertEquals(h3.at("/published/u_b30").asDouble(), fit.standardErrorAt(10), 0.00005);
  }

  @Test
  void weights_countAsRepeatedPoints() {
    double[] x = {1, 2, 4};
    double[] y = {2.1, 3.9, 8.2};
    LinearFit weighted = LinearFit.line(x, y, new double[] {1, 3, 1});
    LinearFit repeated =
        LinearFit.line(new double[] {1, 2, 2, 2, 4}, new double[] {2.1, 3.9, 3.9, 3.9, 8.2});
    assertClose(repeated.slope(), weighted.slope(), 1e-14);
    assertClose(repeated.intercept(), weighted.intercept(), 1e-13);
    assertClose(repeated.standardErrorAt(3, 0.2), weighted.standardErrorAt(3, 0.2), 1e-14);
  }

  @Test
  void twoPoints_giveALineButNoScatter() {
    LinearFit fit = LinearFit.line(new double[] {1, 3}, new double[] {5, 9});
    assertEquals(2, fit.slope(), 1e-15);
    assertEquals(3, fit.intercept(), 1e-15);
    assertFalse(fit.hasScatter());
    assertThrows(IllegalStateException.class, fit::slopeU);
    assertEquals(Math.sqrt(0.5) * 0.1, fit.standardErrorAt(2, 0.1), 1e-15);
  }

  @Test
  void badInput_isRefused() {
    double[] x = {0.1, 0.1, 0.1};
    double[] y = {1, 2, 3};
    assertThrows(
        IllegalArgumentException.class, () -> LinearFit.line(x, y, new double[] {1, 0.3, 7}));
    assertThrows(
        IllegalArgumentException.class, () -> LinearFit.line(new double[] {1, 2}, new double[3]));
    assertThrows(
        IllegalArgumentException.class,
        () -> LinearFit.line(new double[] {1, Double.NaN}, new double[2]));
    assertThrows(
        IllegalArgumentException.class,
        () -> LinearFit.line(new double[] {1, 2}, new double[2], new double[] {1, 0}));
  }
}
