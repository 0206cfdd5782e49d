package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.Battery;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/** The line Vs = V0 − R I with normal priors, against a library's least squares. */
class SagModelTest {
  private static final double SET = 13.8;
  private static final double USUAL_AMPS = 20;
  private static final double BASE = SagModel.SCATTER * SET;
  private static final double[][] READ = {{1.4, 13.78}, {14, 13.55}, {27, 13.36}, {52, 12.95}};

  /**
   * Each prior is one more row: V0 at the setting, R I at the usual current. The scatter is known
   * with 9 degrees of freedom: t = 2.262, of 5: 2.571 (JCGM 100:2008, table G.2, there to two
   * decimals; the others from memory).
   */
  @Test
  void line_agreesWithALibrary_thatTakesThePriorsAsReadings() {
    SagModel model = model(READ);
    OLSMultipleLinearRegression library = library(READ);
    double[] line = library.estimateRegressionParameters();
    double[][] inverse = library.estimateRegressionParametersVariance();
    double squares = SagModel.PRIOR_FREEDOM * BASE * BASE;
    for (double[] read : READ) {
      squares += Math.pow(read[1] - (line[0] - line[1] * read[0]), 2);
    }
    double t = 2.262157 / 1.959964;
    double scatter = squares / (SagModel.PRIOR_FREEDOM + READ.length) * t * t;
    for (double amps : new double[] {0, 20, 80}) {
      assertEquals(line[0] - line[1] * amps, model.volts(amps), 1e-9);
      double ofLine = inverse[0][0] - 2 * amps * inverse[0][1] + amps * amps * inverse[1][1];
      assertEquals(Math.sqrt(ofLine + scatter), model.deviation(amps, 0), 5e-4);
      double through = line[1] * 3;
      assertEquals(Math.sqrt(ofLine + scatter + through * through), model.deviation(amps, 3), 5e-4);
    }
  }

  @Test
  void line_withoutReadings_sagsAsSuppliesDo() {
    SagModel model = model(new double[0][]);
    assertEquals(SET, model.volts(0), 1e-9);
    assertEquals(SET - SagModel.USUAL_SAG, model.volts(USUAL_AMPS), 1e-9);
    double ofLine = Math.pow(SagModel.SET_SPREAD, 2) + Math.pow(SagModel.USUAL_SAG_SPREAD, 2);
    double t = 2.570582 / 1.959964;
    assertEquals(Math.sqrt(ofLine + t * t * BASE * BASE), model.deviation(USUAL_AMPS, 0), 5e-4);
  }

  @Test
  void readingsWithoutBoth_orOfNothing_tellNoLine() {
    List<Observation> walk = new ArrayList<>(walk(READ));
    walk.add(new Observation(Amplifiers.STEREO_1, Map.of(ReadingId.SUPPLY_VOLTS, 9.0)));
    walk.add(new Observation(Amplifiers.STEREO_1, Map.of(ReadingId.SUPPLY_AMPS, 90.0)));
    walk.addAll(walk(new double[][] {{40, 0}, {-1, 9}}));
    assertSame(model(READ), new SagModel(evidence(walk), USUAL_AMPS, SagModelTest::read));
  }

  @Test
  void currentOfNothing_tellsTheVoltsUnloaded() {
    SagModel unloaded = model(new double[][] {{0, 13.5}});
    assertTrue(unloaded.volts(0) < 13.7, String.valueOf(unloaded.volts(0)));
  }

  /** A supply has no negative resistance, and below half its setting nothing is told. */
  @Test
  void volts_neverRiseWithTheCurrent_norFallBelowHalf() {
    SagModel rising = model(new double[][] {{1, 13.2}, {20, 13.8}, {50, 14.2}});
    assertEquals(rising.volts(0), rising.volts(60), 1e-12);
    assertEquals(SET / 2, model(READ).volts(5000));
  }

  /** A battery starts at its own volts and falls by its own resistance besides the usual sag. */
  @Test
  void battery_sagsByItsOwnResistance() {
    Battery battery = new Battery(12.7, new Battery.Milliohms(6), OptionalDouble.empty());
    Evidence bare = evidence(List.of());
    Bench bench =
        new Bench(
            "b",
            List.of(Supply.of(battery)),
            List.of(),
            OptionalDouble.empty(),
            List.of(),
            List.of(),
            1);
    Evidence onBattery =
        new Evidence(bare.amplifier(), bench, bare.conditions(), bare.observations());
    SagModel model = new SagModel(onBattery, USUAL_AMPS, SagModelTest::read);
    assertEquals(12.7, model.volts(0), 1e-9);
    assertEquals(12.7 - SagModel.USUAL_SAG - 20 * 0.006, model.volts(20), 1e-9);
  }

  private static void assertSame(SagModel expected, SagModel actual) {
    assertEquals(expected.volts(30), actual.volts(30), 1e-12);
    assertEquals(expected.deviation(30, 2), actual.deviation(30, 2), 1e-12);
  }

  private static OLSMultipleLinearRegression library(double[][] read) {
    double sag = SagModel.USUAL_SAG_SPREAD / USUAL_AMPS;
    double[] y = new double[read.length + 2];
    double[][] x = new double[read.length + 2][];
    y[0] = SET / SagModel.SET_SPREAD;
    x[0] = new double[] {1 / SagModel.SET_SPREAD, 0};
    y[1] = SagModel.USUAL_SAG / USUAL_AMPS / sag;
    x[1] = new double[] {0, 1 / sag};
    for (int i = 0; i < read.length; i++) {
      y[i + 2] = read[i][1] / BASE;
      x[i + 2] = new double[] {1 / BASE, -read[i][0] / BASE};
    }
    OLSMultipleLinearRegression library = new OLSMultipleLinearRegression();
    library.setNoIntercept(true);
    library.newSampleData(y, x);
    return library;
  }

  private static SagModel model(double[][] read) {
    return new SagModel(evidence(walk(read)), USUAL_AMPS, SagModelTest::read);
  }

  private static double read(Observation observation) {
    return observation.reading(ReadingId.SUPPLY_AMPS).orElse(Double.NaN);
  }

  private static Evidence evidence(List<Observation> walk) {
    return Amplifiers.evidence(Amplifiers.rated(50), walk);
  }

  private static List<Observation> walk(double[][] read) {
    List<Observation> walk = new ArrayList<>();
    for (double[] pair : read) {
      walk.add(
          new Observation(
              Amplifiers.STEREO_4,
              Map.of(ReadingId.SUPPLY_AMPS, pair[0], ReadingId.SUPPLY_VOLTS, pair[1])));
    }
    return walk;
  }
}
