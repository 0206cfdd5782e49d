package loadwalk.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the circuit against the textbook values of an ideal class-B stage. */
class ClassBReferenceTest {
  private static final double RAIL = 40;
  private static final SourceLine STIFF = new SourceLine(14, 0, 1e6);

  // Pushpull class B on +-Vcc, x = Vo/Vcc: eta = (pi/4) x, Pd/Pout_max = 4x/pi - x^2
  // (class-b table, computed from the textbook formulas).
  @ParameterizedTest
  @CsvSource({
    "0.100000,0.010000,7.8540,0.117324",
    "0.250000,0.062500,19.6350,0.255810",
    "0.353553,0.125000,27.7680,0.325158",
    "0.500000,0.250000,39.2699,0.386620",
    "0.636620,0.405285,50.0000,0.405285",
    "0.707107,0.500000,55.5360,0.400316",
    "0.800000,0.640000,62.8319,0.378592",
    "0.900000,0.810000,70.6858,0.335916",
    "1.000000,1.000000,78.5398,0.273240",
  })
  void classB_meetsTheTextbookTable(double x, double power, double efficiency, double heat) {
    OperatingPoint p = at(ideal(0, 1), Mode.STEREO, 4, Clipper.Shape.sine(x));
    double most = 2 * RAIL * RAIL / (2 * 4);
    assertEquals(power, p.outputWatts() / most, 2e-6);
    assertEquals(efficiency, 100 * p.outputWatts() / inputWatts(p), 1e-4);
    assertEquals(heat, p.stageHeatWatts() / most, 2e-6);
  }

  // Bridging table: 10 V a channel; bridged into 4 ohm 100 W, into 2 ohm 200 W; each channel into
  // 4 ohm 25 W, into 2 ohm 50 W, into 1 ohm 100 W.
  @ParameterizedTest
  @CsvSource({"STEREO,4,50", "STEREO,2,100", "STEREO,1,200", "BRIDGED,4,100", "BRIDGED,2,200"})
  void bridging_meetsTheTextbookTable(Mode mode, double ohms, double totalWatts) {
    Clipper.Shape tenVolts = Clipper.Shape.sine(10 * Math.sqrt(2) / RAIL);
    OperatingPoint p = at(ideal(0, 1), mode, ohms, tenVolts);
    assertEquals(totalWatts, p.outputWatts(), 1e-9 * totalWatts);
    assertEquals(mode == Mode.BRIDGED ? 20 : 10, p.outputVolts(), 1e-9);
  }

  // Vector: V0 = 10.000, V1 = 9.900, R = 4 -> source resistance 0.040404 ohm (class-b, source
  // resistance). The open volts of the rig must give its resistance back.
  @Test
  void openVolts_giveTheSourceResistanceBack() {
    OperatingPoint p = at(ideal(0.040404, 1), Mode.STEREO, 4, Clipper.Shape.sine(0.5));
    assertEquals(0.040404, 4 * (p.openVolts() / p.outputVolts() - 1), 1e-9);
    assertEquals(9.9 / 10, p.outputVolts() / p.openVolts(), 1e-6);
  }

  @Test
  void converterEfficiency_dividesTheInput() {
    OperatingPoint lossless = at(ideal(0, 1), Mode.STEREO, 4, Clipper.Shape.sine(1));
    OperatingPoint lossy = at(ideal(0, 0.8), Mode.STEREO, 4, Clipper.Shape.sine(1));
    assertEquals(inputWatts(lossless) / 0.8, inputWatts(lossy), 1e-6);
  }

  private static OperatingPoint at(
      PracticeAmplifier amplifier, Mode mode, double ohms, Clipper.Shape shape) {
    return new Circuit(amplifier, STIFF, mode, ohms, 25).at(shape);
  }

  private static PracticeAmplifier ideal(double outputOhms, double converterEfficiency) {
    return new PracticeAmplifier(
        Amplifier.named("Halvorsen & Pike", "Ideal"),
        new PracticeAmplifier.Rails(RAIL / 14, 0, 0, 1e6, converterEfficiency, 0),
        new PracticeAmplifier.Stage(OutputClass.B, 0, outputOhms, 0, 1e6, 1, 1, new Clipper(400)),
        new PracticeAmplifier.Sink(1, 100));
  }

  /** Returns the power drawn at the terminals, watts. */
  private static double inputWatts(OperatingPoint point) {
    return point.supplyVolts() * point.supplyAmps();
  }
}
