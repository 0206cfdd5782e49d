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

import java.util.List;
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
  void likeConditions_differInNothing() {
    assertEquals(List.of(), at(20).differs());
    assertEquals(List.of(), at(20).notes());
  }

  @Test
  void rating_isComparedWithTheLowerChannel() {
    RatingComparison comparison =
        compare(CTA, stereo(4, volts(21), of(ReadingId.OTHER_OUTPUT_VOLTS, 18), supply(14.4)));
    assertEquals(81, comparison.measured().value(), 1e-9);
    assertEquals(RatingComparison.Verdict.MISSES, comparison.verdict());
  }

  @Test
  void otherSupplyVolts_giveNoVerdict() {
    otherConditions(
        compare(CTA, stereo(4, volts(20), supply(13.2))),
        "rated at a supply of 14.4 V, read at 13.20 V");
    assertEquals(List.of(), compare(CTA, stereo(4, volts(20), supply(14.2))).differs());
    otherConditions(
        compare(CTA, stereo(4, volts(20))), "rated at a supply of 14.4 V, supply volts not read");
  }

  @Test
  void otherThd_givesNoVerdict() {
    Rating strict = rating(Mode.STEREO, 4, 100, 14.4, 0.1);
    otherConditions(
        compare(strict, stereo(4, volts(20), supply(14.4))), "rated at 0.1 % THD, read at 1 %");
    MeasuredStep clean = stereo(4, volts(20), supply(14.4), of(ReadingId.THD_PERCENT, 0.12));
    assertEquals(List.of(), compare(strict, clean).differs());
    otherConditions(compare(CTA, clean), "rated at 1 % THD, read at 0.120 %");
  }

  @Test
  void onsetOfClipping_givesNoVerdict() {
    MeasuredStep onset = loaded(Mode.STEREO, 4, Criterion.CLIPPING_ONSET, volts(20), supply(14.4));
    otherConditions(compare(CTA, onset), "rated at 1 % THD, read at the onset of clipping");
  }

  @Test
  void belowTheLimit_showsNothing() {
    for (double read : new double[] {10, 22}) {
      MeasuredStep below = loaded(Mode.STEREO, 4, Criterion.BELOW_LIMIT, volts(read), supply(14.4));
      otherConditions(compare(CTA, below), "rated at 1 % THD, read below the limit");
    }
  }

  @Test
  void ratingWithoutConditions_saysSo() {
    Rating bare = new Rating(Mode.STEREO, 4, 100, OptionalDouble.empty(), OptionalDouble.empty());
    RatingComparison comparison = compare(bare, stereo(4, volts(22)));
    assertEquals(RatingComparison.Verdict.MEETS, comparison.verdict());
    assertEquals(
        List.of(
            "the rating states no THD: taken as 1 %, the limit of the sequence",
            "the rating states no supply volts"),
        comparison.notes());
  }

  @Test
  void noRatingForTheLoad_leavesItEmpty() {
    WalkResult result = Readings.walk(rated(CTA), usual(), stereo(2, volts(20)));
    assertFalse(result.steps().get(0).rating().isPresent());
  }

  private static RatingComparison at(double volts) {
    return compare(CTA, stereo(4, volts(volts), supply(14.4)));
  }

  private static TakenReading supply(double volts) {
    return of(ReadingId.SUPPLY_VOLTS, volts);
  }

  private static void otherConditions(RatingComparison comparison, String differs) {
    assertEquals(RatingComparison.Verdict.OTHER_CONDITIONS, comparison.verdict());
    assertEquals(List.of(differs), comparison.differs());
  }

  private static RatingComparison compare(Rating rating, MeasuredStep step) {
    return Readings.walk(rated(rating), usual(), step).steps().get(0).rating().orElseThrow();
  }
}
