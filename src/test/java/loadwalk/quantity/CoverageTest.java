package loadwalk.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The coverage factor against sums that are drawn and sorted: it covers 95.45 %. */
class CoverageTest {
  private static final long SEED = 20260802;
  private static final int DRAWS = 100_000;

  /** JCGM 100:2008, G.1.4: a rectangular distribution has 95 % within 1.65 u. */
  @Test
  void rectangularPartAlone_needsItsOwnFactor() {
    Quantity watts = Quantity.exact(100, Unit.WATT).withRectangular("tolerance", 5);
    assertEquals(5 / Math.sqrt(3), watts.u(), 1e-12);
    assertEquals(0.9545 * Math.sqrt(3), watts.coverageFactor(), 0.01);
  }

  /** Half-widths of limits, then what is on one side up to c1 and c2, then a normal part's u. */
  @ParameterizedTest
  @CsvSource({
    "0,    0,   0, 0,   1",
    "1,    0,   0, 0,   0",
    "1,    1,   0, 0,   0",
    "1,    0.3, 0, 0,   0",
    "1,    0.6, 0, 0,   0.1",
    "1,    0,   0, 0,   0.3",
    "1,    0,   0, 0,   0.6",
    "1,    0,   0, 0,   1.5",
    "0,    0,   1, 0,   0",
    "0,    0,   1, 0.4, 0",
    "0,    0,   1, 1,   0",
    "0,    0,   1, 1,   0.3",
    "0.5,  0,   1, 0.4, 0.2",
    "1,    0.2, 0.5, 0.1, 0.4",
    "3,    1,   0.5, 0.1, 0.4",
  })
  void sum_isCoveredTo95Percent(double a1, double a2, double c1, double c2, double normal) {
    Quantity stated =
        Quantity.exact(0, Unit.OHM)
            .withRectangular("a1", a1)
            .withRectangular("a2", a2)
            .withRectangular("c1", c1 / 2)
            .withRectangular("c2", c2 / 2)
            .withShaped("not corrected", (c1 + c2) / 2, Shape.EITHER_END)
            .withPart("normal", normal);
    Random random = new Random(SEED);
    double[] off = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      double limits = a1 * (2 * random.nextDouble() - 1) + a2 * (2 * random.nextDouble() - 1);
      double oneSided = c1 * random.nextDouble() + c2 * random.nextDouble();
      off[i] = Math.abs(limits + oneSided + normal * random.nextGaussian());
    }
    Arrays.sort(off);
    int within = Arrays.binarySearch(off, stated.expanded());
    double covered = (double) (within < 0 ? -within - 1 : within) / DRAWS;
    // 95.45 % ± 4·√(p(1 − p)/n) = 0.26 %, and ± 0.6 % as one number tells the shape.
    assertTrue(covered > 0.947 && covered < 0.964, "seed " + SEED + ": " + covered);
  }

  /** Two parts from one pool are known no better than one; from two pools they are. */
  @Test
  void partsOfOnePool_haveItsDegreesOnce() {
    Quantity one = Quantity.exact(0, Unit.VOLT).withShaped("a", 1, Shape.estimated(10, "pairs"));
    Quantity other = Quantity.exact(0, Unit.VOLT).withShaped("b", 1, Shape.estimated(10, "pairs"));
    assertEquals(10, one.minus(other).effectiveDegreesOfFreedom(), 1e-9);
    assertEquals(10, one.plus(other).scaledBy(0.5).effectiveDegreesOfFreedom(), 1e-9);
    Quantity apart = Quantity.exact(0, Unit.VOLT).withScatter("b", 1, 10);
    assertEquals(20, one.minus(apart).effectiveDegreesOfFreedom(), 1e-9);
  }

  /** A sum in another order differs in its last bit, and so would the sheet of the same walk. */
  @Test
  void shapes_standInOneOrder() {
    Quantity quantity = Quantity.exact(1, Unit.WATT);
    List<String> names = new ArrayList<>();
    for (char name = 'z'; name >= 'a'; name--) {
      quantity = quantity.withRectangular(String.valueOf(name), 0.1);
      names.add(0, String.valueOf(name));
    }
    assertEquals(names, List.copyOf(quantity.shapes().keySet()));
  }
}
