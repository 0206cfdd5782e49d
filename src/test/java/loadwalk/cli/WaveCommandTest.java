package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import loadwalk.wave.tone.AudioSink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class WaveCommandTest {
  @TempDir private Path dir;

  /** What a command printed and returned. */
  private record Run(int code, String out, String err) {
    JsonNode json() throws IOException {
      return new ObjectMapper().readTree(out);
    }
  }

  private static Run run(Object command, Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        new CommandLine(command)
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
    return new Run(code, out.toString(), err.toString());
  }

  private Path tone(Object... arguments) {
    Path file = dir.resolve("tone.wav");
    Object[] all = Arrays.copyOf(arguments, arguments.length + 1);
    all[arguments.length] = file;
    Run made = run(new ToneCommand(), all);
    assertEquals(0, made.code, made.err);
    return file;
  }

  @Test
  void toneThenWave_agree() throws Exception {
    Path file = tone("--hertz", 50, "--dbfs", -6.0206, "--seconds", 3, "--bits", 24);
    Run run = run(new WaveCommand(), file, "--json", "--full-scale", 2, "--divider", 21);
    assertEquals(0, run.code, run.err);
    JsonNode json = run.json();
    assertEquals("loadwalk-wave/1", json.get("format").asText());
    assertEquals(50, json.get("frequencyHertz").asDouble(), 1e-5);
    assertEquals(21 / Math.sqrt(2), json.get("outputVolts").asDouble(), 2e-4);
    assertEquals(21, json.get("peakVolts").asDouble(), 1e-3);
    assertEquals(Math.sqrt(2), json.get("crestFactor").asDouble(), 1e-4);
    assertEquals(0, json.get("thdPercent").asDouble(), 4e-4);
    assertEquals(0, json.get("thdNoisePercent").asDouble(), 4e-4);
    assertEquals(0, json.get("dcVolts").asDouble(), 1e-4);
    assertEquals("no", json.at("/clipping/captureOverdriven").asText());
    assertEquals(64, json.at("/capture/sha256").asText().length());
    assertEquals(List.of(), new ObjectMapper().convertValue(json.get("notes"), List.class));
  }

  @Test
  void knownVoltage_calibrates() throws Exception {
    Path file = tone("--hertz", 40, "--seconds", 2, "--dbfs", -12);
    JsonNode json = run(new WaveCommand(), file, "--json", "--known", 13.4).json();
    assertEquals(13.4, json.get("outputVolts").asDouble(), 1e-9);
    assertTrue(json.get("calibrated").asBoolean());
  }

  @Test
  void limit_isSearchedInASteppedTone() throws Exception {
    Path file = tone("--steps", "-6:0:2", "--seconds", 1, "--channels", 1);
    Run run = run(new WaveCommand(), file, "--limit", 1);
    assertEquals(0, run.code, run.err);
    assertTrue(run.out.contains("THD does not reach 1.00 %"), run.out);
    assertTrue(run.out.contains("No calibration was given"), run.out);
    assertTrue(run.err.contains("only through a divider"), run.err);
  }

  @Test
  void json_aheadOfTheFile_readsTheFileAndPrints_andNeverWritesOverIt() throws Exception {
    Path file = tone("--hertz", 40, "--seconds", 2, "--dbfs", -12);
    byte[] before = Files.readAllBytes(file);
    Run behind = run(new WaveCommand(), file, "--json");
    Run ahead = run(new WaveCommand(), "--json", file);
    assertEquals(0, ahead.code, ahead.err);
    assertEquals(behind.json(), ahead.json());
    Run html = run(new WaveCommand(), "--html", file);
    assertEquals(2, html.code);
    assertTrue(html.err.startsWith("Give the FILE of a capture."), html.err);
    Path json = dir.resolve("wave.json");
    assertEquals(0, run(new WaveCommand(), "--json", json, file).code);
    assertEquals(behind.json(), new ObjectMapper().readTree(json.toFile()));
    Run over = run(new WaveCommand(), file, "--json", file);
    assertEquals(2, over.code);
    assertEquals(file + " is read by this command; name another file.\n", over.err);
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void pages_areWrittenInEveryFormat() throws Exception {
    Path file = tone("--hertz", 40, "--seconds", 2, "--dbfs", -12);
    Path html = dir.resolve("wave.html");
    Run run = run(new WaveCommand(), file, "--html", html, "--markdown");
    assertEquals(0, run.code, run.err);
    assertTrue(run.out.startsWith("# Wave of tone.wav\n"), run.out);
    assertTrue(Files.readString(html).contains("<h1>Wave of tone.wav</h1>"));
    Run ascii = run(new WaveCommand(), file, "--ascii");
    assertTrue(ascii.out.chars().allMatch(c -> c == '\n' || (c >= ' ' && c <= '~')), ascii.out);
    Run nowhere = run(new WaveCommand(), file, "--html", dir);
    assertEquals(2, nowhere.code);
    assertTrue(nowhere.err.contains("cannot be written: this is a folder"), nowhere.err);
  }

  @Test
  void stdin_isRead() throws Exception {
    byte[] bytes = Files.readAllBytes(tone("--seconds", 2));
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(bytes));
    try {
      JsonNode json = run(new WaveCommand(), "-", "--json").json();
      assertEquals(40, json.get("frequencyHertz").asDouble(), 1e-4);
      assertEquals("stdin", json.at("/capture/name").asText());
    } finally {
      System.setIn(before);
    }
  }

  @Test
  void scopeTable_isRead() throws Exception {
    StringBuilder text = new StringBuilder("time,volts\n");
    for (int i = 0; i < 2000; i++) {
      text.append(i * 1e-4).append(',').append(10 * Math.sin(i * 0.025) + 0.5).append('\n');
    }
    Path file = dir.resolve("scope.csv");
    Files.writeString(file, text);
    JsonNode json = run(new WaveCommand(), file, "--json", "--divider", 10).json();
    assertEquals(100 / Math.sqrt(2), json.get("outputVolts").asDouble(), 0.01);
    assertEquals(5, json.get("dcVolts").asDouble(), 0.01);
    assertEquals("cannot tell", json.at("/clipping/captureOverdriven").asText());
  }

  @Test
  void badInput_getsASentenceAndCodeTwo() throws Exception {
    assertBad("There is no file", dir.resolve("none.wav"));
    assertBad("is a folder", dir);
    Path empty = Files.createFile(dir.resolve("empty.wav"));
    assertBad("The file is empty.", empty);
    Path text = Files.writeString(dir.resolve("a.txt"), "nothing to hear");
    assertBad("no rows of numbers", text);
    Path file = tone("--seconds", 1, "--channels", 1);
    assertBad("There is no channel 2", file, "--channel", 2);
    assertBad("--divider needs --full-scale", file, "--divider", 2);
    assertBad("not both", file, "--known", 2, "--divider", 2);
    assertBad("--time-unit must be one of", file, "--time-unit", "h");
    assertBad("must be a number above 0", file, "--full-scale", -1);
    assertBad("between 0 and 100", file, "--limit", 0);
  }

  private static void assertBad(String part, Object... arguments) {
    Run run = run(new WaveCommand(), arguments);
    assertEquals(2, run.code);
    assertEquals("", run.out);
    assertTrue(run.err.contains(part), run.err);
  }

  @Test
  void wrongTones_getASentenceAndCodeTwo() throws IOException {
    Path file = dir.resolve("x.wav");
    assertBadTone("Give a FILE", "--hertz", 40);
    assertBadTone("--rate must be", file, "--rate", 8000);
    assertBadTone("bits must be 16 or 24", file, "--bits", 20);
    assertBadTone("level must be", file, "--dbfs", 3);
    assertBadTone("frequency must be", file, "--hertz", 30_000);
    assertBadTone("--steps takes", file, "--steps", "-20:0");
    assertBadTone("not both", file, "--steps", "-20:0:1", "--burst", 0.1);
    assertBadTone("no sound output", "--play");
    Path folder = Files.createDirectory(dir.resolve("folder"));
    assertBadTone("this is a folder", folder);
    assertTrue(Files.isDirectory(folder), "an empty folder is not replaced");
    assertBadTone("there is no folder " + dir.resolve("none"), dir.resolve("none/tone.wav"));
    assertTrue(Files.notExists(file));
  }

  private static void assertBadTone(String part, Object... arguments) {
    Run run = run(new ToneCommand(), arguments);
    assertEquals(2, run.code);
    assertTrue(run.err.contains(part), run.err);
  }

  /** A sound output that sums what it is given: squares first, then samples, then how often. */
  private static AudioSink.Output summing(double[] sums) {
    return rate ->
        new AudioSink() {
          @Override
          public void write(double[] samples, int count) {
            for (int i = 0; i < count; i++) {
              sums[0] += samples[i] * samples[i];
            }
            sums[1] += count;
          }

          @Override
          public void close() {
            sums[2]++;
          }
        };
  }

  private static Run played(double[] sums, String keys, Object... arguments) {
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(keys.getBytes()));
    try {
      return run(new ToneCommand(summing(sums), System.out), arguments);
    } finally {
      System.setIn(before);
    }
  }

  @Test
  void playing_sendsTheToneToTheOutput() {
    double[] sums = new double[3];
    Run run = played(sums, "-\n", "--play", "--seconds", 1, "--dbfs", -20, "--fade", 0);
    assertEquals(0, run.code, run.err);
    assertEquals("-21.0 dBFS", run.out.strip());
    assertEquals(48_000, sums[1]);
    assertEquals(0.5 * Math.pow(10, -2.1), sums[0] / sums[1], 1e-6);
    assertEquals(1, sums[2], "the output is closed");
  }

  @Test
  void playedLevel_goesUpAndDown_neverAboveFullScale_andEnds() {
    double[] sums = new double[3];
    Run run = played(sums, "-++++q", "--play", "--seconds", 60, "--dbfs", -2, "--fade", 0);
    assertEquals(0, run.code, run.err);
    List<String> levels = run.out.lines().toList();
    assertEquals(
        List.of("-3.0 dBFS", "-2.0 dBFS", "-1.0 dBFS", "0.0 dBFS", "0.0 dBFS"),
        levels.stream().map(l -> l.replace("-0.0", "0.0")).toList());
    assertTrue(sums[1] < 48_000, "it ended at q after " + sums[1] + " samples");
    assertEquals(1, sums[2], "the output is closed");
  }

  @Test
  void withoutAnOutput_playingSaysSo() {
    assertBadTone("no sound output", "--play");
  }
}
