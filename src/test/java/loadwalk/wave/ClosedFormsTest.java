package loadwalk.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.complex.Complex;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Waves whose distortion is known in closed form; sources stand in the reference files. */
class ClosedFormsTest {
  private static final double RATE = 48_000;
  private static final double HERTZ = 40.0137;
  private static final Map<String, DoubleUnaryOperator> WAVES =
      Map.of(
          "square", x -> Math.signum(Math.sin(x)),
          "triangle", x -> Math.asin(Math.sin(x)),
          "sawtooth", x -> x / (2 * Math.PI) - Math.floor(x / (2 * Math.PI)) - 0.5,
          "half_wave_rectified", x -> Math.max(0, Math.sin(x)),
          "full_wave_rectified", x -> Math.abs(Math.sin(x / 2)),
          "quasi_square_120deg", x -> Math.abs(Math.sin(x)) > 0.5 ? Math.signum(Math.sin(x)) : 0);

  private static String text(String name) throws Exception {
    try (InputStream in = ClosedFormsTest.class.getResourceAsStream("/reference/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static List<double[]> rows(String name) throws Exception {
    return text(name)
        .lines()
        .skip(1)
        .filter(line -> !line.startsWith(","))
        .map(line -> java.util.Arrays.stream(line.split(",")).limit(7))
        .map(cells -> cells.mapToDouble(Double::parseDouble).toArray())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "square",
        "triangle",
        "sawtooth",
        "half_wave_rectified",
        "full_wave_rectified",
        "quasi_square_120deg"
      })
  void closedForms_areMet_upToTen_andWithAllHarmonics(String name) throws Exception {
    JsonNode forms = new ObjectMapper().readTree(text("thd-closed-forms.json"));
    double[] row = Rows.wave(RATE, 2, HERTZ, WAVES.get(name));
    WaveReading reading = Rows.reading(RATE, row);
    double upToTen = forms.at("/band_limited_percent/" + name + "/h2..h10").asDouble();
    double all = 100 * forms.at("/thd_F/" + name).asDouble();
    assertEquals(upToTen, reading.thd().orElseThrow().value(), 0.002 * upToTen);
    // A sampled edge folds what lies above half the sample rate back: 0.1 % stays with 1200 a
    // period.
    assertEquals(all, reading.thdNoise().value(), 0.002 * all);
    // What folds back lies beside the harmonics and pulls a sawtooth's phase by 1 ppm.
    assertEquals(HERTZ, reading.frequency().value(), 2e-6 * HERTZ);
  }

  @Test
  void hardClippedSine_meetsTheTable_andIsNamed() throws Exception {
    for (double[] line : rows("thd-clipped-sine.csv")) {
      double k = line[1];
      double[] row =
          Rows.swingingWave(
              RATE,
              2,
              HERTZ,
              0.001,
              1.3,
              1e-5,
              5,
              x -> Rows.clip(0.8 * Math.sin(x) / k, -0.8, 0.8));
      WaveReading reading = Rows.reading(RATE, row);
      assertEquals(line[3], reading.thdNoise().value(), Math.max(0.01 * line[3], 0.004));
      assertEquals(0.8 * line[6], reading.output().value(), 2e-4);
      if (line[0] >= 0.3 && line[0] <= 20) {
        assertEquals(WaveShape.HARD_CLIP_BOTH, reading.shape(), "THD " + line[0]);
        double flat = Math.acos(k) / Math.PI;
        assertEquals(flat, reading.clipping().topFraction(), 0.15 * flat + 0.004);
        assertEquals(flat, reading.clipping().bottomFraction(), 0.15 * flat + 0.004);
      }
    }
  }

  @Test
  void oneSidedClip_meetsTheTable_andNamesItsSide() throws Exception {
    for (double[] line : rows("thd-onesided-clip.csv")) {
      double k = line[1];
      double[] row = Rows.wave(RATE, 2, HERTZ, x -> Math.min(Math.sin(x), k));
      WaveReading top = Rows.reading(RATE, row);
      assertEquals(line[0], top.thdNoise().value(), 0.01 * line[0]);
      assertEquals(line[3], top.dc().value(), 1e-5);
      assertEquals(line[4], top.output().value(), 1e-4);
      assertEquals(line[5], top.harmonics().get(0).percent(), 0.01 * line[5]);
      WaveReading bottom =
          Rows.reading(RATE, Rows.wave(RATE, 2, HERTZ, x -> Math.max(Math.sin(x), -k)));
      if (line[0] >= 0.3) {
        assertEquals(WaveShape.HARD_CLIP_TOP, top.shape(), "THD " + line[0]);
        assertTrue(top.clipping().top() && !top.clipping().bottom());
        assertEquals(WaveShape.HARD_CLIP_BOTTOM, bottom.shape(), "THD " + line[0]);
      }
    }
  }

  @Test
  void crossover_meetsTheTable_andIsNamed() throws Exception {
    for (double[] line : rows("thd-crossover.csv")) {
      double d = line[1];
      double[] row =
          Rows.wave(
              RATE,
              2,
              HERTZ,
              x -> Math.signum(Math.sin(x)) * Math.max(0, Math.abs(Math.sin(x)) - d));
      WaveReading reading = Rows.reading(RATE, row);
      assertEquals(line[0], reading.thdNoise().value(), 0.01 * line[0]);
      if (line[0] >= 1) {
        assertEquals(WaveShape.CROSSOVER, reading.shape(), "THD " + line[0]);
      }
    }
  }

  @Test
  void otherShapes_getOnlyTheNamesTheyEarn() throws Exception {
    assertEquals(WaveShape.CLEAN, shape(Math::sin));
    assertEquals(WaveShape.SLEWING, shape(x -> Math.asin(Math.sin(x))));
    assertEquals(WaveShape.UNNAMED, shape(x -> Math.tanh(1.2 * Math.sin(x))));
    assertEquals(WaveShape.UNNAMED, shape(x -> Math.sin(x) + 0.02 * Math.sin(2 * x)));
  }

  private static WaveShape shape(DoubleUnaryOperator wave) throws Exception {
    return Rows.reading(RATE, Rows.wave(RATE, 2, HERTZ, wave)).shape();
  }

  /** The FFT of a general-purpose library, on whole periods: no window, no shared code. */
  @Test
  void libraryFft_agrees() throws Exception {
    int n = 1 << 17;
    double hertz = 109 * RATE / n;
    double[] row = Rows.wave(RATE, n / RATE, hertz, x -> Math.tanh(0.9 * Math.sin(x) + 0.1));
    Complex[] bins =
        new FastFourierTransformer(DftNormalization.STANDARD).transform(row, TransformType.FORWARD);
    double squares = 0;
    for (int h = 2; h <= 10; h++) {
      squares += Math.pow(bins[109 * h].norm(), 2);
    }
    double expected = 100 * Math.sqrt(squares) / bins[109].norm();
    WaveReading reading = Rows.reading(RATE, row);
    assertEquals(expected, reading.thd().orElseThrow().value(), 1e-5 * expected);
    assertEquals(
        100 * bins[218].norm() / bins[109].norm(),
        reading.harmonics().get(0).percent(),
        1e-5 * expected);
  }
}
