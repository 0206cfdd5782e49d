package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loadwalk.bench.Amplifier;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class OutputModelTest {
  private static final long SEED = 31415;
  private static final double[] LOADS = {4, 2, 1, 0.5};

  /** 1/V is linear in 1/R: the same points through a straight line of a statistics library. */
  @Test
  void predict_betweenExactPoints_agreesWithTheStraightLineOfALibrary() {
    double e = 20;
    double r = 0.1;
    SimpleRegression line = new SimpleRegression();
    List<WalkReadings.Point> points = new ArrayList<>();
    for (double ohms : LOADS) {
      double volts = e * ohms / (ohms + r);
      line.addData(1 / ohms, 1 / volts);
      points.add(point(ohms, volts));
    }
    for (double ohms : new double[] {3, 1.5, 0.7}) {
      double library = 1 / line.predict(1 / ohms);
      double told = Math.exp(model(points).predict(ohms, false, 0).quantile(0.5));
      assertEquals(library, told, 0.003 * library, ohms + " ohms");
    }
  }

  /** Readings scattered by 0.6 %: a fifth reading into the least load lies inside in 95 %. */
  @Test
  void predict_aLoadMeasuredBefore_coversItsNextReading() {
    SplittableRandom random = new SplittableRandom(SEED);
    int inside = 0;
    int tries = 400;
    for (int round = 0; round < tries; round++) {
      double r = 0.02 + 0.2 * random.nextDouble();
      List<WalkReadings.Point> points = new ArrayList<>();
      for (double ohms : LOADS) {
        points.add(point(ohms, scattered(random, 20 * ohms / (ohms + r))));
      }
      double next = Math.log(scattered(random, 20 * 0.5 / (0.5 + r)));
      Mixture told = model(points).predict(0.5, false, 0);
      if (next >= told.quantile(0.025) && next <= told.quantile(0.975)) {
        inside++;
      }
    }
    double percent = 100.0 * inside / tries;
    assertTrue(percent > 92 && percent < 99.5, percent + " %, seed " + SEED);
  }

  @Test
  void predict_afterAHardCurrentLimit_goesOnAlongIt() {
    List<WalkReadings.Point> points =
        List.of(point(4, 20), point(2, 19.7), point(1, 12), point(0.5, 6.05));
    Mixture told = model(points).predict(0.25, false, 0);
    assertEquals(3.05, Math.exp(told.quantile(0.5)), 0.35);
  }

  @Test
  void scale_ofReadingsThatContradictEachOther_isLarge() {
    List<WalkReadings.Point> points =
        List.of(point(4, 20), point(4, 26), point(2, 17), point(2, 25), point(1, 22));
    assertTrue(model(points).scale() > 3, String.valueOf(model(points).scale()));
    List<WalkReadings.Point> agreeing = List.of(point(4, 20), point(2, 19.5), point(1, 18.6));
    assertTrue(model(agreeing).scale() < 2);
  }

  @Test
  void regulatedProbability_isToldFromReadingsAtTwoSupplies() {
    List<WalkReadings.Point> following =
        List.of(
            new WalkReadings.Point(4, false, Math.log(20), 13.8, Double.NaN),
            new WalkReadings.Point(4, false, Math.log(18.1), 12.5, Double.NaN),
            new WalkReadings.Point(2, false, Math.log(19.4), 13.7, Double.NaN));
    assertTrue(model(following).regulatedProbability() < 0.05);
    List<WalkReadings.Point> steady =
        List.of(
            new WalkReadings.Point(4, false, Math.log(20), 13.8, Double.NaN),
            new WalkReadings.Point(4, false, Math.log(20.05), 12.5, Double.NaN),
            new WalkReadings.Point(2, false, Math.log(19.4), 13.7, Double.NaN));
    assertTrue(model(steady).regulatedProbability() > 0.95);
    assertTrue(Double.isNaN(model(List.of(point(4, 20))).regulatedProbability()));
  }

  private static double scattered(SplittableRandom random, double volts) {
    return volts * (1 + 0.006 * random.nextGaussian());
  }

  private static OutputModel model(List<WalkReadings.Point> points) {
    RatingPrior prior = new RatingPrior(Amplifier.named("Brightmoor", "B2"), 13.8, 0.4);
    return new OutputModel(
        prior, new LimitOnset(0.25), points, new OutputModel.Setup(13.8, 0.4, 0.0065));
  }

  private static WalkReadings.Point point(double ohms, double volts) {
    return new WalkReadings.Point(ohms, false, Math.log(volts), Double.NaN, Double.NaN);
  }
}
