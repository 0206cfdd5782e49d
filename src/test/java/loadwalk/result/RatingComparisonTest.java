package loadwalk.result;

import static loadwalk.result.Readings.loaded;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.rated;
import static loadwalk.result.Readings.rating;
import static loadwalk.result.Readings.stereo;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;

class RatingComparisonTest {
  // Rated as ANSI/CTA-2006 has it: 14.4 V, 4 ohm, 1 % THD+N (reference: amp-standards, read in
  // secondary pages).
  private static final Rating CTA = rating(Mode.STEREO, 4, 100, 14.4, 1);

  @Test
  void verdict_followsTheGuardBandAt95Percent() {
    // 95 % one-sided: 1.645 u (normal quantile, JCGM 106:2012, 8.3.3).
    double u = Readings.step(usual(), stereo(4, volts(20))).watts().orElseThrow().u();
    assertEquals(RatingComparison.Verdict.MEETS, at(Math.sqrt(4 * (100 + 1.7 * u))).verdict());
    assertEquals(RatingComparison.Verdict.TOO_CLOSE, at(Math.sqrt(4 * (100 + 1.6 * u))).verdict());
    assertEquals(RatingComparison.Verdict.TOO_CLOSE, at(20).verdict());
    assertEquals(RatingComparison.Verdict.TOO_CLOSE, at(Math.sqrt(4 * (100 - 1.6 * u))).verdict());
    assertEquals(RatingComparison.Verdict.MISSES, at(Math.sqrt(4 * (100 - 1.7 * u))).verdict());
  }

  @Test
  void ratio_andDecibels_meetTheTable() {
    // Doubling P = 3.0103 dB; 1 dB = 25.8925 % in power (reference class-b, computed).
    assertEquals(2, at(Math.sqrt(800)).ratio().value(), 1e-12);
    assertEquals(3.0103, at(Math.sqrt(800)).decibels(), 5e-5);
    assertEquals(1, at(Math.sqrt(4 * 125.8925)).decibels(), 5e-6);
    assertEquals(Double.NEGATIVE_INFINITY, at(0).decibels());
  }

  @Test
  void likeForLike_hasNoNote() {
    assertEquals(Optional.empty(), at(20).note());
  }

  @Test
  void rating_isComparedWithTheLowerChannel() {
    RatingComparison comparison =
        compare(CTA, stereo(4, volts(21), of(ReadingId.OTHER_OUTPUT_VOLTS, 18)));
    assertEquals(81, comparison.measured().value(), 1e-9);
    assertEquals(RatingComparison.Verdict.MISSES, comparison.verdict());
  }

  @Test
  void otherSupplyVolts_areNoted() {
    String note =
        compare(CTA, stereo(4, volts(20), of(ReadingId.SUPPLY_VOLTS, 13.2))).note().orElseThrow();
    assertEquals("rated at a supply of 14.4 V, measured at 13.2 V", note);
  }

  @Test
  void otherThd_isNoted() {
    Rating strict = rating(Mode.STEREO, 4, 100, 14.4, 0.1);
    String note = compare(strict, stereo(4, volts(20))).note().orElseThrow();
    assertEquals("rated at 0.1 % THD, measured at 1 %", note);
  }

  @Test
  void onsetOfClipping_isNoted() {
    MeasuredStep onset = loaded(Mode.STEREO, 4, Criterion.CLIPPING_ONSET, volts(20));
    assertTrue(compare(CTA, onset).note().orElseThrow().contains("onset of clipping"));
  }

  @Test
  void belowTheLimit_neverShowsAMiss() {
    MeasuredStep below = loaded(Mode.STEREO, 4, Criterion.BELOW_LIMIT, volts(10));
    RatingComparison comparison = compare(CTA, below);
    assertEquals(RatingComparison.Verdict.TOO_CLOSE, comparison.verdict());
    assertTrue(comparison.note().orElseThrow().contains("below the limit"));
    MeasuredStep enough = loaded(Mode.STEREO, 4, Criterion.BELOW_LIMIT, volts(22));
    assertEquals(RatingComparison.Verdict.MEETS, compare(CTA, enough).verdict());
  }

  @Test
  void ratingWithoutConditions_isNoted() {
    Rating bare = new Rating(Mode.STEREO, 4, 100, OptionalDouble.empty(), OptionalDouble.empty());
    assertEquals(
        "the rating states no THD; the rating states no supply volts",
        compare(bare, stereo(4, volts(20))).note().orElseThrow());
  }

  @Test
  void noRatingForTheLoad_leavesItEmpty() {
    WalkResult result = Readings.walk(rated(CTA), usual(), stereo(2, volts(20)));
    assertFalse(result.steps().get(0).rating().isPresent());
  }

  private static RatingComparison at(double volts) {
    return compare(CTA, stereo(4, volts(volts)));
  }

  private static RatingComparison compare(Rating rating, MeasuredStep step) {
    return Readings.walk(rated(rating), usual(), step).steps().get(0).rating().orElseThrow();
  }
}
