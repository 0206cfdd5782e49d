package loadwalk.wave.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.IntToDoubleFunction;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.analysis.LimitFinder;
import loadwalk.wave.analysis.WaveAnalysis;
import loadwalk.wave.tone.Wavs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a capture states of itself, and cannot be: nothing is set aside in memory for it. */
class ImpossibleSizesTest {
  private static byte[] wav(int channels, int rate) {
    byte[] frames = new byte[2 * channels];
    return Wavs.file(
        Wavs.chunk("fmt ", Wavs.format(1, channels, rate, 16)), Wavs.chunk("data", frames));
  }

  @ParameterizedTest
  @CsvSource({
    "1, 2147483647",
    "1, -1",
    "1, 10000001",
    "1, 99",
    "1, 1",
    "65, 48000",
    "30000, 48000"
  })
  void wavOfARateOrChannelsThatNoInputHas_isRefused(int channels, int rate) {
    InputStream in = new ByteArrayInputStream(wav(channels, rate));
    String why = assertThrows(CaptureException.class, () -> WavReader.open(in)).getMessage();
    assertTrue(
        why.contains("An input has at most 64 channels and takes 100 to 10000000 frames"), why);
    assertTrue(why.contains(Integer.toUnsignedString(rate)), why);
  }

  @ParameterizedTest
  @CsvSource({"1, 10000000", "1, 100", "64, 768000"})
  void wavThatAnInputCanHaveMade_isRead(int channels, int rate) throws Exception {
    WavReader read = WavReader.open(new ByteArrayInputStream(wav(channels, rate)));
    assertEquals(rate, read.samplesPerSecond());
    assertEquals(channels, read.channels());
  }

  /** A rising tone of 500 samples in a period, so many samples long. */
  private record Tone(double samplesPerSecond, int count, int[] at) implements AudioSource {
    static Tone of(double samplesPerSecond, int count) {
      return new Tone(samplesPerSecond, count, new int[1]);
    }

    @Override
    public int channels() {
      return 1;
    }

    @Override
    public int read(double[][] block) {
      int from = at[0];
      int read = Math.min(block[0].length, count - from);
      IntToDoubleFunction wave = i -> 0.9 * i / count * Math.sin(2 * Math.PI * i / 500.0);
      for (int i = 0; i < read; i++) {
        block[0][i] = wave.applyAsDouble(from + i);
      }
      at[0] += read;
      return read > 0 ? read : -1;
    }
  }

  @Test
  void shortCaptureAtARateBeyondAll_isTooShort_notTooLargeForTheMemory() throws Exception {
    assertEquals(
        "The capture is too short to show a rise.",
        LimitFinder.find(Tone.of(1e15, 20_000), 1, 1, Calibration.NONE).missing().orElseThrow());
  }

  @Test
  void longCaptureAtARateBeyondAll_isRefused() {
    for (double rate : new double[] {5e7, 1e9, 1e15}) {
      String limit =
          assertThrows(
                  CaptureException.class,
                  () -> LimitFinder.find(Tone.of(rate, 300_000), 1, 1, Calibration.NONE))
              .getMessage();
      assertTrue(limit.contains("too many to judge a tone of"), limit);
    }
    for (double rate : new double[] {1.2e7, 1e9, 1e15}) {
      String level =
          assertThrows(
                  CaptureException.class,
                  () -> WaveAnalysis.of(Tone.of(rate, 300_000), 1, Calibration.NONE))
              .getMessage();
      assertTrue(level.contains("too many to judge a tone of"), level);
    }
  }

  @Test
  void longCaptureOfAMillionSamplesASecond_isJudged() throws Exception {
    assertEquals(
        2000, WaveAnalysis.of(Tone.of(1e6, 900_000), 1, Calibration.NONE).frequency().value(), 0.1);
  }

  private static String refusedTable(String text) {
    InputStream in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    return assertThrows(CaptureException.class, () -> ScopeCsv.read(in, ScopeCsv.Given.NOTHING))
        .getMessage();
  }

  @Test
  void tableOfMoreColumnsThanAnyScopeHas_isRefused() {
    assertTrue(
        refusedTable("s;V\n" + "1;".repeat(65) + "\n").contains("65 columns. Export 64 or fewer"));
  }

  @Test
  void lineWithoutEnd_isRefused_beforeItFillsTheMemory() {
    InputStream endless =
        new InputStream() {
          private long left = 1L << 32;

          @Override
          public int read() throws IOException {
            if (left-- == 0) {
              throw new IOException("all of it was read");
            }
            return '1';
          }
        };
    String why =
        assertThrows(CaptureException.class, () -> ScopeCsv.read(endless, ScopeCsv.Given.NOTHING))
            .getMessage();
    assertEquals("Line 1 is longer than 65536 characters: no table.", why);
    assertEquals(
        "Line 4 is longer than 65536 characters: no table.",
        refusedTable("s;V\n0;0\n1;1\n" + "1".repeat(70_000) + "\n"));
  }

  @ParameterizedTest
  @CsvSource({"'\n'", "'\r\n'", "'\r'"})
  void rows_endAsAnySystemEndsLines(String end) throws Exception {
    String break_ = end.replace("\\n", "\n").replace("\\r", "\r");
    String text = String.join(break_, "s,V", "0,1", "", "1,2", "2,3") + break_;
    ScopeCsv read =
        ScopeCsv.read(
            new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
            ScopeCsv.Given.NOTHING);
    double[][] block = new double[1][9];
    assertEquals(3, read.read(block));
    assertEquals(3, block[0][2]);
  }
}
