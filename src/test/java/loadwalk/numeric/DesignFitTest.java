package loadwalk.numeric;

import static loadwalk.numeric.StatisticsTest.assertClose;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class DesignFitTest {
  /** NIST StRD Pontius, a quadratic whose columns differ by thirteen powers of ten. */
  @Test
  void polynomial_throughPontius_meetsTheCertifiedValues() {
    JsonNode certified = Reference.json("nist-strd/certified.json").get("Pontius");
    double[][] xy = Reference.columns("nist-strd/Pontius.csv");
    DesignFit fit = DesignFit.polynomial(xy[0], xy[1], 2);
    for (int j = 0; j <= 2; j++) {
      assertClose(certified.at("/params/B" + j).asDouble(), fit.coefficient(j), 1e-11);
      assertClose(certified.at("/param_sd/B" + j).asDouble(), fit.u(j), 1e-11);
    }
    assertClose(certified.get("residual_sd").asDouble(), fit.residualSd(), 1e-11);
  }

  /** NIST StRD Norris, the same answer by another way than {@link LinearFit}. */
  @Test
  void polynomial_ofDegreeOne_agreesWithTheLine() {
    double[][] xy = Reference.columns("nist-strd/Norris.csv");
    DesignFit fit = DesignFit.polynomial(xy[0], xy[1], 1);
    LinearFit line = LinearFit.line(xy[0], xy[1]);
    assertClose(line.slope(), fit.coefficient(1), 1e-13);
    assertClose(line.covariance(), fit.covariance(0, 1), 1e-11);
  }

  @Test
  void equalColumns_areRefused() {
    double[][] design = {{1, 2}, {2, 4}, {3, 6}};
    assertThrows(
        IllegalArgumentException.class, () -> DesignFit.of(design, new double[] {1, 2, 4}));
    assertThrows(
        IllegalArgumentException.class,
        () -> DesignFit.of(new double[][] {{1, 0}, {2, 0}, {3, 0}}, new double[] {1, 2, 4}));
  }
}
