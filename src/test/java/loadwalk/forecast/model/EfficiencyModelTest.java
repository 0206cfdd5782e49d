package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.forecast.NormalAlgebra;
import org.junit.jupiter.api.Test;

/** ln η as a random walk from load to load, against the algebra of normals in a library. */
class EfficiencyModelTest {
  private static final double SUPPLY = 13.7;
  private static final double[] SCALES = EfficiencyModel.SCALES;
  private static final double[] SCALE_PRIORS = EfficiencyModel.SCALE_PRIORS;
  private static final double SCATTER = EfficiencyModel.SCATTER;
  private static final double AMPS_SCATTER = EfficiencyModel.AMPS_SCATTER;
  private static final double WALK = EfficiencyModel.WALK;
  private static final ClassPrior CLASS_B = ClassPrior.of(Optional.of("B"));
  private static final IdleModel IDLE = new IdleModel(1.4, 0.11, true);

  /** Ohms, channel volts and η of readings that scatter by a percent or two. */
  private static final double[][] READ = {{4, 15, 0.56}, {2, 14.6, 0.575}, {1, 13.9, 0.55}};

  @Test
  void at_anotherLoad_isTheConditionalNormalOfTheWalk() {
    EfficiencyModel model = model(READ);
    assertConditional(model.at(1.5), conditional(READ, 1, 1.5));
    assertConditional(model.at(0.5), conditional(READ, 2, 0.5));
    assertConditional(model.at(8), conditional(READ, 0, 8));
  }

  @Test
  void at_aLoadMeasured_isAsRead_andTheCurrentComesAgain() {
    EfficiencyModel model = model(READ);
    EfficiencyAtLoad again = model.at(2);
    for (int s = 0; s < SCALES.length; s++) {
      EfficiencyAtLoad.Part part = again.parts()[s];
      assertEquals(Math.log(0.575), part.mean(), 1e-9);
      assertEquals(conditional(READ, 1, 2).get(s).share(), part.weight(), 1e-9);
      assertEquals(2 * Math.pow(SCALES[s] * AMPS_SCATTER, 2), part.variance(), 1e-12);
    }
    assertEquals(Math.log(14.6), again.anchor(), 1e-12);
    assertEquals(2, beta(again), "η goes as v², so the amperes are the same at any volts");
  }

  /** Two readings of one load halve the variance of their mean. */
  @Test
  void at_aLoadMeasuredTwice_isSurer() {
    double[][] twice = {{4, 15, 0.56}, {2, 14.6, 0.575}, {2.02, 14.8, 0.57}, {1, 13.9, 0.55}};
    EfficiencyAtLoad again = model(twice).at(2);
    assertEquals(1.5 * Math.pow(SCALES[0] * AMPS_SCATTER, 2), again.parts()[0].variance(), 1e-12);
    assertEquals(0.5 * Math.log(0.575 * 0.57), again.parts()[0].mean(), 1e-9);
    assertEquals((Math.log(14.6) + Math.log(14.8)) / 2, again.anchor(), 1e-12);
  }

  @Test
  void loads_withinThreePercent_countAsTheSame() {
    EfficiencyModel model = model(READ);
    assertEquals(2, beta(model.at(1.96)));
    assertEquals(2, beta(model.at(2.05)));
    assertTrue(beta(model.at(1.92)) < 1);
    assertTrue(beta(model.at(2.08)) < 1);
  }

  @Test
  void at_withoutReadings_isWhatTheClassTells() {
    EfficiencyAtLoad free = model(new double[0][]).at(4);
    assertEquals(SCALES.length, free.parts().length);
    double weights = 0;
    for (int s = 0; s < SCALES.length; s++) {
      EfficiencyAtLoad.Part part = free.parts()[s];
      assertEquals(CLASS_B.mean(), part.mean());
      double scatter = SCALES[s] * SCATTER;
      assertEquals(CLASS_B.spread() * CLASS_B.spread() + scatter * scatter, part.variance(), 1e-12);
      weights += part.weight();
    }
    assertEquals(1, weights, 1e-9);
    assertEquals(0, beta(free));
  }

  /** A point without its current tells nothing; one without its supply volts is at the usual. */
  @Test
  void readings_withoutCurrent_areLeftOut() {
    List<WalkReadings.Point> points = new ArrayList<>(points(READ));
    points.add(new WalkReadings.Point(0.5, false, Math.log(12), SUPPLY, Double.NaN));
    points.add(new WalkReadings.Point(0.5, false, Math.log(12), SUPPLY, 0));
    assertSame(model(READ).at(1.5), model(points).at(1.5));
    List<WalkReadings.Point> unread =
        points(READ).stream()
            .map(
                p ->
                    new WalkReadings.Point(
                        p.channelOhms(), false, p.logVolts(), Double.NaN, p.supplyAmps()))
            .toList();
    assertSame(model(READ).at(1.5), model(unread).at(1.5));
  }

  /** Without amperes the class holds at the greatest load and goes on from there with the volts. */
  @Test
  void at_withoutCurrent_goesWithTheVolts_fromTheGreatestLoad() {
    List<WalkReadings.Point> volts = new ArrayList<>();
    for (double[] read : READ) {
      volts.add(0, new WalkReadings.Point(read[0], false, Math.log(read[1]), SUPPLY, Double.NaN));
    }
    EfficiencyAtLoad told = model(volts).at(0.5);
    assertEquals(Math.log(15), told.anchor(), 1e-12);
    assertEquals(CLASS_B.mean(), told.mean(Math.log(15)), 1e-12);
    double slope = Math.log(15 / 7.5) / Math.log(8);
    double exponent = beta(new EfficiencyFall(0).at(slope));
    assertEquals(CLASS_B.mean() - exponent * Math.log(2), told.mean(Math.log(7.5)), 1e-9);
    assertTrue(told.deviation(Math.log(7.5)) > told.deviation(Math.log(15)));
  }

  /** P = V²/R in each of two channels. */
  @Test
  void logOutput_isOfBothChannels() {
    assertEquals(Math.log(2 * 15 * 15 / 4.0), EfficiencyModel.logOutput(Math.log(15), 4), 1e-12);
  }

  /** Below the least load the last fall goes on, whatever the loads above it did. */
  @Test
  void lastFall_goesOn() {
    assertFall(
        fall(0.5, 10.6, 5.3, 0.28 / 0.56),
        new double[][] {{4, 15, 0.56}, {2, 10.6, 0.56}, {1, 5.3, 0.28}});
    assertFall(fall(0.5, 15, 7.5, 0.5), new double[][] {{4, 15, 0.56}, {2, 7.5, 0.28}});
    assertFall(
        fall(0.5, 15, 7.5, 0.5), new double[][] {{4, 15, 0.56}, {2, 7.5, 0.28}, {1, 7.5, 0.28}});
  }

  @Test
  void noFall_orOneWithinALoad_tellsNothing() {
    EfficiencyFall none = new EfficiencyFall(0);
    assertFall(none, new double[][] {{4, 15, 0.56}});
    assertFall(none, new double[][] {{4, 10, 0.28}, {2, 15, 0.56}});
    assertFall(none, new double[][] {{4, 15, 0.56}, {3.4, 10, 0.28}});
  }

  private static EfficiencyFall fall(double loads, double volts, double to, double change) {
    return new EfficiencyFall(0, Math.log(loads), Math.log(to / volts), Math.log(change));
  }

  private static void assertFall(EfficiencyFall expected, double[][] read) {
    EfficiencyAtLoad.Way[] told = model(read).at(0.25).ways().at(0.6);
    EfficiencyAtLoad.Way[] ways = expected.at(0.6);
    for (int i = 0; i < ways.length; i++) {
      assertEquals(ways[i].weight(), told[i].weight(), 1e-9);
    }
  }

  private static double beta(EfficiencyAtLoad told) {
    return beta(told.ways().at(0));
  }

  private static double beta(EfficiencyAtLoad.Way[] ways) {
    double sum = 0;
    for (EfficiencyAtLoad.Way way : ways) {
      sum += way.weight() * way.beta();
    }
    return sum;
  }

  private static void assertSame(EfficiencyAtLoad expected, EfficiencyAtLoad actual) {
    for (int i = 0; i < expected.parts().length; i++) {
      assertEquals(expected.parts()[i], actual.parts()[i]);
    }
  }

  /** Mean, variance and share of one scale of the errors. */
  private record Told(double mean, double variance, double share) {}

  private static void assertConditional(EfficiencyAtLoad told, List<Told> expected) {
    for (int s = 0; s < SCALES.length; s++) {
      EfficiencyAtLoad.Part part = told.parts()[s];
      assertEquals(expected.get(s).mean(), part.mean(), 1e-9);
      assertEquals(expected.get(s).variance(), part.variance(), 1e-12);
      assertEquals(expected.get(s).share(), part.weight(), 1e-9);
    }
  }

  /** Conditions the joint normal of the readings and of the value asked for. */
  private static List<Told> conditional(double[][] read, int near, double ohms) {
    int n = read.length;
    double[] position = new double[n];
    for (int i = 1; i < n; i++) {
      double octaves = Math.log(read[i - 1][0] / read[i][0]) / Math.log(2);
      double fall = EfficiencyModel.STEP_PER_FALL * Math.log(read[i - 1][1] / read[i][1]);
      position[i] = position[i - 1] + WALK * WALK * octaves + fall * fall;
    }
    double ahead = WALK * WALK * Math.abs(Math.log(read[near][0] / ohms) / Math.log(2));
    double spread = CLASS_B.spread() * CLASS_B.spread();
    List<Told> parts = new ArrayList<>();
    double total = 0;
    for (int s = 0; s < SCALES.length; s++) {
      double[][] joint = new double[n][n];
      double[] toward = new double[n];
      double[] y = new double[n];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          joint[i][j] = spread + Math.min(position[i], position[j]);
        }
        double own = Math.hypot(SCATTER, IDLE.error() / (amps(read[i]) - IDLE.amps()));
        joint[i][i] += SCALES[s] * SCALES[s] * own * own;
        toward[i] = spread + Math.min(position[i], position[near]);
        y[i] = Math.log(read[i][2]) - CLASS_B.mean();
      }
      NormalAlgebra told = NormalAlgebra.of(joint, y, toward, spread + position[near] + ahead);
      double scatter = SCALES[s] * SCATTER;
      double share = SCALE_PRIORS[s] * told.density();
      parts.add(new Told(CLASS_B.mean() + told.mean(), told.variance() + scatter * scatter, share));
      total += share;
    }
    double sum = total;
    return parts.stream().map(p -> new Told(p.mean(), p.variance(), p.share() / sum)).toList();
  }

  private static EfficiencyModel model(double[][] read) {
    return model(points(read));
  }

  private static EfficiencyModel model(List<WalkReadings.Point> points) {
    return new EfficiencyModel(CLASS_B, IDLE, points, amps -> SUPPLY);
  }

  private static List<WalkReadings.Point> points(double[][] read) {
    List<WalkReadings.Point> points = new ArrayList<>();
    for (double[] r : read) {
      points.add(new WalkReadings.Point(r[0], false, Math.log(r[1]), SUPPLY, amps(r)));
    }
    return points;
  }

  /** I = I idle + 2 V²/R over η Vs. */
  private static double amps(double[] read) {
    return IDLE.amps() + 2 * read[1] * read[1] / read[0] / (read[2] * SUPPLY);
  }
}
