package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
  void switching_isWhatTheClassSays_andOpenWhereNoneIsWritten() {
    assertEquals(1, ClassPrior.of(Optional.of("D")).switching());
    assertEquals(0, ClassPrior.of(Optional.of("AB")).switching());
    double open = ClassPrior.of(Optional.empty()).switching();
    assertTrue(open > 0 && open < 0.5, String.valueOf(open));
  }

  private static double mean(String amplifierClass) {
    return ClassPrior.of(Optional.of(amplifierClass)).mean();
  }
}
