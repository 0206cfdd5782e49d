package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.json.JsonText;
import loadwalk.json.Node;
import loadwalk.json.Read;
import loadwalk.plan.Rules;
import loadwalk.plan.StockRules;
import loadwalk.sequence.Sequence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class RehearseCommandTest {
  private static final String AMP = "\"amp\":{\"maker\":\"Brightmoor\",\"model\":\"B2\"}";
  private static final String SEQUENCE =
      "{\"format\":\"loadwalk-sequence/1\",\"name\":\"short\",\"title\":\"Short\","
          + "\"tone\":{\"hertz\":40},\"limit\":{\"thdPercent\":1},\"supplyVolts\":13.8,\"steps\":["
          + "{\"do\":\"warm-up\",\"minutes\":15},{\"do\":\"idle\"},"
          + "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4},"
          + "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":2},"
          + "{\"do\":\"measure\",\"mode\":\"bridged\",\"ohms\":4}]}";

  @TempDir private Path folder;
  private final StringWriter printed = new StringWriter();
  private final StringWriter complained = new StringWriter();

  @Test
  void rehearse_linesThatBreak_areToldAndHoldNothingUp() {
    int lines = 5_000;
    PrintWriter out = new PrintWriter(printed);
    PrintWriter err = new PrintWriter(complained);
    try (RehearsalLoop loop =
        new RehearsalLoop(
            (line, file) -> {
              throw new StackOverflowError("deep");
            },
            out,
            err)) {
      for (int i = 1; i <= lines; i++) {
        loop.add(new LineReader.Line(i, new byte[] {'x'}), "lines");
      }
      assertEquals(ExitCode.FAULT, loop.finish());
    }
    assertEquals(lines, complained.toString().lines().filter(l -> l.contains("deep")).count());
  }

  @Test
  void rehearse_ofALine_printsAStepEachInOrder() throws IOException {
    assertEquals(
        0,
        run(
            "{\"name\":\"one\","
                + AMP
                + ",\"answers\":{\"idle\":{\"supplyAmps\":\"1.9 A\"},"
                + "\"stereo-4\":{\"outputVolts\":\"13.4 V\",\"supplyVolts\":13.7,"
                + "\"supplyAmps\":\"10 A\"}}}"));
    Node.Obj line = lines().get(0);
    assertEquals("loadwalk-rehearsal/1", text(line, "format"));
    assertEquals("one", text(line, "name"));
    List<Node.Obj> steps = objects(line, "steps");
    assertEquals(
        List.of("warm-up", "idle", "stereo-4", "stereo-2", "bridged-4"),
        steps.stream().map(step -> text(step, "step")).toList());
    for (Node.Obj step : steps) {
      assertTrue(List.of("clear", "heed", "halt").contains(text(step, "verdict")));
      assertTrue(object(step, "forecast").get("supplyAmps").isPresent(), text(step, "step"));
    }
    Node.Obj result = object(steps.get(2), "result");
    // 13.4 V into a nominal 4 Ω: 13.4²/4 = 44.89 W a channel, twice that in all; 13.7 V times 10 A.
    assertEquals(44.89, number(result, "watts"), 1e-9);
    assertEquals(89.78, number(result, "totalWatts"), 1e-9);
    assertEquals(137, number(result, "inputWatts"), 1e-9);
    assertEquals(89.78 / 137, number(result, "efficiency"), 1e-9);
    assertEquals(137 - 89.78, number(result, "heatWatts"), 1e-9);
    assertTrue(number(result, "u") > 0);
    assertEquals("no answer", text(steps.get(3), "skipped"));
    assertEquals("loadwalk-sheet/1", text(object(line, "sheet"), "format"));
    assertEquals("", complained.toString());
  }

  /** The keys stand as design.md section 3 writes them, in its order. */
  @Test
  void rehearse_ofTheExampleOfTheDesign_hasItsKeys() throws IOException {
    assertEquals(
        0,
        run(
            "{\"name\":\"one\","
                + AMP
                + ",\"bench\":{\"name\":\"North bench\"},\"answers\":{\"idle\":{\"supplyAmps\":"
                + "\"1.9 A\"},\"stereo-4\":{\"outputVolts\":\"13.4 V\",\"supplyVolts\":\"13.7 V\","
                + "\"supplyAmps\":\"16 A\"},\"stereo-2\":{\"outputVolts\":\"131 V\"}}}"));
    Node.Obj line = lines().get(0);
    assertEquals(List.of("format", "name", "steps", "sheet"), keys(line));
    List<Node.Obj> steps = objects(line, "steps");
    Node.Obj four = steps.get(2);
    assertEquals(
        List.of("step", "verdict", "cautions", "forecast", "doubts", "result"), keys(four));
    assertEquals(List.of("code", "text"), keys(objects(four, "cautions").get(0)));
    Node.Obj forecast = object(four, "forecast");
    for (String key : keys(forecast)) {
      List<Node> ends = ((Node.Arr) forecast.get(key).orElseThrow()).items();
      assertEquals(2, ends.size(), key);
      assertTrue(((Node.Num) ends.get(0)).value() <= ((Node.Num) ends.get(1)).value(), key);
    }
    assertTrue(keys(forecast).containsAll(List.of("outputVolts", "supplyVolts", "supplyAmps")));
    List<String> result = keys(object(four, "result"));
    assertTrue(
        result.containsAll(List.of("watts", "u", "totalWatts", "inputWatts", "efficiency")),
        result.toString());
    Node.Obj doubt = objects(steps.get(3), "doubts").get(0);
    assertEquals(List.of("reading", "slip", "text"), keys(doubt).subList(0, 3));
    assertEquals("outputVolts", text(doubt, "reading"));
    assertEquals("decimal-point", text(doubt, "slip"));
  }

  @Test
  void rehearse_withBadLines_reportsThemByNumberAndSkipsThem() throws IOException {
    String good = "{\"name\":\"good\"," + AMP + ",\"answers\":{}}";
    String file = file(good, "{\"name\":", "", "[]", "{\"name\":\"x\"}", good);
    assertEquals(2, rehearse(file));
    assertEquals(2, lines().size());
    List<String> complaints = complained.toString().lines().toList();
    assertEquals(3, complaints.size(), complaints.toString());
    assertTrue(complaints.get(0).startsWith(file + ":2:"), complaints.get(0));
    assertEquals(file + ":4:1: a rehearsal must be an object, not a list", complaints.get(1));
    assertEquals(file + ":5:1: key «amp» is missing", complaints.get(2));
  }

  @Test
  void rehearse_withAnswersThatCannotBeTaken_reportsThemAndTakesTheOthers() throws IOException {
    int code =
        run(
            "{\"name\":\"one\",\"nme\":1,"
                + AMP
                + ",\"answers\":{\"stereo-4\":{\"outputVolts\":\"13.4 V\",\"supplyAmps\":\"many\","
                + "\"supplyVlts\":\"13.7\",\"thdPercent\":[1]},\"stereo-8\":{}}}");
    assertEquals(2, code);
    Node.Obj line = lines().get(0);
    Node.Obj step = objects(line, "steps").get(2);
    assertEquals(44.89, number(object(step, "result"), "watts"), 1e-9);
    assertEquals(
        List.of("thdPercent", "supplyAmps", "supplyVlts"),
        objects(step, "problems").stream().map(p -> text(p, "reading")).toList());
    assertEquals("stereo-8", text(objects(line, "problems").get(0), "step"));
    String complaints = complained.toString();
    assertTrue(complaints.contains("nearest known key: «name»"), complaints);
    assertTrue(complaints.contains(":1: step stereo-4, supplyAmps: «many» is not a number"));
    assertTrue(complaints.contains("nearest: «supplyVolts»"), complaints);
    assertTrue(complaints.contains("step stereo-8: the sequence has no such step"), complaints);
  }

  @Test
  void rehearse_ofADoubtedReading_feedsNoLaterForecast() throws IOException {
    String start = "{" + AMP + ",\"answers\":{\"idle\":{\"supplyAmps\":\"1.9 A\"},";
    String four = "\"stereo-4\":{\"outputVolts\":\"13.4 V\",\"supplyAmps\":\"10 A\"}";
    run(
        start + four + "}}",
        start + four + ",\"stereo-2\":{\"outputVolts\":\"128 V\"}}}",
        start + four + ",\"stereo-2\":{\"outputVolts\":\"12.8 V\"}}}");
    List<Node.Obj> lines = lines();
    Node.Obj doubted = objects(lines.get(1), "steps").get(3);
    assertEquals("decimal-point", text(objects(doubted, "doubts").get(0), "slip"));
    assertEquals(128 * 128 / 2.0, number(object(doubted, "result"), "watts"), 1e-9);
    List<String> bridged =
        lines.stream().map(l -> ends(objects(l, "steps").get(4), "outputVolts")).toList();
    assertEquals(bridged.get(0), bridged.get(1));
    assertFalse(bridged.get(0).equals(bridged.get(2)), "an undoubted reading must count");
  }

  @Test
  void rehearse_ofManyLines_keepsTheirOrderAndRepeatsToTheByte() throws IOException {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      lines.add(
          "{\"name\":\"w"
              + i
              + "\","
              + AMP
              + ",\"answers\":{\"stereo-4\":{\"outputVolts\":\""
              + (8 + 0.1 * i)
              + "\"}}}");
    }
    run(lines.toArray(String[]::new));
    String first = printed.toString();
    List<String> names = lines().stream().map(line -> text(line, "name")).toList();
    for (int i = 0; i < 150; i++) {
      assertEquals("w" + i, names.get(i));
    }
    printed.getBuffer().setLength(0);
    run(lines.toArray(String[]::new));
    assertEquals(first, printed.toString());
  }

  @Test
  void rehearse_stepThatEnded_hasItsOutcome_andHoldsTheNext() throws IOException {
    run(
        "{\"name\":\"one\","
            + AMP
            + ",\"answers\":{\"stereo-4\":{\"outcome\":\"gave-up\"},"
            + "\"stereo-2\":{\"outputVolts\":\"9 V\",\"supplyAmps\":\"41.2 A\","
            + "\"outcome\":\"protected\"},\"idle\":{\"outcome\":\"protected\"}}}");
    Node.Obj line = lines().get(0);
    List<Node.Obj> steps = objects(line, "steps");
    assertEquals("the step drives no load", text(objects(steps.get(1), "problems").get(0), "text"));
    assertEquals("no answer", text(steps.get(2), "skipped"));
    assertEquals(
        "«gave-up» is not a way for a step to end; nearest: «gave-out»",
        text(objects(steps.get(2), "problems").get(0), "text"));
    assertEquals(List.of("outcome"), keys(object(steps.get(3), "result")));
    assertEquals("protected", text(object(steps.get(3), "result"), "outcome"));
    Node.Obj ended = objects(object(line, "sheet"), "ended").get(0);
    assertEquals(41.2, number(object(ended, "readings"), "supplyAmps"), 1e-9);
    // 4 Ω bridged is 2 Ω a channel, at which the amplifier shut itself off.
    assertEquals("halt", text(steps.get(4), "verdict"));
    assertTrue(
        objects(steps.get(4), "cautions").stream()
            .anyMatch(caution -> text(caution, "code").equals("protected-before")));
  }

  @Test
  void rehearse_withoutTheSequenceOrTheFile_saysSo() throws IOException {
    assertEquals(2, execute("--sequence", "none", "-"));
    assertEquals("There is no sequence named none, and no such file.\n", complained.toString());
    complained.getBuffer().setLength(0);
    String missing = folder.resolve("missing").toString();
    assertEquals(2, rehearse(missing));
    assertEquals(missing + " cannot be read.\n", complained.toString());
  }

  private int run(String... lines) throws IOException {
    return rehearse(file(lines));
  }

  private int rehearse(String file) throws IOException {
    Path sequence = folder.resolve("short.json");
    Files.writeString(sequence, SEQUENCE);
    return execute("--sequence", sequence.toString(), file);
  }

  private int execute(String... arguments) {
    return new CommandLine(new RehearseCommand(new NoSequences()))
        .setOut(new PrintWriter(printed))
        .setErr(new PrintWriter(complained))
        .execute(arguments);
  }

  private String file(String... lines) throws IOException {
    Path file = folder.resolve("in.jsonl");
    Files.writeString(file, String.join("\n", lines), StandardCharsets.UTF_8);
    return file.toString();
  }

  private List<Node.Obj> lines() {
    return printed
        .toString()
        .lines()
        .map(l -> (Node.Obj) JsonText.strict("out").read(l).found().orElseThrow())
        .toList();
  }

  private static List<String> keys(Node.Obj object) {
    return List.copyOf(object.members().keySet());
  }

  private static String text(Node.Obj object, String key) {
    return ((Node.Str) object.get(key).orElseThrow()).text();
  }

  private static double number(Node.Obj object, String key) {
    return ((Node.Num) object.get(key).orElseThrow()).value();
  }

  private static Node.Obj object(Node.Obj object, String key) {
    return (Node.Obj) object.get(key).orElseThrow();
  }

  private static List<Node.Obj> objects(Node.Obj object, String key) {
    return ((Node.Arr) object.get(key).orElseThrow())
        .items().stream().map(n -> (Node.Obj) n).toList();
  }

  private static String ends(Node.Obj step, String reading) {
    return ((Node.Arr) object(step, "forecast").get(reading).orElseThrow())
        .items().stream().map(n -> String.valueOf(((Node.Num) n).value())).toList().toString();
  }

  /** A data home with nothing in it. */
  private static final class NoSequences implements KeptSequences {
    @Override
    public String version() {
      return "1";
    }

    @Override
    public Rules rules(Optional<Path> home) {
      return StockRules.RULES;
    }

    @Override
    public Optional<Read<Sequence>> named(Optional<Path> home, String name) {
      return Optional.empty();
    }
  }
}
