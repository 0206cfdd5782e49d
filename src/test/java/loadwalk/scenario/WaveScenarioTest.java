package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import loadwalk.app.Ramps;
import loadwalk.bench.ReadingId;
import loadwalk.result.Criterion;
import loadwalk.walk.fact.Capture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A captured wave is taken on the walk screen: cautions, file, calibration, result, step. */
class WaveScenarioTest {
  @TempDir Path folder;

  private Path ramp() throws IOException {
    return Ramps.write(folder.resolve("rising tone.wav"), Ramps.rising(8));
  }

  private static BenchSide asked(BenchSide bench, String file) {
    return bench.press("text:" + file, "Enter", "text:2", "Enter", "text:21", "F9");
  }

  @Test
  void risingTone_entersTheVoltsAtTheLimit_namedAndHashed()
      throws IOException, NoSuchAlgorithmException {
    Path file = ramp();
    BenchSide bench =
        BenchSide.at(folder).warmAtStereoFour().press("text:4", "Enter", "text:4", "Enter");
    bench.sees("Ctrl-W takes a captured wave").press("Ctrl-W");
    bench.sees("only through a divider", "isolating transformer").seesNot("Full scale, volts");
    bench.press("Enter").sees("Full scale, volts", "Known volts");
    asked(bench, "'" + file + "'").sees("at the limit", "THD 1.00 %", "sha-256", "rising tone.wav");
    assertTrue(bench.step("stereo-4").captures().isEmpty(), "nothing is taken before Enter");
    bench.press("Enter").sees("Taken from rising tone.wav: 17.9");
    double expected = 42 * Ramps.LIMIT_RMS;
    double volts = bench.step("stereo-4").latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value();
    assertEquals(expected, volts, 0.002 * expected);
    assertEquals(Criterion.THD_LIMIT, bench.step("stereo-4").criterion(1));
    Capture capture = bench.step("stereo-4").captures().get(0);
    byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
    assertEquals(HexFormat.of().formatHex(hash), capture.sha256());
    bench.journalTellsTheSame();
    bench.press("Ctrl-W").sees("> File", "21").seesNot("isolating transformer");
  }

  @Test
  void whatIsWrong_isASentenceAtTheForm_andNothingTypedIsLost() throws IOException {
    Ramps.write(folder.resolve("short.wav"), new double[] {0.1});
    BenchSide bench =
        BenchSide.at(folder)
            .warmAtStereoFour()
            .press("text:4", "Enter", "text:4", "Enter", "Ctrl-W");
    bench.press("Enter", "F9").sees("The path of a file is required.");
    bench.press("text:" + folder.resolve("gone.wav"), "F9").sees("There is no file gone.wav.");
    bench.press("Down", "text:two", "F9").sees("> Full scale, volts", "two", "gone.wav");
    bench.press("Back", "Back", "Back", "text:-2", "F9").sees("above 0").seesNot("..");
    bench.press("Home", "PageUp", "F10").sees("Step").seesNot("Full scale, volts");
    for (String path : List.of(folder.toString(), "/dev/zero", "\u001b]0;x", "short.wav", "a\0b")) {
      bench.press("Ctrl-W");
      asked(bench, path.startsWith("short") ? folder.resolve(path).toString() : path);
      bench.sees("Known volts", "read it").seesNot("Exception", "take it").press("F10");
    }
    assertTrue(bench.step("stereo-4").captures().isEmpty());
  }

  /** A scope's table that tells neither unit: they are asked for, then it is read. */
  @Test
  void scopeTable_isAskedForItsUnits_andTaken() throws IOException {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < 5000; i++) {
      double volts = 20 * Math.sin(2 * Math.PI * 40 * i / 5000.0);
      rows.append(String.format(Locale.ROOT, "%.1f;%.3f%n", i / 5.0, volts).replace('.', ','));
    }
    Path file = Files.writeString(folder.resolve("scope.csv"), rows.toString());
    BenchSide bench =
        BenchSide.at(folder)
            .warmAtStereoFour()
            .press("text:4", "Enter", "text:4", "Enter", "Ctrl-W", "Enter");
    bench.press("text:" + file, "F9").sees("give time-unit (s, ms, us or ns)");
    bench.press("Up", "text:V", "Up", "text:ms", "F9").sees("THD", "sha-256").press("Enter");
    double volts = bench.step("stereo-4").latest(ReadingId.OUTPUT_VOLTS).orElseThrow().value();
    assertEquals(20 / Math.sqrt(2), volts, 0.002);
  }

  @Test
  void escape_stopsTheWalk_evenWhileAWaveIsAskedFor() {
    BenchSide bench =
        BenchSide.at(folder)
            .warmAtStereoFour()
            .press("text:4", "Enter", "text:4", "Enter", "Ctrl-W");
    bench.press("Enter", "text:/tmp/some", "Esc").sees("S T O P");
    assertTrue(bench.model().isStopped());
  }

  @Test
  void whereNoVoltsAreAsked_theKeySaysSo() {
    BenchSide bench = BenchSide.at(folder).practising();
    bench
        .press("Ctrl-W")
        .sees("A wave can be taken only while a step that reads output volts runs.");
    bench.press("Enter", "Ctrl-W").sees("A wave can be taken only while a step");
    assertFalse(bench.model().isStopped());
  }
}
