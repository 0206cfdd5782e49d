package loadwalk.wave.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import loadwalk.numeric.SineFit;
import loadwalk.wave.file.Cue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToneTest {
  /** What is wanted: THD+N over the whole band below -95 dB at 16 and -130 dB at 24 bits. */
  @ParameterizedTest
  @CsvSource({
    "40, 48000, 16, -95", "50, 44100, 16, -95", "100, 96000, 16, -95", "1000, 48000, 16, -95",
    "997, 44100, 16, -95", "40, 48000, 24, -130", "50, 44100, 24, -130", "1000, 96000, 24, -130"
  })
  void fullScaleSine_isAsPureAsItsBitsAllow(double hertz, int rate, int bits, double decibels)
      throws Exception {
    Tone tone = Tone.steady(hertz, 0, rate, 4, 0.05);
    double[] samples = Wavs.read(Wavs.bytes(tone, bits, 1)).row(0);
    double[] inner = Arrays.copyOfRange(samples, rate / 10, samples.length - rate / 10);
    SineFit fit = SineFit.fourParameter(inner, rate, hertz);
    double thdNoise = 20 * Math.log10(fit.residualRms() / fit.rms());
    assertTrue(thdNoise < decibels, "THD+N " + thdNoise + " dB");
    double top = 1 - Math.pow(2, 1 - bits);
    assertEquals(top, fit.amplitude(), 1e-6);
    assertEquals(hertz, fit.frequencyHertz(), 1e-6 * hertz);
  }

  @ParameterizedTest
  @CsvSource({"40, 44100", "50, 48000", "997, 48000", "997.3, 48000", "33.3333, 96000"})
  void tone_holdsWholePeriods_withinAPartInAMillion(double hertz, int rate) {
    Tone tone = Tone.steady(hertz, -3, rate, 10, 0);
    double periods = tone.hertz() * tone.frames() / rate;
    assertEquals(Math.rint(periods), periods, 1e-9);
    assertEquals(hertz, tone.hertz(), 1.1e-6 * hertz);
    assertEquals(10, (double) tone.frames() / rate, 0.51);
    assertEquals(0, tone.at(0), 1e-12);
    assertEquals(tone.at(7), tone.at(7 + tone.frames()), 1e-9, "it can be repeated without a step");
  }

  @Test
  void level_isPeakAgainstFullScale() {
    Tone tone = Tone.steady(1000, -6.0206, 48_000, 1, 0);
    double peak = 0;
    for (long frame = 0; frame < tone.frames(); frame++) {
      peak = Math.max(peak, Math.abs(tone.at(frame)));
    }
    assertEquals(0.5, peak, 1e-6);
  }

  @Test
  void fade_risesAndFalls() {
    Tone tone = Tone.steady(1000, 0, 48_000, 1, 0.1);
    double quarter = 12;
    assertTrue(Math.abs(tone.at((long) quarter)) < 0.001);
    assertEquals(0.5, tone.at(2400 + 12), 0.01);
    assertEquals(1, tone.at(4800 + 12), 1e-9);
    assertTrue(Math.abs(tone.at(tone.frames() - 12)) < 0.001);
  }

  @Test
  void steps_areAnnouncedInTheFile() throws Exception {
    Tone tone = Tone.stepped(100, List.of(-20.0, -10.0, -3.0), 48_000, 0.5, 0.01);
    assertEquals(3 * 24_000, tone.frames());
    assertEquals(
        List.of(
            new Cue(0, "-20.00 dBFS"),
            new Cue(24_000, "-10.00 dBFS"),
            new Cue(48_000, "-3.00 dBFS")),
        Wavs.cues(Wavs.bytes(tone, 24, 1)));
    double peak = 0;
    for (long frame = 30_000; frame < 40_000; frame++) {
      peak = Math.max(peak, tone.at(frame));
    }
    assertEquals(Math.pow(10, -0.5), peak, 1e-3);
  }

  @Test
  void burst_beginsAndEndsAtZero() {
    Tone tone = Tone.burst(1000, -1, -20, 48_000, 0.02, 0.5, 3);
    assertEquals(3 * 24_000, tone.frames());
    assertEquals(Math.pow(10, -0.05), tone.at(12), 1e-6);
    assertEquals(Math.pow(10, -1.05), tone.at(960 + 12), 1e-6);
    assertEquals(0, tone.at(960), 1e-9);
    assertEquals(tone.at(13), tone.at(24_000 + 13), 1e-9);
    assertEquals("burst 3", tone.cues().get(2).label());
  }

  @Test
  void sameSeed_givesTheSameBytes() throws Exception {
    Tone tone = Tone.steady(50, -1, 44_100, 0.3, 0.01);
    assertEquals(
        Arrays.hashCode(Wavs.bytes(tone, 16, 2)), Arrays.hashCode(Wavs.bytes(tone, 16, 2)));
  }

  @Test
  void wrongNumbers_areRefusedInASentence() {
    assertThrows(IllegalArgumentException.class, () -> Tone.steady(24_000, 0, 48_000, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> Tone.steady(Double.NaN, 0, 48_000, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> Tone.steady(40, 1, 48_000, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> Tone.steady(40, 0, 48_000, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> Tone.steady(40, 0, 48_000, 1, 0.6));
    assertThrows(IllegalArgumentException.class, () -> Tone.stepped(40, List.of(), 48_000, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> Tone.burst(40, 0, -20, 48_000, 0.5, 0.5, 2));
  }
}
