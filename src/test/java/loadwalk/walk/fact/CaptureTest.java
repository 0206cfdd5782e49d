package loadwalk.walk.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.wave.Calibration;
import loadwalk.wave.Clipping;
import loadwalk.wave.Harmonic;
import loadwalk.wave.WaveReading;
import loadwalk.wave.WaveShape;
import loadwalk.wave.analysis.LimitFinding;
import org.junit.jupiter.api.Test;

/** What a walk keeps of a captured wave. */
class CaptureTest {
  private static final Capture.Source SOURCE = new Capture.Source("tone.wav", "ab12", 2);
  private static final Calibration STATED = Calibration.fullScale(42, 1).withRelativeU(0.005);
  private static final double ENDLESS = Double.POSITIVE_INFINITY;

  @Test
  void steadyTone_isKeptWithWhatItShows() {
    Capture kept = Capture.of(SOURCE, reading(STATED, Optional.of(percent(0.3)), ramp(256)));
    assertEquals("tone.wav", kept.file());
    assertEquals("ab12", kept.sha256());
    assertEquals(2, kept.channel());
    assertEquals(40, kept.hertz());
    assertEquals(13.25, kept.volts());
    assertEquals(42, kept.voltsPerUnit());
    assertEquals(OptionalDouble.of(0.3), kept.thdPercent());
    assertFalse(kept.atLimit());
    assertEquals("sine fit", kept.method());
    assertEquals("no distortion to name", kept.shape());
    assertEquals("cannot tell", kept.overdriven());
    assertEquals(List.of(0.25, 0.12346), kept.harmonics(), "five digits are kept");
  }

  /** u² = scatter² + (V u_rel)²: the calibration is common to all captures, the scatter is not. */
  @Test
  void scatter_isTheUncertaintyWithoutTheCalibration() {
    Capture kept = Capture.of(SOURCE, reading(STATED, Optional.empty(), ramp(128)));
    assertEquals(0.01, kept.scatterVolts(), 1e-12);
    assertEquals(OptionalDouble.of(0.005), kept.calibrationU());
    assertEquals(OptionalDouble.empty(), kept.thdPercent());
    Calibration unstated = Calibration.fullScale(42, 1);
    Capture whole = Capture.of(SOURCE, reading(unstated, Optional.empty(), ramp(128)));
    assertEquals(OptionalDouble.empty(), whole.calibrationU());
    assertEquals(Math.hypot(0.01, 0.005 * 13.25), whole.scatterVolts(), 1e-12);
  }

  @Test
  void risingTone_isKeptAtItsLimit() {
    WaveReading reading = reading(STATED, Optional.of(percent(3)), ramp(128));
    double u = Math.hypot(0.02, 0.005 * 12.5);
    LimitFinding.Found found =
        new LimitFinding.Found(
            Quantity.of(12.5, Unit.VOLT, "wave", u),
            1,
            4.2,
            "interpolation",
            ramp(256),
            List.of(new Harmonic(3, 120, 0.98)));
    Capture kept = Capture.of(SOURCE, reading, found);
    assertTrue(kept.atLimit());
    assertEquals(12.5, kept.volts());
    assertEquals(0.02, kept.scatterVolts(), 1e-12);
    assertEquals(OptionalDouble.of(1), kept.thdPercent());
    assertEquals("interpolation", kept.method());
    assertEquals(List.of(0.98), kept.harmonics());
    assertEquals(128, kept.cycle().size());
    assertEquals(40, kept.hertz());
  }

  /** A period is thinned to 128 means of neighbours, so that a journal stays small. */
  @Test
  void cycle_isThinnedToMeansOfNeighbours() {
    List<Double> cycle = cycle(ramp(387));
    assertEquals(129, cycle.size());
    assertEquals(1, cycle.get(0), 1e-12, "the mean of 0, 1, 2");
    assertEquals(385, cycle.get(128), 1e-12);
    assertEquals(ramp(100), cycle(ramp(100)), "short enough as it is");
    assertEquals(128, cycle(ramp(257)).size(), "what is left over is dropped");
  }

  private static List<Double> cycle(List<Double> whole) {
    return Capture.of(SOURCE, reading(STATED, Optional.empty(), whole)).cycle();
  }

  @Test
  void numbersThatCannotBe_areRefused_byTheirName() {
    for (double wrong : new double[] {0, -1, Double.NaN, ENDLESS}) {
      assertRefused("hertz", wrong, 1, 1, 0);
      assertRefused("volts", 40, wrong, 1, 0);
      assertRefused("voltsPerUnit", 40, 1, wrong, 0);
    }
    for (double wrong : new double[] {-1, Double.NaN, ENDLESS}) {
      assertRefused("scatterVolts", 40, 1, 1, wrong);
      assertRefused("calibrationU", OptionalDouble.of(wrong), OptionalDouble.empty(), 0, 0);
      assertRefused("thdPercent", OptionalDouble.empty(), OptionalDouble.of(wrong), 0, 0);
      assertRefused("harmonics", OptionalDouble.empty(), OptionalDouble.empty(), 0, wrong);
    }
    assertRefused("cycle", OptionalDouble.empty(), OptionalDouble.empty(), Double.NaN, 0);
  }

  @Test
  void reading_isFromTheCapture_whoseNameAndHashItBears() {
    Capture kept = Capture.of(SOURCE, reading(STATED, Optional.empty(), ramp(8)));
    Instrument from = kept.instrument("13.25 V", 1000);
    assertEquals("13.25 V", kept.voltsText());
    assertEquals(new Instrument("capture tone.wav", "sha256 ab12", "13.25 V", 1000, 1, 0), from);
    assertTrue(kept.isSourceOf(from));
    assertFalse(kept.isSourceOf(new Instrument("capture tone.wav", "sha256 cd", "", 0, 1, 0)));
    assertFalse(kept.isSourceOf(new Instrument("clamp", "sha256 ab12", "", 0, 1, 0)));
    assertEquals("0.12346 %", Capture.percentText(0.123456));
  }

  private static void assertRefused(
      String name, double hertz, double volts, double perUnit, double scatter) {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                capture(
                    new double[] {hertz, volts, perUnit, scatter},
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of(),
                    List.of()));
    assertTrue(refused.getMessage().startsWith(name + " must"), refused.getMessage());
  }

  private static void assertRefused(
      String name, OptionalDouble u, OptionalDouble thd, double sample, double harmonic) {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                capture(new double[] {40, 13, 42, 0}, u, thd, List.of(sample), List.of(harmonic)));
    assertTrue(refused.getMessage().startsWith(name + " must"), refused.getMessage());
  }

  private static Capture capture(
      double[] n,
      OptionalDouble u,
      OptionalDouble thd,
      List<Double> cycle,
      List<Double> harmonics) {
    return new Capture(
        "tone.wav",
        "ab12",
        1,
        n[0],
        n[1],
        n[3],
        n[2],
        u,
        "how",
        thd,
        false,
        "m",
        "s",
        "no",
        cycle,
        harmonics);
  }

  private static Quantity percent(double value) {
    return Quantity.exact(value, Unit.PERCENT);
  }

  private static List<Double> ramp(int size) {
    return IntStream.range(0, size).mapToObj(i -> (double) i).toList();
  }

  private static WaveReading reading(
      Calibration calibration, Optional<Quantity> thd, List<Double> cycle) {
    return new WaveReading(
        Quantity.exact(40, Unit.HERTZ),
        Quantity.of(13.25, Unit.VOLT, "wave", Math.hypot(0.01, 0.005 * 13.25)),
        19,
        1.42,
        thd,
        List.of(new Harmonic(2, 80, 0.25), new Harmonic(3, 120, 0.123456)),
        percent(0.4),
        0.001,
        Quantity.exact(0, Unit.VOLT),
        new Clipping(false, false, 0, 0, Clipping.Overdriven.CANNOT_TELL),
        WaveShape.CLEAN,
        cycle,
        "sine fit",
        calibration,
        true,
        List.of());
  }
}
