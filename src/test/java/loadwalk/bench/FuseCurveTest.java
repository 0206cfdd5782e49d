package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Checks fuses against the published points in fuse-blade.csv, each with its source. */
class FuseCurveTest {
  @Test
  void opening_atEveryPublishedPoint_isThePublishedGate() {
    int compared = 0;
    for (Csv.Row row : ReferenceTable.rows("fuse-blade.csv")) {
      double rating = ratingOf(row.text("fuse_type"));
      if (Double.isNaN(rating)) {
        continue;
      }
      FuseCurve fuse = Tables.stock().fuseFor(rating);
      FuseCurve.Opening opening = fuse.opening(row.number("percent_of_rating") / 100);
      assertEquals(row.number("min_s"), opening.minSeconds(), 1e-9, row.where());
      OptionalDouble longest =
          row.has("max_s") ? OptionalDouble.of(row.number("max_s")) : OptionalDouble.empty();
      assertEquals(longest, opening.maxSeconds(), row.where());
      compared++;
    }
    assertEquals(21, compared);
  }

  /**
   * By hand: half way in log current between 160 and 200 % is 178.885 %; times √(50·5), √(.25·.15).
   */
  @Test
  void opening_betweenPoints_isInterpolatedOnLogScales() {
    FuseCurve.Opening opening = Tables.stock().fuseFor(30).opening(Math.sqrt(1.6 * 2.0));
    assertEquals(Math.sqrt(0.25 * 0.15), opening.minSeconds(), 1e-9);
    assertEquals(Math.sqrt(50 * 5), opening.maxSeconds().orElseThrow(), 1e-9);
    assertEquals(FuseCurve.Span.INSIDE_TABLE, opening.span());
  }

  @Test
  void opening_belowTheTable_needNotOpen() {
    FuseCurve.Opening opening = Tables.stock().fuseFor(30).opening(1.0);
    assertEquals(FuseCurve.Span.BELOW_TABLE, opening.span());
    assertTrue(opening.maxSeconds().isEmpty());
    assertEquals("may never open", opening.text());
  }

  @Test
  void opening_betweenHoldAndFirstMaximum_hasNoUpperEnd() {
    FuseCurve.Opening opening = Tables.stock().fuseFor(30).opening(1.2);
    assertTrue(opening.maxSeconds().isEmpty());
    assertTrue(opening.minSeconds() < 360_000 && opening.minSeconds() > 0.75);
  }

  @Test
  void opening_aboveTheTable_isSaid() {
    FuseCurve.Opening opening = Tables.stock().fuseFor(30).opening(1e9);
    assertEquals(FuseCurve.Span.ABOVE_TABLE, opening.span());
    assertEquals(0, opening.minSeconds());
    assertEquals("within 0.1 s (beyond the table)", opening.text());
  }

  @Test
  void fuseFor_aRating_isTheSmallestKindMade() {
    assertTrue(Tables.stock().fuseFor(40).type().contains("type C"));
    assertTrue(Tables.stock().fuseFor(60).type().contains("type E"));
    assertTrue(Tables.stock().fuseFor(150).type().contains("SF30"));
    assertTrue(Tables.stock().fuseFor(300).type().contains("SF51"));
    assertTrue(Tables.stock().fuseFor(5000).type().contains("SF51"));
  }

  @Test
  void absurdInput_getsASentence() {
    FuseCurve fuse = Tables.stock().fuseFor(30);
    for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
      String message =
          assertThrows(IllegalArgumentException.class, () -> fuse.opening(bad)).getMessage();
      assertTrue(message.startsWith("current over rating must be"), message);
    }
  }

  private static double ratingOf(String type) {
    if (type.startsWith("type C")) {
      return 30;
    }
    if (type.startsWith("type E")) {
      return 60;
    }
    if (type.startsWith("SF30")) {
      return 150;
    }
    return type.startsWith("SF51") ? 300 : Double.NaN;
  }
}
