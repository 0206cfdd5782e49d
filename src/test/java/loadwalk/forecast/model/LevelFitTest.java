package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.SplittableRandom;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class LevelFitTest {
  private static final long SEED = 20260101;

  /** NIST StRD, univariate statistics, data set Michelso: certified mean. */
  @Test
  void level_ofIndependentErrors_isTheCertifiedMean() throws IOException {
    double[] data;
    try (InputStream in = open("/reference/nist-strd/Michelso.csv")) {
      data =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> line.matches("[-0-9.]+.*"))
              .mapToDouble(line -> Double.parseDouble(line.split(",")[0]))
              .toArray();
    }
    JsonNode certified;
    try (InputStream in = open("/reference/nist-strd/certified.json")) {
      certified = new ObjectMapper().readTree(in).get("Michelso");
    }
    LevelFit fit = new LevelFit(identity(data.length));
    double mean = certified.findValue("mean").asDouble();
    assertEquals(mean, fit.level(data), 1e-12 * mean);
    double n = data.length;
    LevelFit.Prediction next = fit.toward(new double[data.length], 1);
    assertEquals(1 + 1 / n, next.variance(), 1e-12);
    assertEquals(mean, next.mean(data), 1e-12 * mean);
    double s = certified.findValue("sd").asDouble();
    assertEquals(s * s * (n - 1), fit.squares(data), 1e-8);
  }

  @Test
  void level_ofCorrelatedErrors_agreesWithAGeneralLeastSquaresLibrary() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 50; round++) {
      int n = 2 + random.nextInt(12);
      double[][] covariance = covariance(random, n);
      double[] e = random.doubles(n).toArray();
      GLSMultipleLinearRegression library = new GLSMultipleLinearRegression();
      library.setNoIntercept(true);
      double[][] ones = new double[n][1];
      for (double[] row : ones) {
        row[0] = 1;
      }
      library.newSampleData(e, ones, covariance);
      LevelFit fit = new LevelFit(covariance);
      String what = "seed " + SEED + ", round " + round;
      assertEquals(library.estimateRegressionParameters()[0], fit.level(e), 1e-9, what);
      double chi = n < 2 ? 0 : library.estimateErrorVariance() * (n - 1);
      assertEquals(chi, fit.squares(e), 1e-7 * Math.max(1, chi), what);
    }
  }

  @Test
  void toward_anOldValueAgain_givesItBack() {
    double[][] covariance = {{2, 0.5}, {0.5, 1}};
    LevelFit fit = new LevelFit(covariance);
    LevelFit.Prediction again = fit.toward(new double[] {2, 0.5}, 2);
    assertArrayEquals(new double[] {1, 0}, again.weights(), 1e-12);
    assertEquals(0, again.variance(), 1e-12);
  }

  /** Independent readings of variance s²: |C| = s²ⁿ, and a level known to s²/n. */
  @Test
  void logVolume_ofIndependentReadings_isKnown() {
    double[][] covariance = {{0.04, 0, 0}, {0, 0.04, 0}, {0, 0, 0.04}};
    assertEquals(
        3 * Math.log(0.04) + Math.log(3 / 0.04), new LevelFit(covariance).logVolume(), 1e-12);
  }

  /** A value that goes with no old one is the level, known as well as the level is. */
  @Test
  void toward_aValueOfItsOwn_isTheLevel() {
    double[][] covariance = {{2, 0.5}, {0.5, 1}};
    LevelFit fit = new LevelFit(covariance);
    double[] e = {3, 5};
    LevelFit.Prediction own = fit.toward(new double[2], 1);
    assertEquals(fit.level(e), own.mean(e), 1e-12);
    double levelVariance = (2 * 1 - 0.25) / (2 + 1 - 2 * 0.5);
    assertEquals(1 + levelVariance, own.variance(), 1e-12);
  }

  private static double[][] identity(int n) {
    double[][] matrix = new double[n][n];
    for (int i = 0; i < n; i++) {
      matrix[i][i] = 1;
    }
    return matrix;
  }

  private static double[][] covariance(SplittableRandom random, int n) {
    double[][] matrix = identity(n);
    for (int part = 0; part < 3; part++) {
      double[] v = random.doubles(n).toArray();
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          matrix[i][j] += v[i] * v[j];
        }
      }
    }
    return matrix;
  }

  private static InputStream open(String name) {
    return Objects.requireNonNull(LevelFitTest.class.getResourceAsStream(name), name);
  }
}
