package loadwalk.result;

import static loadwalk.result.Readings.says;
import static loadwalk.result.Readings.step;
import static loadwalk.result.Readings.stereo;
import static loadwalk.result.Readings.usual;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Quantity;
import org.junit.jupiter.api.Test;

/** A reading taken from a captured wave: its calibration and scatter, no meter of the bench. */
class CapturedReadingTest {
  private static final String SOURCE = "capture calibration, 1.00 V of tone";

  @Test
  void volts_carryTheCalibrationAndTheirScatter() {
    StepResult result = step(usual(), stereo(4, volts(0.002, OptionalDouble.of(0.003))));
    Map<String, Double> parts = result.outputVolts().orElseThrow().contributions();
    assertEquals(20 * 0.003, parts.get(SOURCE), 1e-12);
    assertEquals(0.002, parts.get("capture output volts stereo-4"), 1e-12);
    assertEquals(2, parts.size(), parts.toString());
    assertFalse(says(result.remarks(), "calibration-assumed"));
    assertFalse(says(result.remarks(), "meter-assumed"));
  }

  @Test
  void voltsWithoutScatter_carryTheCalibrationAlone() {
    StepResult result = step(usual(), stereo(4, volts(0, OptionalDouble.of(0.003))));
    assertEquals(Map.of(SOURCE, 20 * 0.003), result.outputVolts().orElseThrow().contributions());
  }

  @Test
  void calibrationWithoutUncertainty_isTakenAsOnePercentAndSaid() {
    StepResult result = step(usual(), stereo(4, volts(0, OptionalDouble.empty())));
    // A rectangular half-width of 1 %: JCGM 100:2008, 4.3.7.
    assertEquals(0.2 / Math.sqrt(3), result.outputVolts().orElseThrow().u(), 1e-12);
    assertTrue(says(result.remarks(), "calibration-assumed"));
  }

  @Test
  void twoReadingsOfOneCalibration_shareIt() {
    Quantity one = step(usual(), stereo(4, volts(0, OptionalDouble.of(0.01)))).watts().get();
    Quantity other = step(usual(), stereo(4, volts(0, OptionalDouble.of(0.01)))).watts().get();
    assertEquals(0, one.minus(other).contributions().get(SOURCE), 1e-12);
  }

  @Test
  void distortion_isARatioAndTakesNoCalibration() {
    Quantity thd =
        ResultComputation.reading(
            usual(),
            40,
            "stereo-4",
            new TakenReading(
                ReadingId.THD_PERCENT,
                0.9,
                0,
                0.01,
                Double.POSITIVE_INFINITY,
                Optional.of(
                    new TakenReading.Captured("1.00 V of tone", OptionalDouble.of(0.003)))));
    assertEquals(Map.of("capture THD stereo-4", 0.01), thd.contributions());
    assertEquals(0.9, thd.value());
  }

  private static TakenReading volts(double scatter, OptionalDouble calibrationU) {
    return new TakenReading(
        ReadingId.OUTPUT_VOLTS,
        20,
        0,
        scatter,
        Double.POSITIVE_INFINITY,
        Optional.of(new TakenReading.Captured("1.00 V of tone", calibrationU)));
  }
}
