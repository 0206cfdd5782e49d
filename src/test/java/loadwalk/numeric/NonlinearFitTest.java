package loadwalk.numeric;

import static loadwalk.numeric.StatisticsTest.assertClose;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NonlinearFitTest {
  private static final NonlinearFit.Curve RISE = (x, b) -> b[0] * (1 - Math.exp(-b[1] * x));

  private static final Map<String, NonlinearFit.Curve> CURVES =
      Map.of(
          "Misra1a",
          RISE,
          "BoxBOD",
          RISE,
          "Rat42",
          (x, b) -> b[0] / (1 + Math.exp(b[1] - b[2] * x)),
          "MGH09",
          (x, b) -> b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3]));

  /** NIST StRD nonlinear sets, from both starts. */
  @ParameterizedTest
  @CsvSource({
    "Misra1a, start1", "Misra1a, start2", "BoxBOD, start1", "BoxBOD, start2",
    "Rat42, start1", "Rat42, start2", "MGH09, start1", "MGH09, start2"
  })
  void certifiedSets_areMet(String set, String start) throws Exception {
    JsonNode certified = Reference.json("nist-strd/certified.json").get(set);
    double[][] xy = Reference.columns("nist-strd/" + set + ".csv");
    NonlinearFit fit =
        NonlinearFit.of(CURVES.get(set), xy[0], xy[1], Reference.numbers(certified.get(start)));
    for (int j = 0; j < certified.get("params").size(); j++) {
      String name = "b" + (j + 1);
      assertClose(certified.get("params").get(name).asDouble(), fit.parameter(j), 1e-6);
      assertClose(certified.get("param_sd").get(name).asDouble(), fit.u(j), 1e-4);
    }
    assertClose(certified.get("residual_sd").asDouble(), fit.residualSd(), 1e-6);
  }

  @Test
  void parametersThatCannotBeToldApart_areRefused() {
    NonlinearFit.Curve product = (x, b) -> b[0] * b[1] * x;
    double[] x = {1, 2, 3, 4};
    double[] y = {2, 4.1, 5.9, 8};
    assertThrows(
        NonlinearFit.NoFitException.class,
        () -> NonlinearFit.of(product, x, y, new double[] {1, 1}));
  }

  @Test
  void noSparePoint_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> NonlinearFit.of(RISE, new double[2], new double[2], new double[] {1, 1}));
  }

  /** As many points as parameters fit anything and tell nothing. */
  @Test
  void rowsOfOtherLengths_orWithoutAPointToSpare_areRefused() {
    double[] start = {1, 1};
    assertThrows(
        IllegalArgumentException.class,
        () -> NonlinearFit.of(RISE, new double[] {1, 2, 3, 4}, new double[] {1, 2, 3}, start));
    assertThrows(
        IllegalArgumentException.class,
        () -> NonlinearFit.of(RISE, new double[] {1, 2}, new double[] {1, 2}, start));
  }
}
