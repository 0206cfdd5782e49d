package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.junit.jupiter.api.Test;

class QuantilesTest {
  /** JCGM 100:2008, table G.2, to four decimals. */
  @Test
  void coverageFactors_meetTheTable() {
    JsonNode table = Reference.json("gum.json").get("t_table");
    double[] percent = Reference.numbers(table.get("columns_percent"));
    int checked = 0;
    for (Map.Entry<String, JsonNode> row : table.get("rows").properties()) {
      double dof =
          row.getKey().equals("inf")
              ? Double.POSITIVE_INFINITY
              : Double.parseDouble(row.getKey().replace("infinity", "Infinity"));
      for (int c = 0; c < percent.length; c++) {
        double expected = row.getValue().get(c).asDouble();
        double actual = Gum.coverageFactor(percent[c] / 100, dof);
        assertEquals(expected, actual, 0.00006, percent[c] + " % at " + dof);
        checked++;
      }
    }
    assertTrue(checked > 100, "rows checked: " + checked);
  }

  /** JCGM 100:2008, G.4.1 example. */
  @Test
  void welchSatterthwaite_meetsTheExample() {
    JsonNode example = Reference.json("gum.json").at("/welch_satterthwaite/example");
    double[] parts = Reference.numbers(example.get("rel_u_percent"));
    double[] dof = Reference.numbers(example.get("n"));
    for (int i = 0; i < dof.length; i++) {
      dof[i] -= 1;
    }
    double effective = Gum.effectiveDegreesOfFreedom(parts, dof);
    assertEquals(example.get("nu_eff").asDouble(), effective, 1e-9);
    assertEquals(example.get("t95_nu19").asDouble(), Gum.coverageFactor(0.95, 19), 1e-8);
  }

  @Test
  void knownParts_giveInfiniteDegreesOfFreedom() {
    double[] known = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    assertEquals(
        Double.POSITIVE_INFINITY, Gum.effectiveDegreesOfFreedom(new double[] {1, 2}, known));
  }

  @Test
  void quantile_invertsTheDistribution() {
    for (double p = 0.001; p < 1; p += 0.037) {
      assertEquals(p, Gum.normalCdf(Quantiles.normalQuantile(p)), 1e-12);
      for (double dof : new double[] {1, 2.5, 7, 30, 1e10}) {
        assertEquals(p, Gum.studentCdf(Quantiles.studentQuantile(p, dof), dof), 1e-9);
      }
    }
  }

  /** All three formulas and where they meet: a wrong digit anywhere would show. */
  @Test
  void normalQuantile_invertsTheDistribution_farOutToo() {
    for (double log = -300; log < -0.001; log += 0.0917) {
      double p = Math.pow(10, log);
      assertEquals(1, Gum.normalCdf(Quantiles.normalQuantile(p)) / p, 1e-11, "p = " + p);
    }
    for (double p = 0.0005; p < 0.5; p += 0.0005) {
      double z = Quantiles.normalQuantile(p);
      assertEquals(p, Gum.normalCdf(z), 1e-15);
      assertEquals(-z, Quantiles.normalQuantile(1 - p), 1e-12);
    }
  }

  @Test
  void badInput_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> Quantiles.normalQuantile(1));
    assertThrows(IllegalArgumentException.class, () -> Quantiles.normalQuantile(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Quantiles.studentQuantile(0.5, 0));
  }
}
