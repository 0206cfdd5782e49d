package loadwalk.wave.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.Rows;
import loadwalk.wave.tone.Tone;
import org.junit.jupiter.api.Test;

class LimitFinderTest {
  private static final double RATE = 48_000;
  private static final DoubleUnaryOperator SOFT = x -> Math.tanh(x + 0.05) - Math.tanh(0.05);
  private static final DoubleUnaryOperator CUBIC = x -> x - 0.1 * x * x * x;
  private static final DoubleUnaryOperator HARD = x -> Rows.clip(x, -0.6, 0.6);

  private static final double[] SINES =
      IntStream.range(0, 4000).mapToDouble(i -> Math.sin(2 * Math.PI * i / 4000)).toArray();

  /** Solves for the rms at a THD on a dense period, by bisection of the drive. */
  private static double denseRms(DoubleUnaryOperator amplifier, double percent) {
    double low = 0.01;
    double high = 1.2;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (thdAndRms(amplifier, middle)[0] < percent) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return thdAndRms(amplifier, low)[1];
  }

  private static double[] thdAndRms(DoubleUnaryOperator amplifier, double drive) {
    int n = SINES.length;
    double[] re = new double[11];
    double[] im = new double[11];
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double y = amplifier.applyAsDouble(drive * SINES[i]);
      sum += y / n;
      squares += y * y / n;
      for (int h = 1; h <= 10; h++) {
        re[h] += y * SINES[(h * i + n / 4) % n];
        im[h] += y * SINES[h * i % n];
      }
    }
    double harmonics = 0;
    for (int h = 2; h <= 10; h++) {
      harmonics += re[h] * re[h] + im[h] * im[h];
    }
    double thd = 100 * Math.sqrt(harmonics / (re[1] * re[1] + im[1] * im[1]));
    return new double[] {thd, Math.sqrt(squares - sum * sum)};
  }

  private static double[] ramp(
      DoubleUnaryOperator amplifier, double hertz, double seconds, double from, double noise) {
    Random random = new Random(17);
    double[] row = new double[(int) (seconds * RATE)];
    for (int i = 0; i < row.length; i++) {
      double drive = from * Math.pow(1 / from, (double) i / row.length);
      double in = drive * Math.sin(2 * Math.PI * hertz * i / RATE + 1);
      row[i] = 0.7 * amplifier.applyAsDouble(in) + noise * random.nextGaussian();
    }
    return row;
  }

  private static LimitFinding find(double[] row, double limit) throws Exception {
    return LimitFinder.find(Rows.source(RATE, row), 1, limit, Calibration.fullScale(10, 1));
  }

  private static LimitFinding.Found found(double[] row, double limit) throws Exception {
    return assertInstanceOf(LimitFinding.Found.class, find(row, limit));
  }

  /** What is wanted: within 0.2 % in volts. */
  @Test
  void risingTone_isFoundWithinTwoThousandths() throws Exception {
    for (DoubleUnaryOperator amplifier : List.of(SOFT, CUBIC, HARD)) {
      for (double hertz : new double[] {40.3, 1000}) {
        double[] row = ramp(amplifier, hertz, 10, 0.05, 3e-5);
        for (double limit : new double[] {0.5, 1, 3}) {
          double expected = 7 * denseRms(amplifier, limit);
          if (amplifier == CUBIC && limit == 3) {
            continue;
          }
          LimitFinding.Found at = found(row, limit);
          String which = hertz + " Hz, " + limit + " %, " + at;
          assertEquals(expected, at.output().value(), 0.002 * expected, which);
          assertTrue(at.output().u() < 0.002 * expected, which);
          assertEquals(Cycle.POINTS, at.cycle().size());
        }
      }
    }
  }

  @Test
  void steppedTone_isInterpolatedBetweenItsSteps() throws Exception {
    List<Double> levels = DoubleStream.iterate(-24, l -> l <= 0, l -> l + 1).boxed().toList();
    Tone tone = Tone.stepped(40, levels, 48_000, 1, 0.02);
    double[] row = new double[(int) tone.frames()];
    for (int i = 0; i < row.length; i++) {
      row[i] = 0.7 * SOFT.applyAsDouble(tone.at(i));
    }
    LimitFinding.Found at = found(row, 1);
    double expected = 7 * denseRms(SOFT, 1);
    assertEquals(expected, at.output().value(), 0.002 * expected);
    assertEquals(expected, at.output().value(), 2 * at.output().u());
    assertEquals("interpolation of log THD between two levels", at.method());
  }

  @Test
  void quietStartFullOfNoise_isNotTakenForTheLimit() throws Exception {
    double[] row = ramp(SOFT, 40.3, 20, 0.005, 0.0012);
    double expected = 7 * denseRms(SOFT, 1);
    assertEquals(expected, found(row, 1).output().value(), 0.01 * expected);
  }

  @Test
  void limitOutsideTheCapture_getsASentence() throws Exception {
    LimitFinding.NotFound never =
        assertInstanceOf(LimitFinding.NotFound.class, find(ramp(x -> x, 40, 4, 0.05, 3e-5), 1));
    assertTrue(never.sentence().startsWith("THD does not reach 1.00 %"), never.sentence());
    double[] steady = Rows.wave(RATE, 4, 40, x -> Rows.clip(Math.sin(x), -0.7, 0.7));
    LimitFinding.NotFound always = assertInstanceOf(LimitFinding.NotFound.class, find(steady, 1));
    assertTrue(always.sentence().startsWith("THD is above 1.00 %"), always.sentence());
    assertThrows(CaptureException.class, () -> find(steady, Double.NaN));
  }
}
