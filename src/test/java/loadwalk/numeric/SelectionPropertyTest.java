package loadwalk.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The ends are those of a full sort, whatever the row looks like. */
class SelectionPropertyTest {
  private static final long SEED = 1961;

  private final SplittableRandom random = new SplittableRandom(SEED);

  @Test
  void randomRows_haveTheEndsOfAFullSort() {
    for (int round = 0; round < 300; round++) {
      int length = 1 + random.nextInt(round % 10 == 0 ? 100_000 : 300);
      check(length, i -> random.nextGaussian());
    }
  }

  @Test
  void rowsThatMisleadTheSample_haveTheEndsOfAFullSort() {
    int length = 70_000;
    check(length, i -> i);
    check(length, i -> -i);
    check(length, i -> 4.0);
    check(length, i -> i % 3);
    check(length, i -> i % 68 == 0 ? -i : i);
    check(length, i -> Math.abs(i - length / 2.0));
    check(length, i -> i % 2 == 0 ? -0.0 : 0.0);
  }

  private void check(int length, IntToDoubleFunction at) {
    double[] row = new double[length];
    Arrays.setAll(row, at);
    double[] sorted = row.clone();
    Arrays.sort(sorted);
    int count = 1 + random.nextInt(length);
    Selection.sortEnds(row, count);
    String which = "seed " + SEED + ", " + count + " of " + length;
    int end = Math.min(count, length);
    assertEnd(sorted, row, 0, end, which);
    assertEnd(sorted, row, length - end, length, which);
    Arrays.sort(row);
    assertArrayEquals(sorted, row, which + ": a number was lost");
  }

  private static void assertEnd(double[] sorted, double[] row, int from, int to, String which) {
    for (int i = from; i < to; i++) {
      // Zeros of either sign are equal here, and no interval tells them apart.
      assertTrue(sorted[i] == row[i], which + " at " + i + ": " + sorted[i] + ", " + row[i]);
    }
  }
}
