package loadwalk.report.wave;

import java.util.List;
import java.util.Optional;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.Documents;
import loadwalk.report.page.TextPage;
import loadwalk.wave.Calibration;
import loadwalk.wave.Clipping;
import loadwalk.wave.Harmonic;
import loadwalk.wave.WaveReading;
import loadwalk.wave.WaveShape;
import loadwalk.wave.analysis.LimitFinding;
import org.junit.jupiter.api.Test;

/** Judged waves with and without everything, whole, as text and JSON. */
class WaveSnapshotTest {
  private static final List<Harmonic> HARMONICS =
      List.of(new Harmonic(2, 80.02, 0.812345), new Harmonic(3, 120.03, 12.5));

  private static JudgedWave full() {
    return judged(
        reading(
            Quantity.of(13.4567, Unit.VOLT, "v", 0.05),
            Optional.of(Quantity.of(1.02, Unit.PERCENT, "t", 0.004)),
            HARMONICS,
            new Clipping(true, false, 0.1234, 0, Clipping.Overdriven.CANNOT_TELL),
            Calibration.fullScale(20, 1)),
        Optional.of(
            new LimitFinding.Found(
                Quantity.of(14.2, Unit.VOLT, "v", 0.06),
                1.5,
                4.256,
                "between two windows",
                List.of(),
                HARMONICS)),
        List.of("The tone <rises>."));
  }

  private static JudgedWave bare() {
    return judged(
        reading(
            Quantity.exact(0.56789, Unit.VOLT),
            Optional.empty(),
            List.of(),
            new Clipping(false, true, 0, 0.05, Clipping.Overdriven.NO),
            Calibration.NONE),
        Optional.of(new LimitFinding.NotFound("THD does not reach 1.00 %.")),
        List.of());
  }

  private static JudgedWave judged(
      WaveReading reading, Optional<LimitFinding> limit, List<String> notes) {
    return new JudgedWave("ramp.wav", "0123456789abcdef".repeat(4), 2, reading, limit, notes);
  }

  private static WaveReading reading(
      Quantity output,
      Optional<Quantity> thd,
      List<Harmonic> harmonics,
      Clipping clipping,
      Calibration calibration) {
    return new WaveReading(
        Quantity.of(40.0123, Unit.HERTZ, "f", 0.0002),
        output,
        19.12345,
        1.42112,
        thd,
        harmonics,
        Quantity.of(1.1, Unit.PERCENT, "n", 0.02),
        0.0123456,
        Quantity.of(-0.02, Unit.VOLT, "dc", 0.001),
        clipping,
        WaveShape.HARD_CLIP_TOP,
        List.of(),
        "sine fit",
        calibration,
        true,
        List.of());
  }

  @Test
  void text_isAsKept() {
    Documents.same("wave-full.txt", TextPage.lines(WavePage.of(full()), 80, false));
    Documents.same("wave-bare.txt", TextPage.lines(WavePage.of(bare()), 80, false));
  }

  @Test
  void json_isAsKept() {
    Documents.same("wave.jsonl", JudgedWaveJson.text(full()) + JudgedWaveJson.text(bare()));
  }
}
