package loadwalk.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedInputStream;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.Needs;
import loadwalk.wave.analysis.WaveAnalysis;
import loadwalk.wave.file.WavReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Waves made and measured by sox, which shares no code with this project. */
class SoxWaveTest {
  @TempDir private Path dir;

  @BeforeEach
  void needsSox() {
    Needs.tool("sox");
  }

  private static WaveReading read(Path file) throws Exception {
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
      return WaveAnalysis.of(WavReader.open(in), 1, Calibration.NONE);
    }
  }

  /** A tone and its third harmonic, mixed by sox in a known ratio: THD is that ratio. */
  @ParameterizedTest
  @CsvSource({
    "40, 44100, 16, 0.05", "40, 48000, 24, 0.01", "50, 96000, 24, 0.3", "100, 48000, 16, 3",
    "1000, 48000, 24, 10", "997.3, 44100, 24, 0.02", "40, 8000, 16, 1", "60, 192000, 24, 50"
  })
  void mixedHarmonic_isTheThd_andRmsIsWhatSoxSays(double hertz, int rate, int bits, double percent)
      throws Exception {
    Path file = dir.resolve("mix.wav");
    double second = 0.4 * percent / 100;
    Sox.run(
        "-n",
        "-r",
        rate,
        "-b",
        bits,
        file,
        "synth",
        4,
        "sine",
        hertz,
        "sine",
        3 * hertz,
        "remix",
        "1v0.4,2v" + second,
        "channels",
        1);
    WaveReading reading = read(file);
    double thd = reading.thd().orElseThrow().value();
    assertEquals(percent, thd, Math.max(0.01 * percent, 0.002));
    assertEquals(hertz, reading.frequency().value(), 1e-6 * hertz);
    assertEquals(
        0.4 * Math.sqrt((1 + percent * percent / 1e4) / 2),
        reading.output().value(),
        1e-4 * reading.output().value());
    double said = statistic(file, "RMS.*amplitude");
    assertEquals(said, reading.output().value(), 1e-4 * said + 1e-6);
    assertEquals(statistic(file, "Maximum amplitude"), reading.peakVolts(), 2e-5);
  }

  private static double statistic(Path file, String name) throws Exception {
    String said = Sox.run(file, "-n", "stat");
    Matcher matcher = Pattern.compile(name + ":\\s+([0-9.]+)").matcher(said);
    assertTrue(matcher.find(), said);
    return Double.parseDouble(matcher.group(1));
  }

  /** Gain beyond full scale is cut by sox at both ends of its range. */
  @Test
  void overdrivenFile_isSaidToBe() throws Exception {
    Path file = dir.resolve("over.wav");
    Sox.run("-n", "-r", 48000, "-b", 16, file, "synth", 3, "sine", 40, "gain", 3);
    WaveReading reading = read(file);
    assertEquals(Clipping.Overdriven.YES, reading.clipping().capture());
    assertTrue(reading.clipping().top() && reading.clipping().bottom());
    // 3 dB over: a sine clipped at 1/√2 of its peak; the closed form's THD at that fraction.
    assertEquals(WaveShape.HARD_CLIP_BOTH, reading.shape());
  }
}
