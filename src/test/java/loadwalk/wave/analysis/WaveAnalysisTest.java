package loadwalk.wave.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.Rows;
import loadwalk.wave.WaveReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WaveAnalysisTest {
  private static final double RATE = 48_000;

  private static double thd(WaveReading reading) {
    return reading.thd().orElseThrow().value();
  }

  /** What is wanted: 40 Hz, 2 s, off the bins, noise at -80 dB, 0.1 % wow. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.01, 0.02, 0.05, 0.1, 0.3, 1, 3, 10, 30, 50})
  void thd_isWithinOnePercent_orTwoThousandths(double percent) throws Exception {
    for (int run = 0; run < 8; run++) {
      long seed = 1000 + run;
      Random random = new Random(seed);
      double[] amplitude = new double[11];
      double[] phase = new double[11];
      double squares = 0;
      for (int n = 2; n <= 10; n++) {
        amplitude[n] = random.nextDouble() / n;
        phase[n] = 2 * Math.PI * random.nextDouble();
        squares += amplitude[n] * amplitude[n];
      }
      double scale = percent / 100 / Math.sqrt(squares);
      double hertz = 39.9 + 0.2 * random.nextDouble();
      double swing = 0.4 + 4 * random.nextDouble();
      double[] row =
          Rows.swingingWave(
              RATE,
              2,
              hertz,
              0.001,
              swing,
              0.5 / Math.sqrt(2) * 1e-4,
              seed,
              x -> {
                double y = Math.sin(x);
                for (int n = 2; n <= 10; n++) {
                  y += scale * amplitude[n] * Math.sin(n * x + phase[n]);
                }
                return 0.5 * y + 0.01;
              });
      WaveReading reading = Rows.reading(RATE, row);
      String which = percent + " %, seed " + seed + ", wow at " + swing + " Hz";
      assertEquals(percent, thd(reading), Math.max(0.01 * percent, 0.002), which);
      double rms = 0.5 * Math.sqrt(0.5 * (1 + percent * percent / 1e4) + 0.5e-8);
      assertEquals(rms, reading.output().value(), 1e-4 * rms, which);
      assertEquals(0.01, reading.dc().value(), 1e-4, which);
    }
  }

  /** What is wanted: within 1 ppm at 60 dB; the signal is distorted and off the bins too. */
  @ParameterizedTest
  @ValueSource(doubles = {40.013, 50, 100.37, 999.21, 4321.1})
  void frequency_isWithinOnePartPerMillion(double hertz) throws Exception {
    int withinThreeU = 0;
    for (int run = 0; run < 8; run++) {
      long seed = 50 + run;
      double[] row =
          Rows.swingingWave(
              RATE,
              2,
              hertz,
              0,
              1,
              0.5 / Math.sqrt(2) * 1e-3,
              seed,
              x -> 0.5 * Math.sin(x) + 0.01 * Math.sin(2 * x) + 0.02 * Math.sin(3 * x + 1));
      WaveReading reading = Rows.reading(RATE, row);
      assertEquals(hertz, reading.frequency().value(), 1e-6 * hertz, "seed " + seed);
      double off = Math.abs(hertz - reading.frequency().value());
      withinThreeU += off <= 3 * reading.frequency().u() ? 1 : 0;
    }
    assertTrue(withinThreeU >= 7, "within three u: " + withinThreeU + " of 8");
  }

  @Test
  void noise_isToldApartFromHarmonics() throws Exception {
    double[] row =
        Rows.swingingWave(
            RATE, 2, 40.03, 0, 1, 0.001, 9, x -> Math.sin(x) * 0.9 + 0.009 * Math.sin(2 * x));
    WaveReading reading = Rows.reading(RATE, row);
    assertEquals(1, thd(reading), 0.002);
    assertEquals(0.001, reading.noiseVolts(), 2e-5);
    double both = Math.sqrt(1 + Math.pow(0.1 * Math.sqrt(2) / 0.9, 2));
    assertEquals(both, reading.thdNoise().value(), 0.003);
    assertEquals(1, reading.harmonics().get(0).percent(), 0.002);
    assertEquals(80.06, reading.harmonics().get(0).hertz(), 1e-3);
    assertEquals(0, reading.harmonics().get(1).percent(), 0.002);
  }

  /** Polynomial of the reference: a3 = -0.04 gives HD3 of 1.030928 %. */
  @Test
  void cubicPolynomial_meetsItsClosedForm() throws Exception {
    double[] row = Rows.wave(RATE, 2, 50.02, x -> poly(Math.sin(x)));
    assertEquals(1.030928, thd(Rows.reading(RATE, row)), 0.0005);
  }

  private static double poly(double x) {
    return x - 0.04 * x * x * x;
  }

  @Test
  void fewPeriods_areFittedByLeastSquares() throws Exception {
    double[] row =
        Rows.swingingWave(
            25_000, 0.1, 40.7, 0, 1, 0.01, 3, x -> 20 * Math.sin(x) + 0.4 * Math.sin(3 * x) + 1);
    WaveReading reading = Rows.reading(25_000, row);
    assertTrue(reading.method().contains("least-squares"), reading.method());
    assertEquals(40.7, reading.frequency().value(), 0.002);
    assertEquals(2, thd(reading), 0.01);
    assertEquals(Math.sqrt(200.08), reading.output().value(), 0.003);
    assertEquals(1, reading.dc().value(), 0.003);
    assertEquals(0.01, reading.noiseVolts(), 0.001);
  }

  @Test
  void calibration_scalesEverything() throws Exception {
    double[] row = Rows.wave(RATE, 2, 40.1, x -> 0.5 * Math.sin(x) + 0.1);
    Calibration calibration = Calibration.fullScale(2, 21).withRelativeU(0.01);
    WaveReading reading = WaveAnalysis.of(Rows.source(RATE, row), 1, calibration);
    double volts = 21 / Math.sqrt(2);
    assertEquals(volts, reading.output().value(), 1e-4 * volts);
    assertEquals(0.01 * volts, reading.output().u(), 1e-3 * volts);
    assertEquals(21, reading.peakVolts(), 0.01);
    assertEquals(4.2, reading.dc().value(), 0.001);
    assertEquals(Math.sqrt(2), reading.crestFactor(), 0.001);
    double known = Calibration.knownVoltage(20, 0.5).voltsPerUnit();
    assertEquals(40, known);
  }

  @Test
  void leadingSilence_andOtherLevels_areNotAveragedIn() throws Exception {
    double[] tone = Rows.wave(RATE, 5, 40.1, x -> 0.5 * Math.sin(x));
    double[] row = new double[(int) (20 * RATE)];
    System.arraycopy(tone, 0, row, (int) (12 * RATE), tone.length);
    for (int i = 0; i < RATE; i++) {
      row[(int) (18 * RATE) + i] = 0.8 * Math.sin(i * 0.005);
    }
    WaveReading reading = Rows.reading(RATE, row);
    assertEquals(0.5 / Math.sqrt(2), reading.output().value(), 1e-4);
    assertTrue(reading.notes().toString().contains("s are silent"), reading.notes().toString());
    assertTrue(reading.notes().toString().contains("level moves"), reading.notes().toString());
  }

  @Test
  void whatHoldsNoTone_getsASentence() {
    assertSentence("holds no samples", new double[0]);
    assertSentence("only 1 samples", new double[] {0.3});
    assertSentence("silent", new double[50_000]);
    assertSentence("DC only", Rows.wave(RATE, 1, 40, x -> 0.25));
    Random random = new Random(8);
    assertSentence("No tone", Rows.wave(RATE, 2, 40, x -> 0.1 * random.nextGaussian()));
    assertSentence("less than two periods", Rows.wave(RATE, 0.03, 40, Math::sin));
  }

  private static void assertSentence(String part, double[] row) {
    CaptureException e = assertThrows(CaptureException.class, () -> Rows.reading(RATE, row));
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  @Test
  void wrongChannel_getsASentence() {
    CaptureException e =
        assertThrows(
            CaptureException.class,
            () -> WaveAnalysis.of(Rows.source(RATE, new double[9]), 2, Calibration.NONE));
    assertEquals("There is no channel 2: the capture has 1.", e.getMessage());
  }
}
