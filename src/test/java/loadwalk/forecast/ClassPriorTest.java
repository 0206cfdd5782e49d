package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Common practice, no source: a converter loses little in class D, much in class A. */
class ClassPriorTest {
  @Test
  void efficiency_isExpectedByClass_howeverItIsWritten() {
    double d = mean("D");
    double ab = mean("AB");
    assertTrue(d > ab && ab > mean("A"));
    assertEquals(d, mean(" d "));
    assertEquals(d, mean("T"));
    assertEquals(ab, mean("a/b"));
    assertEquals(ab, mean("B"));
    assertEquals(mean("G"), mean("H"));
    assertTrue(mean("G") > ab);
  }

  @Test
  void classNobodyKnows_isLikeNone() {
    ClassPrior none = ClassPrior.of(Optional.empty());
    assertEquals(none.mean(), mean("Z"));
    assertTrue(none.mean() > mean("AB") && none.mean() < mean("D"));
    assertTrue(none.spread() > ClassPrior.of(Optional.of("AB")).spread());
  }

  @Test
  void betaWeights_areProbabilities() {
    for (String name : List.of("D", "A", "AB", "G", "Z")) {
      double sum = 0;
      for (double weight : ClassPrior.of(Optional.of(name)).betaWeights()) {
        sum += weight;
      }
      assertEquals(1, sum, 1e-12, name);
    }
  }

  private static double mean(String amplifierClass) {
    return ClassPrior.of(Optional.of(amplifierClass)).mean();
  }
}
