package loadwalk.wave.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.Clipping;
import loadwalk.wave.WaveReading;
import loadwalk.wave.analysis.WaveAnalysis;
import org.junit.jupiter.api.Test;

class ScopeCsvTest {
  private static ScopeCsv read(String text) throws Exception {
    return read(text, ScopeCsv.Given.NOTHING);
  }

  private static ScopeCsv read(String text, ScopeCsv.Given given) throws Exception {
    return ScopeCsv.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), given);
  }

  private static String sentence(String text) {
    return assertThrows(CaptureException.class, () -> read(text)).getMessage();
  }

  /** Ten periods of 40 Hz, 20 V peak, 2 % third harmonic, in eight-bit steps, as a scope saves. */
  private static String table(String header, String row, double perSecond, double perVolt) {
    StringBuilder text = new StringBuilder(header);
    for (int i = 0; i < 2500; i++) {
      double t = -0.125 + i * 1e-4;
      double x = 2 * Math.PI * 40.1 * t;
      double v = Math.rint((20 * Math.sin(x) + 0.4 * Math.sin(3 * x)) * 5) / 5;
      text.append(String.format(Locale.ROOT, row, t * perSecond, v * perVolt));
    }
    return text.toString();
  }

  private static void assertTone(ScopeCsv csv, int channel) throws Exception {
    assertEquals(10_000, csv.samplesPerSecond(), 0.01);
    WaveReading reading = WaveAnalysis.of(csv, channel, Calibration.volts(1));
    assertEquals(40.1, reading.frequency().value(), 0.005);
    assertEquals(Math.sqrt(200.08), reading.output().value(), 0.02);
    assertEquals(2, reading.thd().orElseThrow().value(), 0.1);
    assertEquals(Clipping.Overdriven.CANNOT_TELL, reading.clipping().capture());
  }

  @Test
  void formsOfManyScopes_areRecognised() throws Exception {
    assertTone(read(table("time,volts\n", "%.6f,%.3f\n", 1, 1)), 1);
    assertTone(read(table("Time (ms),CH1 (mV)\n", "%.4f,%.1f\n", 1e3, 1e3)), 1);
    assertTone(read(table("\ufeffsecond\tVolt\r\n", "%.7e\t%.3e\r\n", 1, 1)), 1);
    assertTone(read(table("x-axis,1\nsecond,Volt\n", "%.7E,%.3E\n", 1, 1)), 1);
    assertTone(read(table("\"Time [\u00b5s]\";\"A [V]\";\n", "%.1f;%.3f;\n", 1e6, 1)), 1);
    assertTone(
        read(table("Model,none\nRecord length,2500\n\ns,V,V\n", "%.6f,0.5,%.3f\n", 1, 1)), 2);
    String comma = table("Zeit (s);Kanal (V)\n", "%.6f;%.3f\n", 1, 1).replace('.', ',');
    assertTone(read(comma), 1);
    ScopeCsv.Given given =
        new ScopeCsv.Given(Optional.of(1e-3), Optional.of(1.0), Optional.empty());
    assertTone(read(table("", "%.4f %.3f\n", 1e3, 1), given), 1);
  }

  @Test
  void unnamedTime_isTakenAsSeconds_andSaidSo() throws Exception {
    assertEquals(
        List.of("The time column names no unit: taken as seconds (time-unit)."),
        read("time,volts\n0,1\n1,2\n2,1\n").notes());
  }

  @Test
  void whatTheFileDoesNotTell_isAskedFor() {
    assertTrue(sentence("0,1\n1,2\n2,1\n").contains("give time-unit"));
    assertTrue(sentence("t (s),x\n0,1\n1,2\n").contains("give volt-unit"));
    assertTrue(sentence("t;u\n0,5;1,5\n1,0;2,5\n").contains("give time-unit"));
    assertTrue(sentence("s,V\n0,001,1,234\n0,002,1,235\n").contains("decimal sign"));
  }

  @Test
  void whatIsNoTable_getsASentence() {
    assertEquals("The file is empty.", sentence(""));
    assertTrue(sentence("hello\nworld\n").contains("no rows of numbers"));
    assertTrue(sentence("s,V\n0,1\n").contains("one row"));
    assertTrue(sentence("s,V\n0,1\n1,2\n2,x\n").contains("Line 4 must be 2 numbers"));
    assertTrue(sentence("s,V\n3,1\n2,2\n1,2\n").contains("does not rise"));
    assertTrue(sentence("s,V\n0,1\n1,2\n9,2\n10,2\n").contains("uneven at row"));
    assertTrue(sentence("s,V\n0,1\n1,2\n2,1e999\n").contains("Line 4"));
  }

  @Test
  void damagedFiles_neverCrash() throws Exception {
    String good = table("time,volts\n", "%.6f,%.3f\n", 1, 1).substring(0, 4000);
    long seed = 21;
    Random random = new Random(seed);
    int refused = 0;
    for (int i = 0; i < 500; i++) {
      StringBuilder text = new StringBuilder(good);
      for (int k = 0; k < 3; k++) {
        text.setCharAt(random.nextInt(200), (char) random.nextInt(256));
      }
      try {
        assertTrue(read(text.toString()).channels() >= 1);
      } catch (CaptureException e) {
        refused++;
        assertTrue(e.getMessage().endsWith("."), "seed " + seed + ": " + e.getMessage());
      }
    }
    assertTrue(refused > 100, "refused: " + refused);
  }
}
