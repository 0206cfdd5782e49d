package loadwalk.wave.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import loadwalk.wave.file.WavReader;
import loadwalk.wave.tone.MonoWav;
import org.junit.jupiter.api.Test;

/** Readings of a live input, ten a second. */
class LiveMeterTest {
  private static final int RATE = 48_000;
  private static final OptionalDouble STEP = OptionalDouble.of(Math.scalb(1.0, -15));

  /** Hears two seconds in blocks of an odd size. */
  private static List<LiveReading> heard(double expectedHertz, DoubleUnaryOperator wave) {
    LiveMeter meter = new LiveMeter(RATE, expectedHertz, STEP);
    List<LiveReading> readings = new ArrayList<>();
    double[] block = new double[1777];
    for (int from = 0; from + block.length <= 2 * RATE; from += block.length) {
      for (int i = 0; i < block.length; i++) {
        double code = Math.rint(wave.applyAsDouble((double) (from + i) / RATE) * 32768);
        block[i] = Math.max(-32768, Math.min(32767, code)) / 32768;
      }
      meter.accept(block, block.length).ifPresent(readings::add);
    }
    return readings;
  }

  private static double sine(double hertz, double seconds) {
    return Math.sin(2 * Math.PI * hertz * seconds);
  }

  @Test
  void twoSeconds_giveTenReadingsASecond_onceABlockIsFull() {
    List<LiveReading> readings = heard(40, t -> 0.5 * sine(40, t));
    assertEquals(17, readings.size());
    for (LiveReading r : readings) {
      assertEquals(0.5 / Math.sqrt(2), r.rms(), 1e-4);
      assertEquals(40, r.hertz().orElseThrow(), 0.02);
      assertTrue(r.thdPercent().orElseThrow() < 0.02, () -> r.thdPercent() + " %");
      assertFalse(r.top() || r.bottom() || r.overdriven());
    }
  }

  /** y = x − 0.1x³ at x = A sin: H3/H1 = 0.025A²/(1 − 0.075A²). */
  @Test
  void knownDistortion_isShown_atTheToneThatIsThere() {
    double amplitude = 0.7;
    double square = amplitude * amplitude;
    double thd = 100 * 0.025 * square / (1 - 0.075 * square);
    for (double hertz : new double[] {40.3, 50, 400, 1000}) {
      List<LiveReading> readings =
          heard(
              40,
              t -> {
                double x = amplitude * sine(hertz, t);
                return x - 0.1 * x * x * x;
              });
      LiveReading last = readings.get(readings.size() - 1);
      assertEquals(thd, last.thdPercent().orElseThrow(), 0.02 * thd, hertz + " Hz");
      assertEquals(hertz, last.hertz().orElseThrow(), 1e-3 * hertz);
    }
  }

  @Test
  void clippingLight_namesTheSide_andTheInputsOwnEnd() {
    LiveReading top = heard(40, t -> Math.min(0.4, 0.5 * sine(40, t))).get(5);
    assertTrue(top.top() && !top.bottom() && !top.overdriven(), top::toString);
    LiveReading both = heard(40, t -> Math.max(-0.45, Math.min(0.45, 0.5 * sine(40, t)))).get(5);
    assertTrue(both.top() && both.bottom() && !both.overdriven(), both::toString);
    LiveReading input = heard(40, t -> 1.3 * sine(40, t)).get(5);
    assertTrue(input.overdriven(), input::toString);
  }

  @Test
  void silenceDcAndTooLowATone_showNoThd() {
    assertTrue(heard(40, t -> 0).get(5).thdPercent().isEmpty());
    assertTrue(heard(40, t -> 0.3).get(5).hertz().isEmpty());
    LiveReading low = heard(40, t -> 0.5 * sine(20, t)).get(5);
    assertTrue(low.thdPercent().isEmpty(), low::toString);
  }

  @Test
  void picture_beginsAtARisingCrossing_andHoldsTwoPeriods() {
    List<Double> picture = heard(40, t -> 0.5 * sine(40, t + 0.003)).get(7).picture();
    assertEquals(160, picture.size());
    assertEquals(0, picture.get(0), 0.01);
    assertEquals(0.5, picture.get(20), 0.01);
    assertEquals(0, picture.get(159), 0.02);
  }

  @Test
  void heldSamples_areTheSameAgainFromTheirFile() throws Exception {
    float[] samples = new float[4800];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (float) (Math.rint(32768 * 0.9 * sine(40, i / 48_000.0)) / 32768);
    }
    WavReader reader = WavReader.open(new ByteArrayInputStream(MonoWav.of(samples, RATE)));
    double[][] block = new double[1][samples.length];
    assertEquals(samples.length, reader.read(block));
    assertEquals(RATE, reader.samplesPerSecond());
    for (int i = 0; i < samples.length; i++) {
      assertTrue(samples[i] == block[0][i], "sample " + i);
    }
  }
}
