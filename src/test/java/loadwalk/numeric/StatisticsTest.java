package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StatisticsTest {
  /** NIST StRD univariate sets; NumAcc3 and 4 lose digits in the data themselves. */
  @ParameterizedTest
  @CsvSource({
    "Lottery, 1e-13",
    "Mavro, 1e-12",
    "Michelso, 1e-12",
    "NumAcc1, 1e-13",
    "NumAcc2, 1e-12",
    "NumAcc3, 1e-8",
    "NumAcc4, 1e-7"
  })
  void certifiedSets_areMet(String set, double relative) {
    JsonNode certified = Reference.json("nist-strd/certified.json").get(set);
    double[] values = Reference.columns("nist-strd/" + set + ".csv")[0];
    assertEquals(certified.get("n").asInt(), values.length);
    assertClose(certified.get("mean").asDouble(), Statistics.mean(values), 1e-14);
    assertClose(certified.get("sd").asDouble(), Statistics.standardDeviation(values), relative);
  }

  @Test
  void quantiles_interpolateBetweenOrderStatistics() {
    assertEquals(2.5, Statistics.quantile(0.5, 4, 1, 3, 2));
    assertEquals(3, Statistics.quantile(0.5, 9, 3, 1));
    assertEquals(1, Statistics.quantile(0, 4, 1, 3, 2));
    assertEquals(4, Statistics.quantile(1, 4, 1, 3, 2));
    assertEquals(1.75, Statistics.quantile(0.25, 4, 1, 3, 2));
    assertEquals(7, Statistics.quantile(0.9, 7));
  }

  @Test
  void notANumberOrTooFew_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Statistics.mean());
    assertThrows(IllegalArgumentException.class, () -> Statistics.mean(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Statistics.standardDeviation(1));
    assertThrows(IllegalArgumentException.class, () -> Statistics.quantile(1.1, 1, 2));
    assertThrows(IllegalArgumentException.class, () -> Statistics.quantile(Double.NaN, 1, 2));
  }

  static void assertClose(double expected, double actual, double relative) {
    assertEquals(expected, actual, Math.abs(expected) * relative);
  }
}
