package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.forecast.NormalAlgebra;
import org.junit.jupiter.api.Test;

/** The posterior over E, r and the scale of the errors, against brute force on a fine grid. */
class SmoothShapeTest {
  private static final RatingPrior PRIOR =
      new RatingPrior(Amplifier.named("Brightmoor", "B2"), 13.8, 0.4);
  private static final double SCATTER = 0.0065;
  private static final double[] SCALES = SmoothShape.SCALES;
  private static final double WALK = SmoothShape.WALK;
  private static final double BRIDGE = SmoothShape.BRIDGE;

  /** Variance of the level before, so wide that it tells nothing. */
  private static final double WIDE = 25;

  private static final double MIDDLE = Math.log(19);

  /** Ohms of the channel, its volts, 1 where bridged, supply volts. */
  private static final double[][] READ = {
    {4, 20, 0, 13.8}, {2, 19.4, 0, 13.7}, {1, 18.9, 0, 13.5}, {2, 19.7, 1, 13.65}
  };

  private static final double[][] CONTRADICTING = {
    {4, 20, 0, 13.8}, {4, 19, 0, 13.8}, {2, 19, 0, 13.7}, {1, 16, 0, 13.5}, {2, 19.7, 1, 13.65}
  };

  /** So much source resistance that its posterior is narrow and the grid must close in. */
  private static final double[][] SOFT = {
    {4, 16, 0, 13.8}, {2, 13.333, 0, 13.75}, {1, 10, 0, 13.5}, {2, 13.4, 1, 13.7}
  };

  @Test
  void predict_agreesWithBruteForce() {
    for (double kappa : new double[] {0, 1}) {
      assertBruteForce(READ, kappa, 1.5, false, 0);
      assertBruteForce(READ, kappa, 0.7, true, -0.02);
      assertBruteForce(READ, kappa, 1, false, 0.01);
      assertBruteForce(READ, kappa, 32, false, 0);
      assertBruteForce(CONTRADICTING, kappa, 3, false, 0);
      assertBruteForce(new double[][] {{4, 20, 0, 13.8}}, kappa, 2, true, 0);
    }
    assertBruteForce(SOFT, 1, 0.7, true, -0.02);
  }

  @Test
  void scale_ofContradictingReadings_isThatOfBruteForce() {
    for (double[][] read : List.of(READ, CONTRADICTING)) {
      BruteForce expected = new BruteForce(read, 0, 2, false, 0);
      assertEquals(expected.scale, shape(read, 0).scale(), 0.01 * expected.scale);
    }
    assertTrue(shape(CONTRADICTING, 0).scale() > 2 * shape(READ, 0).scale());
  }

  @Test
  void slope_ofAnAmplifierWithoutALimit_isNone() {
    assertEquals(0, shape(READ, 0).slope());
  }

  /** The widths of the parts that are merged are kept: quantiles agree too. */
  @Test
  void predict_keepsItsWidth_howeverItsPartsAreMerged() {
    for (double kappa : new double[] {0, 1}) {
      Mixture told = shape(READ, kappa).predict(0.7, false, 0);
      BruteForce expected = new BruteForce(READ, kappa, 0.7, false, 0);
      for (double p : new double[] {0.025, 0.975}) {
        assertEquals(p, expected.cumulative(told.quantile(p) - MIDDLE), 1e-3);
      }
    }
  }

  private static void assertBruteForce(
      double[][] read, double kappa, double ohms, boolean bridged, double logSupply) {
    SmoothShape shape = shape(read, kappa);
    BruteForce expected = new BruteForce(read, kappa, ohms, bridged, logSupply);
    String what = "kappa " + kappa + ", " + ohms + " ohms";
    assertEquals(expected.logEvidence(read.length), shape.logEvidence(), 0.015, what);
    Mixture told = shape.predict(ohms, bridged, logSupply);
    assertEquals(MIDDLE + expected.mean(), told.mean(), 1e-4, what);
    assertEquals(expected.deviation(), told.deviation(), 0.015 * expected.deviation(), what);
  }

  private static SmoothShape shape(double[][] read, double kappa) {
    List<WalkReadings.Point> points = new ArrayList<>();
    double[] logSupply = new double[read.length];
    for (int i = 0; i < read.length; i++) {
      points.add(
          new WalkReadings.Point(
              read[i][0], read[i][2] > 0, Math.log(read[i][1]), read[i][3], Double.NaN));
      logSupply[i] = Math.log(read[i][3] / 13.8);
    }
    return new SmoothShape(PRIOR, points, logSupply, kappa, SCATTER);
  }

  /** Sums over 350 source resistances and four scales, the level integrated as a wide normal. */
  private static final class BruteForce {
    private final List<double[]> parts = new ArrayList<>();
    private double total;
    private double scale;

    BruteForce(double[][] read, double kappa, double ohms, boolean bridged, double logSupply) {
      double step = 0.02;
      for (double log = -5.5; log < 1.6; log += step) {
        double r = Math.exp(log);
        for (int s = 0; s < SCALES.length; s++) {
          double square = SCALES[s] * SCALES[s];
          NormalAlgebra told = told(read, kappa, ohms, bridged, r, square);
          double weight =
              step
                  * Math.exp(PRIOR.logDensityOfSource(log))
                  * Math.exp(SmoothShape.LOG_SCALE_PRIORS[s])
                  * told.density();
          double mean = told.mean() - Math.log1p(r / ohms) + kappa * logSupply;
          parts.add(new double[] {weight, mean, told.variance() + square * SCATTER * SCATTER});
          total += weight;
          scale += weight * SCALES[s];
        }
      }
      scale /= total;
    }

    private static NormalAlgebra told(
        double[][] read, double kappa, double ohms, boolean bridged, double r, double square) {
      int n = read.length;
      double[][] covariance = new double[n][n];
      double[] y = new double[n];
      double[] toward = new double[n];
      for (int i = 0; i < n; i++) {
        boolean own = read[i][2] > 0;
        for (int j = 0; j < n; j++) {
          covariance[i][j] = WIDE + square * shared(read[i][0], read[j][0], own && read[j][2] > 0);
        }
        covariance[i][i] += square * SCATTER * SCATTER;
        y[i] =
            Math.log(read[i][1])
                - MIDDLE
                - kappa * Math.log(read[i][3] / 13.8)
                + Math.log1p(r / read[i][0]);
        toward[i] = WIDE + square * shared(read[i][0], ohms, own && bridged);
      }
      double before = WIDE + square * shared(ohms, ohms, bridged);
      return NormalAlgebra.of(covariance, y, toward, before);
    }

    /** The random walk starts at 16 Ω. */
    private static double shared(double ohms, double other, boolean bothBridged) {
      double octaves = Math.max(0, Math.log(16 / Math.max(ohms, other)) / Math.log(2));
      return WALK * WALK * octaves + (bothBridged ? BRIDGE * BRIDGE : 0);
    }

    /** The constants that all evidences share are left out, as the shapes do. */
    double logEvidence(int n) {
      return Math.log(total) + 0.5 * Math.log(WIDE) + 0.5 * n * Math.log(2 * Math.PI);
    }

    double mean() {
      return parts.stream().mapToDouble(p -> p[0] * p[1]).sum() / total;
    }

    double deviation() {
      double mean = mean();
      double squares =
          parts.stream().mapToDouble(p -> p[0] * (p[2] + (p[1] - mean) * (p[1] - mean))).sum();
      return Math.sqrt(squares / total);
    }

    double cumulative(double at) {
      return parts.stream()
              .mapToDouble(p -> p[0] * Normal.cumulative((at - p[1]) / Math.sqrt(p[2])))
              .sum()
          / total;
    }
  }
}
