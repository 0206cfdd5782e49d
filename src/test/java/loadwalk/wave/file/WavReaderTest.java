package loadwalk.wave.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import loadwalk.Needs;
import loadwalk.wave.CaptureException;
import loadwalk.wave.Sox;
import loadwalk.wave.tone.Tone;
import loadwalk.wave.tone.Wavs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WavReaderTest {
  @Test
  void wholeNumbersOfEveryWidth_areScaledToOne() throws Exception {
    assertEquals(
        List.of(-1.0, 0.0, 127 / 128.0), samples(8, Wavs.little(3).put(new byte[] {0, -128, -1})));
    ByteBuffer two = Wavs.little(4).putShort((short) -32768).putShort((short) 16384);
    assertEquals(List.of(-1.0, 0.5), samples(16, two));
    assertEquals(
        List.of(-1.0, 0.5, -1 / 8388608.0),
        samples(24, Wavs.little(9).put(new byte[] {0, 0, -128, 0, 0, 0x40, -1, -1, -1})));
    assertEquals(List.of(-1.0, 0.5), samples(32, Wavs.little(8).putInt(-1 << 31).putInt(1 << 30)));
  }

  private static List<Double> samples(int bits, ByteBuffer data) throws Exception {
    byte[] file =
        Wavs.file(
            Wavs.chunk("fmt ", Wavs.format(1, 1, 48_000, bits)), Wavs.chunk("data", data.array()));
    return Arrays.stream(Wavs.read(file).row(0)).boxed().toList();
  }

  @Test
  void twoChannels_areKeptApart() throws Exception {
    double[] left = {0.1, 0.2, 0.3};
    double[] right = {-0.1, -0.2, -0.3};
    Wavs.Read read = Wavs.read(Wavs.floats(96_000, left, right));
    assertEquals(96_000, read.rate());
    assertTrue(Arrays.equals(left, read.row(0)) && Arrays.equals(right, read.row(1)));
    assertEquals(List.of(), read.notes());
  }

  @ParameterizedTest
  @CsvSource({
    "8, unsigned-integer, 0.005", "16, signed-integer, 2e-5", "24, signed-integer, 1e-7",
    "32, signed-integer, 1e-9", "32, floating-point, 1e-7", "64, floating-point, 1e-9"
  })
  void filesOfAnotherGenerator_areRead(
      int bits, String encoding, double tolerance, @TempDir Path dir) throws Exception {
    Needs.tool("sox");
    Path file = dir.resolve("a.wav");
    Sox.run(
        "-D", "-r", 44100, "-n", "-b", bits, "-e", encoding, file, "synth", 0.2, "sine", 441,
        "sine", 882, "vol", 0.5);
    Wavs.Read read;
    try (InputStream in = Files.newInputStream(file)) {
      read = Wavs.read(in);
    }
    assertEquals(2, read.rows().length);
    assertEquals(44_100, read.rate());
    assertEquals(8820, read.row(0).length);
    for (int i = 0; i < 8820; i++) {
      assertEquals(0.5 * Math.sin(2 * Math.PI * 0.01 * i), read.row(0)[i], tolerance);
      assertEquals(0.5 * Math.sin(2 * Math.PI * 0.02 * i), read.row(1)[i], tolerance);
    }
  }

  @Test
  void lyingLength_readsWhatIsThere() throws Exception {
    byte[] file = Wavs.bytes(Tone.steady(1000, 0, 48_000, 0.1, 0), 16, 1);
    Wavs.Read read = Wavs.read(Arrays.copyOf(file, 1044));
    assertEquals(500, read.row(0).length);
    assertEquals(
        List.of("The header says 4800 frames, but the file ends after 500."), read.notes());
    assertTrue(Wavs.read(Arrays.copyOf(file, 1045)).notes().size() == 2);
  }

  @ParameterizedTest
  @CsvSource({"0", "-1", "2147479552"})
  void openLength_ofAPipe_isReadToTheEnd(int length) throws Exception {
    byte[] file = Wavs.bytes(Tone.steady(1000, 0, 48_000, 0.1, 0), 16, 1);
    ByteBuffer.wrap(file).order(java.nio.ByteOrder.LITTLE_ENDIAN).putInt(40, length);
    Wavs.Read read = Wavs.read(file);
    assertEquals(4800, read.row(0).length);
    assertEquals(List.of(), read.notes());
  }

  @Test
  void whatIsNoWav_getsASentence() {
    assertSentence("The file is empty.", new byte[0]);
    assertSentence("The file is too short for a WAV file.", new byte[] {1, 2, 3});
    assertSentence("begin with RIFF", "This is no sound at all.".getBytes());
    assertSentence("samples before its format chunk", Wavs.file(Wavs.chunk("data", new byte[4])));
    byte[] fmt = Wavs.chunk("fmt ", Wavs.format(1, 1, 48_000, 16));
    assertSentence("its data chunk is missing", Wavs.file(fmt));
    assertSentence(
        "compressed or in an unknown format (code 85)",
        Wavs.file(Wavs.chunk("fmt ", Wavs.format(85, 1, 48_000, 16))));
    assertSentence("makes no sense", Wavs.file(Wavs.chunk("fmt ", Wavs.format(1, 0, 48_000, 16))));
    assertSentence("40 bits", Wavs.file(Wavs.chunk("fmt ", Wavs.format(1, 1, 48_000, 40))));
    assertSentence("cut short", Wavs.file(Wavs.chunk("fmt ", new byte[10])));
    byte[] nan = Wavs.floats(48_000, new double[] {0, Double.NaN});
    assertSentence("not a number", nan);
  }

  private static void assertSentence(String part, byte[] file) {
    CaptureException e = assertThrows(CaptureException.class, () -> Wavs.read(file));
    assertTrue(e.getMessage().contains(part), e.getMessage());
    assertTrue(e.getMessage().endsWith("."), e.getMessage());
  }

  /**
   * Cut at every byte and with random bytes changed: a sentence or samples, never anything else.
   */
  @Test
  void damagedFiles_neverCrash() throws Exception {
    Tone tone = Tone.stepped(1000, List.of(-6.0, 0.0), 8000, 0.01, 0.001);
    byte[] file = Wavs.bytes(tone, 24, 2);
    long seed = 42;
    Random random = new Random(seed);
    int understood = 0;
    for (int i = 0; i < 4000; i++) {
      byte[] damaged = i < file.length ? Arrays.copyOf(file, i) : file.clone();
      if (i >= file.length) {
        for (int k = 0; k < 3; k++) {
          damaged[random.nextInt(220)] = (byte) random.nextInt();
        }
      }
      try {
        understood += Wavs.read(new ByteArrayInputStream(damaged)).rows().length > 0 ? 1 : 0;
      } catch (CaptureException e) {
        assertTrue(e.getMessage().endsWith("."), "seed " + seed + ", round " + i);
      }
    }
    assertTrue(understood > 500, "read all the same: " + understood);
  }
}
