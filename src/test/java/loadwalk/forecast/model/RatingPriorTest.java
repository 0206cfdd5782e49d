package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** What ratings and fuses tell before the first reading, all of one channel and its load. */
class RatingPriorTest {
  private static final double SET = 13.8;
  private static final double REGULATED = 0.35;
  private static final double THREE_DECIBELS = Math.log(Math.sqrt(Math.pow(10, 0.3)));
  private static final double TAIL = RatingPrior.TAIL_WEIGHT;

  /** P = V²/R, and V = E x/(x + r) into every other load. */
  @Test
  void logVolts_areTheRatedOnes_andFollowTheSourceResistance() {
    RatingPrior prior = prior(List.of(), stereo(4, 50));
    double rated = Math.sqrt(50 * 4);
    assertEquals(Math.log(rated), prior.logVolts(4, 0.3), 1e-12);
    double unloaded = rated * 4.3 / 4;
    assertEquals(Math.log(unloaded * 2 / 2.3), prior.logVolts(2, 0.3), 1e-12);
  }

  /** Bridged into 4 Ω each channel drives 2 Ω with half the volts. */
  @Test
  void logVolts_ofABridgedRating_areOneChannels() {
    RatingPrior prior = prior(List.of(), rating(Mode.BRIDGED, 4, 200));
    assertEquals(Math.log(Math.sqrt(200 * 4) / 2), prior.logVolts(2, 0.1), 1e-12);
    assertEquals(2, prior.leastChannelOhms());
  }

  @Test
  void logVolts_ofSeveralRatings_areTheirMiddle() {
    RatingPrior prior = prior(List.of(), stereo(4, 50), stereo(4, 60), stereo(2, 90));
    double levels =
        Math.log(Math.sqrt(200) * 4.2 / 4)
            + Math.log(Math.sqrt(240) * 4.2 / 4)
            + Math.log(Math.sqrt(180) * 2.2 / 2);
    assertEquals(levels / 3 - Math.log(2.2 / 2), prior.logVolts(2, 0.2), 1e-12);
    assertEquals(2, prior.leastChannelOhms());
  }

  /** Fuses near the current at full power, half of it put out (common practice, no source). */
  @Test
  void logVolts_withoutRatings_comeFromTheFuses_orFromTheKindOfApparatus() {
    double channelWatts = 30 * SET * 0.5 / 2;
    RatingPrior fused = prior(List.of(30.0));
    assertEquals(0.5 * Math.log(channelWatts * 2), fused.logVolts(2, 0.3), 1e-12);
    double unloaded = Math.sqrt(channelWatts * 2) * 2.3 / 2;
    assertEquals(Math.log(unloaded * 4 / 4.3), fused.logVolts(4, 0.3), 1e-12);
    assertEquals(0.5 * Math.log(70 * 2), prior(List.of()).logVolts(2, 0.3), 1e-12);
    assertTrue(fused.fused() && !fused.rated());
    assertFalse(prior(List.of()).fused());
    assertTrue(Double.isNaN(fused.leastChannelOhms()));
  }

  /**
   * 30 A of fuses let expect 207 W in all; a rating of twelve times that, or of a thirtieth, is not
   * believed.
   */
  @Test
  void ratings_thatContradictTheFuses_areLeftOut() {
    List<Double> fuses = List.of(30.0);
    assertTrue(prior(fuses, stereo(4, 1250)).absurd());
    assertFalse(prior(fuses, stereo(4, 1230)).absurd());
    assertTrue(prior(fuses, stereo(4, 3.4)).absurd());
    assertFalse(prior(fuses, stereo(4, 3.5)).absurd());
    assertFalse(prior(fuses, rating(Mode.BRIDGED, 4, 2400)).absurd());
    assertTrue(prior(fuses, rating(Mode.BRIDGED, 4, 6.8)).absurd());
    RatingPrior one = prior(fuses, stereo(4, 5000), stereo(4, 50));
    assertTrue(one.absurd() && one.rated());
    assertEquals(Math.log(Math.sqrt(200)), one.logVolts(4, 0.3), 1e-12);
  }

  @Test
  void ratings_ofNoCarAmplifier_areLeftOut() {
    assertFalse(prior(List.of(), stereo(4, 0.5)).absurd());
    assertTrue(prior(List.of(), stereo(4, 0.49)).absurd());
    assertFalse(prior(List.of(), stereo(4, 5000)).absurd());
    assertTrue(prior(List.of(), stereo(4, 5001)).absurd());
  }

  /** One rating says nothing of the source: regulated rails leave less of it than others. */
  @Test
  void source_withOneRating_isOnlyTheUsualOne() {
    RatingPrior prior = prior(List.of(), stereo(4, 50));
    for (double log : new double[] {-4, -2.4, -1.5, 0}) {
      assertEquals(Math.log(usual(log)), prior.logDensityOfSource(log), 1e-12);
    }
  }

  private static double usual(double log) {
    NormalDistribution stiff =
        new NormalDistribution(RatingPrior.REGULATED_LOG_SOURCE_OHMS, RatingPrior.REGULATED_SPREAD);
    NormalDistribution soft =
        new NormalDistribution(RatingPrior.SAGGING_LOG_SOURCE_OHMS, RatingPrior.SAGGING_SPREAD);
    return REGULATED * stiff.density(log) + (1 - REGULATED) * soft.density(log);
  }

  /**
   * Two ratings of an amplifier behind 0.4 Ω, each a little uncertain in volts, tell its source.
   */
  @Test
  void source_withTwoRatings_isTheOneThatFitsBoth() {
    double r = 0.4;
    RatingPrior prior = prior(List.of(), stereo(4, watts(20, r, 4)), stereo(1, watts(20, r, 1)));
    double there = Math.log(r);
    assertEquals(Math.log(usual(there)), prior.logDensityOfSource(there), 1e-9);
    double other = Math.log(0.12);
    double apart = Math.log(4.4 / 4 * 1 / 1.4) - Math.log(4.12 / 4 * 1 / 1.12);
    double eachOff = apart / 2 / RatingPrior.RATING_SCATTER;
    double expected = Math.log(usual(other)) - eachOff * eachOff;
    assertEquals(expected, prior.logDensityOfSource(other), 1e-9);
  }

  /** A flat density of ±3 dB has a variance of (2a)²/12; ten strata have 1 % less. */
  @Test
  void spread_ofARating_isFlatOverThreeDecibelsEitherWay() {
    Mixture told = spread(prior(List.of(), stereo(4, 50, SET)), 0.1);
    double shoulder = Math.hypot(RatingPrior.SHOULDER, 0.1);
    double flat = THREE_DECIBELS * THREE_DECIBELS / 3 * 0.99 + shoulder * shoulder;
    double both = (1 - TAIL) * flat + TAIL * RatingPrior.TAIL * RatingPrior.TAIL;
    assertEquals(2, told.mean(), 1e-9);
    assertEquals(Math.sqrt(both), told.deviation(), 1e-9);
    Mixture sharp = spread(prior(List.of(), stereo(4, 50, SET)), 0);
    assertEquals(0.01, sharp.cumulative(2 - THREE_DECIBELS), 0.01);
    assertEquals(0.99, sharp.cumulative(2 + THREE_DECIBELS), 0.01);
    assertEquals(0.25, sharp.cumulative(2 - THREE_DECIBELS / 2), 0.01);
  }

  /** A rating stated at 14.4 V is lower at 13.8 V where the rails are not regulated. */
  @Test
  void spread_ofARatingAtAnotherSupply_followsItByTheChanceOfUnregulatedRails() {
    Mixture told = spread(prior(List.of(), stereo(4, 50, 14.4)), 0.1);
    double shift = Math.log(14.4 / SET);
    assertEquals(2 - (1 - TAIL) * (1 - REGULATED) * shift, told.mean(), 1e-9);
  }

  /** Where no supply is stated it was 13.8, 14.4 or 12 V (common practice, no source). */
  @Test
  void spread_ofARatingWithoutItsSupply_allowsForTheUsualOnes() {
    Mixture told = spread(prior(List.of(), stereo(4, 50)), 0.1);
    double shift =
        RatingPrior.USUAL_WEIGHTS[1] * Math.log(14.4 / 13.8)
            + RatingPrior.USUAL_WEIGHTS[2] * Math.log(12 / 13.8);
    assertEquals(2 - (1 - TAIL) * (1 - REGULATED) * shift, told.mean(), 1e-9);
    assertTrue(told.deviation() > spread(prior(List.of(), stereo(4, 50, SET)), 0.1).deviation());
  }

  @Test
  void spread_withoutRatings_isWide_widestWithoutFuses() {
    Mixture fused = spread(prior(List.of(30.0)), 0.1);
    assertEquals(2, fused.mean(), 1e-12);
    double rated = spread(prior(List.of(), stereo(4, 50, SET)), 0.1).deviation();
    assertTrue(fused.deviation() > 2 * rated);
    assertTrue(spread(prior(List.of()), 0.1).deviation() > 1.2 * fused.deviation());
  }

  private static Mixture spread(RatingPrior prior, double extra) {
    Mixture.Builder builder = new Mixture.Builder();
    prior.spread(builder, 1, 2, extra);
    return builder.build();
  }

  private static double watts(double unloadedVolts, double sourceOhms, double ohms) {
    double volts = unloadedVolts * ohms / (ohms + sourceOhms);
    return volts * volts / ohms;
  }

  private static RatingPrior prior(List<Double> fuses, Rating... ratings) {
    return new RatingPrior(Amplifiers.with(List.of(ratings), fuses), SET, REGULATED);
  }

  private static Rating stereo(double ohms, double watts) {
    return rating(Mode.STEREO, ohms, watts);
  }

  private static Rating rating(Mode mode, double ohms, double watts) {
    return new Rating(mode, ohms, watts, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static Rating stereo(double ohms, double watts, double supplyVolts) {
    return new Rating(
        Mode.STEREO, ohms, watts, OptionalDouble.of(supplyVolts), OptionalDouble.empty());
  }
}
