package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.forecast.NormalAlgebra;
import org.junit.jupiter.api.Test;

/** A line of ln v over ln x below a limit, against the algebra of normals in a library. */
class LimitedShapeTest {
  private static final double SCATTER = 0.0065;
  private static final double[] SCALES = LimitedShape.SCALES;
  private static final double[] SCALE_PRIORS = LimitedShape.SCALE_PRIORS;
  private static final double WALK = LimitedShape.WALK;
  private static final double BRIDGE = LimitedShape.BRIDGE;
  private static final double WIDE = 25;
  private static final double MIDDLE = Math.log(12);
  private static final double LEAST = 0.8;
  private static final double HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);

  /** Ohms of the channel, its volts, 1 where bridged: a current limit of 12 A. */
  private static final double[][] LIMITED = {{1, 12, 0}, {0.5, 6.1, 0}, {0.5, 6.0, 1}};

  private static final List<WalkReadings.Point> FREE =
      List.of(point(4, 20, false), point(2, 19.5, false));
  private final SmoothShape above =
      new SmoothShape(
          new RatingPrior(Amplifier.named("Brightmoor", "B2"), 13.8, 0.4),
          FREE,
          new double[2],
          0,
          SCATTER);

  @Test
  void predict_alongTheLimit_agreesWithTheLibrary() {
    for (double slope : new double[] {0.5, 1}) {
      assertLibrary(slope, 0.25, false);
      assertLibrary(slope, 0.25, true);
      assertLibrary(slope, 0.7, true);
    }
  }

  private static void assertLibrary(double slope, double ohms, boolean bridged) {
    LimitedShape shape = new LimitedShape(points(LIMITED), slope, SCATTER);
    double total = 0;
    double mean = 0;
    double square = 0;
    for (int s = 0; s < SCALES.length; s++) {
      double errors = SCALES[s] * SCALES[s];
      NormalAlgebra told = told(slope, ohms, bridged, errors);
      double weight = SCALE_PRIORS[s] * told.density();
      double middle = MIDDLE + told.mean() + slope * Math.log(ohms);
      total += weight;
      mean += weight * middle;
      square += weight * (middle * middle + told.variance() + errors * SCATTER * SCATTER);
    }
    mean /= total;
    Mixture found = shape.predict(ohms, bridged, 0);
    assertEquals(mean, found.mean(), 1e-5);
    double deviation = Math.sqrt(square / total - mean * mean);
    assertEquals(deviation, found.deviation(), 1e-3 * deviation);
    double evidence = Math.log(total) + 0.5 * Math.log(WIDE) + LIMITED.length * HALF_LOG_TWO_PI;
    assertEquals(evidence, shape.logEvidence(), 4e-3);
  }

  private static NormalAlgebra told(double slope, double ohms, boolean bridged, double errors) {
    int n = LIMITED.length;
    double[][] covariance = new double[n][n];
    double[] y = new double[n];
    double[] toward = new double[n];
    for (int i = 0; i < n; i++) {
      boolean own = LIMITED[i][2] > 0;
      for (int j = 0; j < n; j++) {
        covariance[i][j] =
            WIDE + errors * shared(LIMITED[i][0], LIMITED[j][0], own && LIMITED[j][2] > 0);
      }
      covariance[i][i] += errors * SCATTER * SCATTER;
      y[i] = Math.log(LIMITED[i][1]) - MIDDLE - slope * Math.log(LIMITED[i][0]);
      toward[i] = WIDE + errors * shared(LIMITED[i][0], ohms, own && bridged);
    }
    return NormalAlgebra.of(covariance, y, toward, WIDE + errors * shared(ohms, ohms, bridged));
  }

  private static double shared(double ohms, double other, boolean bothBridged) {
    double octaves = Math.max(0, Math.log(16 / Math.max(ohms, other)) / Math.log(2));
    return WALK * WALK * octaves + (bothBridged ? BRIDGE * BRIDGE : 0);
  }

  /** A line that begins in the gap between the loads is as likely anywhere in it. */
  @Test
  void evidence_countsWhereTheLineBegins_evenlyWithinTheGap() {
    double top = above.predict(LEAST, false, 0).mean();
    double bottom = above.predict(2, false, 0).mean() - Math.log(2 / LEAST);
    double even = -Math.log(top - bottom);
    assertEquals(even, onset((top + bottom) / 2, 1), 1e-6);
    assertEquals(even, onset(top - 0.01, 1), 1e-6);
    double edge = 2 * LimitedShape.GAP_EDGE;
    assertEquals(even - 0.5 * 4, onset(top + edge, 1), 1e-6, "two deviations above the gap");
    assertEquals(even - 0.5 * 4, onset(bottom - edge, 1), 1e-6, "two deviations below it");
  }

  /** A slope that the volts above fall by themselves leaves no gap to begin in. */
  @Test
  void evidence_ofALineThatHardlyFalls_isBounded() {
    double top = above.predict(LEAST, false, 0).mean();
    double bottom = above.predict(2, false, 0).mean();
    assertTrue(bottom - 0.01 * Math.log(2 / LEAST) > top);
    assertEquals(-Math.log(LimitedShape.LEAST_GAP), onset(top, 0.01) + beyond(top, 0.01), 1e-6);
  }

  private double beyond(double begin, double slope) {
    double bottom = above.predict(2, false, 0).mean() - slope * Math.log(2 / LEAST);
    return 0.5 * Math.pow((bottom - begin) / LimitedShape.GAP_EDGE, 2);
  }

  /** What is left of the evidence when that of the parts above and below is taken off. */
  private double onset(double logVolts, double slope) {
    List<WalkReadings.Point> below = List.of(point(LEAST, Math.exp(logVolts), false));
    LimitedShape both = new LimitedShape(above, 2, below, slope, SCATTER);
    LimitedShape alone = new LimitedShape(below, slope, SCATTER);
    return both.logEvidence() - above.logEvidence() - alone.logEvidence() - HALF_LOG_TWO_PI;
  }

  @Test
  void predict_fromTheLoadsAboveOn_isTheirs_andHalfWayIsBoth() {
    List<WalkReadings.Point> below = List.of(point(LEAST, 9.6, false), point(0.5, 6.1, false));
    LimitedShape both = new LimitedShape(above, 2, below, 1, SCATTER);
    LimitedShape alone = new LimitedShape(below, 1, SCATTER);
    assertSame(above.predict(2, false, 0.01), both.predict(2, false, 0.01));
    assertSame(above.predict(1.95, false, 0), both.predict(1.95, false, 0));
    assertSame(alone.predict(0.82, false, 0), both.predict(0.82, false, 0));
    assertSame(alone.predict(0.3, false, 0), both.predict(0.3, false, 0));
    for (double ohms : new double[] {0.83, 1.4, 1.93}) {
      double middle =
          (above.predict(ohms, false, 0).mean() + alone.predict(ohms, false, 0).mean()) / 2;
      assertEquals(middle, both.predict(ohms, false, 0).mean(), 1e-6, ohms + " ohms");
    }
  }

  @Test
  void scale_isThatOfTheLoadsAbove_orUsual() {
    List<WalkReadings.Point> below = List.of(point(1, 12, false));
    LimitedShape both = new LimitedShape(above, 2, below, 0.5, SCATTER);
    assertEquals(above.scale(), both.scale());
    assertEquals(0.5, both.slope());
    assertEquals(1, new LimitedShape(below, 0.5, SCATTER).scale());
  }

  /** Readings that no scale explains are impossible on the line, and widest. */
  @Test
  void readingsFarOffTheLine_areImpossible() {
    LimitedShape shape =
        new LimitedShape(List.of(point(1, 12, false), point(0.99, 90, false)), 1, SCATTER);
    assertEquals(Double.NEGATIVE_INFINITY, shape.logEvidence());
    assertTrue(shape.predict(0.5, false, 0).deviation() > 0.05);
  }

  private static void assertSame(Mixture expected, Mixture actual) {
    assertEquals(expected.mean(), actual.mean(), 1e-12);
    assertEquals(expected.deviation(), actual.deviation(), 1e-12);
  }

  private static List<WalkReadings.Point> points(double[][] read) {
    List<WalkReadings.Point> points = new ArrayList<>();
    for (double[] r : read) {
      points.add(point(r[0], r[1], r[2] > 0));
    }
    return points;
  }

  private static WalkReadings.Point point(double ohms, double volts, boolean bridged) {
    return new WalkReadings.Point(ohms, bridged, Math.log(volts), Double.NaN, Double.NaN);
  }
}
