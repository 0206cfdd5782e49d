package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import org.junit.jupiter.api.Test;

/** How the output model weighs its alternatives: each by its evidence times its prior. */
class OutputMixTest {
  private static final double SET = 13.8;
  private static final double REGULATED = 0.4;
  private static final double SCATTER = 0.0065;
  private static final double NOT_READ = Double.NaN;
  private static final LimitOnset ONSET = new LimitOnset(1);
  private static final RatingPrior PRIOR =
      new RatingPrior(
          Amplifiers.with(
              List.of(
                  new Rating(Mode.STEREO, 4, 100, OptionalDouble.of(SET), OptionalDouble.empty())),
              List.of()),
          SET,
          REGULATED);

  /** Volts that fall by a third from 2 Ω to 1 Ω: a limit, or an amplifier that is soft. */
  private static final List<WalkReadings.Point> LIMITED =
      List.of(
          point(4, 20, NOT_READ),
          point(2, 19, NOT_READ),
          point(1, 12.5, NOT_READ),
          point(0.5, 7.2, NOT_READ));

  private static final List<WalkReadings.Point> TWO_SUPPLIES =
      List.of(point(4, 20, 13.8), point(2, 19.4, 13.7), point(1, 18.4, 13.6));

  /** One alternative: its ln weight, its density at a load, the slope of its limit. */
  private record Alternative(double log, OutputShape shape) {}

  @Test
  void predict_mixesRailsThatFollowTheSupply_withRegulatedOnes() {
    double smooth = Math.log(1 - ONSET.probability(1, 4));
    double[] logSupply = {0, Math.log(13.7 / SET), Math.log(13.6 / SET)};
    List<Alternative> all = new ArrayList<>();
    add(all, smooth + Math.log(REGULATED), smooth(TWO_SUPPLIES, logSupply, 0));
    add(all, smooth + Math.log(1 - REGULATED), smooth(TWO_SUPPLIES, logSupply, 1));
    assertEquals(List.of(), Limits.candidates(TWO_SUPPLIES));
    assertMixed(all, TWO_SUPPLIES);
    OutputModel model = model(TWO_SUPPLIES);
    double[] shares = shares(all);
    assertEquals(shares[0], model.regulatedProbability(), 1e-9);
    double scale = shares[0] * all.get(0).shape().scale() + shares[1] * all.get(1).shape().scale();
    assertEquals(scale, model.scale(), 1e-9);
  }

  @Test
  void predict_weighsALimit_byTheChanceThatItSetsInThere() {
    List<Alternative> all = new ArrayList<>();
    add(all, Math.log(1 - ONSET.probability(0.5, 4)), smooth(LIMITED, new double[4], 0));
    assertEquals(List.of(4.0, 1.0), Limits.candidates(LIMITED));
    double[] slopes = OutputModel.LIMIT_SLOPES;
    double[] held = OutputModel.LIMIT_SHARES;
    for (int i = 0; i < slopes.length; i++) {
      add(
          all,
          Math.log(OutputModel.LIMITED_ALL_ALONG * held[i]),
          new LimitedShape(LIMITED, slopes[i], SCATTER));
    }
    List<WalkReadings.Point> above = LIMITED.subList(0, 2);
    SmoothShape upper = smooth(above, new double[2], 0);
    for (int i = 0; i < slopes.length; i++) {
      LimitedShape below = new LimitedShape(upper, 2, LIMITED.subList(2, 4), slopes[i], SCATTER);
      add(all, Math.log(ONSET.probability(1, 2) * held[i]), below);
    }
    assertMixed(all, LIMITED);
    double[] shares = shares(all);
    double scale = 0;
    for (int i = 0; i < shares.length; i++) {
      scale += shares[i] * all.get(i).shape().scale();
    }
    OutputModel model = model(LIMITED);
    assertEquals(scale, model.scale(), 1e-9);
    assertTrue(Double.isNaN(model.regulatedProbability()), "no supply volts tell the rails");
  }

  private static void assertMixed(List<Alternative> all, List<WalkReadings.Point> points) {
    double least = points.get(points.size() - 1).channelOhms();
    double[] shares = shares(all);
    for (double ohms : new double[] {8, 3, 1.4, least, 0.3}) {
      Mixture.Builder builder = new Mixture.Builder();
      for (int i = 0; i < shares.length; i++) {
        OutputShape shape = all.get(i).shape();
        double edge = ohms > 4 ? 4 : least;
        double level = shape.predict(edge, false, 0).mean();
        Mixture told = shape.predict(ohms, false, -0.01);
        LimitOnset.Reach reach = new LimitOnset.Reach(least, 4, level);
        ONSET.extend(builder, shares[i], told, ohms, reach, shape.slope());
      }
      Mixture expected = VoltsFallBound.of(points, ohms).hold(builder.build());
      Mixture actual = model(points).predict(ohms, false, -0.01);
      assertEquals(expected.mean(), actual.mean(), 1e-5, ohms + " ohms");
      assertEquals(expected.deviation(), actual.deviation(), 1e-4, ohms + " ohms");
    }
  }

  private static double[] shares(List<Alternative> all) {
    double total = all.stream().mapToDouble(a -> Math.exp(a.log())).sum();
    return all.stream().mapToDouble(a -> Math.exp(a.log()) / total).toArray();
  }

  private static void add(List<Alternative> all, double logPrior, OutputShape shape) {
    all.add(new Alternative(logPrior + shape.logEvidence(), shape));
  }

  private static SmoothShape smooth(
      List<WalkReadings.Point> points, double[] logSupply, double kappa) {
    return new SmoothShape(PRIOR, points, logSupply, kappa, SCATTER);
  }

  @Test
  void reaches_isOfTheLoadsMeasured() {
    OutputModel model = model(LIMITED);
    assertTrue(model.reaches(0.5) && model.reaches(0.49) && model.reaches(8));
    assertFalse(model.reaches(0.48));
    assertFalse(model(List.of()).reaches(4));
    assertTrue(model.measured());
    assertFalse(model(List.of()).measured());
  }

  @Test
  void scale_withoutReadings_isUsual() {
    assertEquals(1, model(List.of()).scale());
  }

  /** Unregulated rails follow the supply, regulated ones mostly not, where nothing told yet. */
  @Test
  void following_aSupplyThatIsOff_movesTheVoltsByTheChanceThatTheyFollow() {
    Mixture steady = Mixture.normal(3, 0.02);
    double off = -0.1;
    Mixture moved = model(LIMITED).following(steady, off);
    double part = (moved.mean() - steady.mean()) / off;
    assertTrue(part > 1 - REGULATED && part < 1 - REGULATED / 2, part + " of the way");
    double between = Math.sqrt(REGULATED * (1 - REGULATED)) * -off;
    assertTrue(moved.deviation() > 0.8 * between, "either they follow or they do not");
    assertSame(steady, model(LIMITED).following(steady, 0.005));
    assertSame(steady, model(TWO_SUPPLIES).following(steady, off), "readings told already");
  }

  /** Before any reading the source resistance is what its prior says, ln r around 0.12 Ω. */
  @Test
  void predict_withoutReadings_isTheRating_lessTheSourceAndTheChanceOfALimit() {
    double sum = 0;
    double mean = 0;
    for (double log = -5.5; log < 1.6; log += 0.001) {
      double weight = Math.exp(PRIOR.logDensityOfSource(log));
      sum += weight;
      mean += weight * PRIOR.logVolts(0.8, Math.exp(log));
    }
    mean /= sum;
    double limited = ONSET.probability(0.8, 4);
    double drop = Math.log(4 / 0.8);
    double expected = mean - limited / 2 * (OutputModel.DROPS[0] + OutputModel.DROPS[1]) * drop;
    Mixture told = model(List.of()).predict(0.8, false, 0);
    assertEquals(expected, told.mean(), 3e-3);
    assertEquals(Math.log(20), model(List.of()).predict(4, false, 0).mean(), 1e-9);
    assertEquals(spread(mean, limited, drop).deviation(), told.deviation(), 2e-3);
    assertTrue(told.deviation() > 1.1 * model(List.of()).predict(4, false, 0).deviation());
  }

  private static Mixture spread(double mean, double limited, double drop) {
    double sum = 0;
    double square = 0;
    for (double log = -5.5; log < 1.6; log += 0.001) {
      double weight = Math.exp(PRIOR.logDensityOfSource(log));
      sum += weight;
      square += weight * Math.pow(PRIOR.logVolts(0.8, Math.exp(log)) - mean, 2);
    }
    double extra = Math.sqrt(square / sum);
    Mixture.Builder builder = new Mixture.Builder();
    PRIOR.spread(builder, 1 - limited, mean, extra);
    for (int i = 0; i < OutputModel.DROPS.length; i++) {
      double width = Math.hypot(extra, OutputModel.DROP_SPREADS[i] * drop);
      PRIOR.spread(builder, limited / 2, mean - OutputModel.DROPS[i] * drop, width);
    }
    return builder.build();
  }

  private static OutputModel model(List<WalkReadings.Point> points) {
    return new OutputModel(PRIOR, ONSET, points, new OutputModel.Setup(SET, REGULATED, SCATTER));
  }

  private static WalkReadings.Point point(double ohms, double volts, double supply) {
    return new WalkReadings.Point(ohms, false, Math.log(volts), supply, Double.NaN);
  }
}
