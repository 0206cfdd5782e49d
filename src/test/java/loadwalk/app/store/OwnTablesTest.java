package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.app.KeptSequencesOnDisk;
import loadwalk.app.loop.FakeClocks;
import loadwalk.app.sound.Inputs;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.ReadingId;
import loadwalk.cli.LedgerCommand;
import loadwalk.cli.OwnTables;
import loadwalk.cli.PlanCommand;
import loadwalk.cli.RehearseCommand;
import loadwalk.cli.ReplayCommand;
import loadwalk.cli.SheetCommand;
import loadwalk.view.ProgramEvent;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.walk.Effect;
import loadwalk.walk.Intent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** One changed row of a table in the data home changes every place that goes by it. */
class OwnTablesTest {
  private static final String AMPLIFIER =
      "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"Brightmoor\",\"model\":\"M 2\","
          + "\"ratings\":[{\"mode\":\"stereo\",\"ohms\":4,\"watts\":50,\"supplyVolts\":13.8}],"
          + "\"minimumOhms\":{\"stereo\":1,\"bridged\":2},\"fuses\":[20]}";
  private static final String BENCH =
      "{\"format\":\"loadwalk-bench/1\",\"name\":\"North bench\",%s"
          + "\"leads\":[{\"label\":\"plus\",\"awg\":4,\"metres\":1.5},"
          + "{\"label\":\"minus\",\"awg\":4,\"metres\":1.5}],\"fuse\":{\"amps\":20},"
          + "\"loads\":[{\"label\":\"4 ohm\",\"ohms\":4,\"watts\":300,\"count\":8}]}";
  private static final String SUPPLIES = "\"supplies\":[{\"volts\":13.8,\"amps\":200}],";
  private static final String WALK = "2026-03-01-brightmoor-m-2";
  private static final Size SIZE = new Size(110, 40);
  private static final Pattern LOST = Pattern.compile("the leads lose about ([\\d.]+) V");
  private static final Pattern FUSE =
      Pattern.compile("(\"blade, 19 mm[^\"]*\",40,[\\d.]+),([\\d.]+),([\\d.]*),(.*)");

  private final FakeClocks clocks = new FakeClocks();

  @TempDir private Path folder;

  private Path home(String name, String table) throws IOException {
    Path home = Files.createDirectories(folder.resolve(name));
    if (!table.isEmpty()) {
      Files.createDirectories(home.resolve("data"));
      Files.writeString(home.resolve("data").resolve(table), changed(table, 10));
    }
    return home;
  }

  /** Returns a table of rows that differ from the stock ones by a factor. */
  private static String changed(String table, double factor) throws IOException {
    String source = ",\"measured here\",read\n";
    switch (table) {
      case "wire.csv":
        return "gauge,ohmsPerKilometre,source,how\nAWG 4," + 0.815 * factor + source;
      case "ampacity.csv":
        return "gauge,amps,source,how\nAWG 4," + 120 / factor + source;
      case "insulation.csv":
        return "gauge,celsius,amps,source,how\nAWG 4,75," + 120 / factor + source;
      case "limits.csv":
        return "key,value,unit,source,how\nlead-celsius," + 10 * factor + ",degC" + source;
      default:
        return slower(factor);
    }
  }

  /** The kind of fuse that the bench and the amplifier have, every time longer by a factor. */
  private static String slower(double factor) throws IOException {
    String stock = Files.readString(Path.of("src/main/resources/loadwalk/data/fuse.csv"));
    StringBuilder own = new StringBuilder(stock.lines().findFirst().orElseThrow() + "\n");
    Matcher point = FUSE.matcher(stock);
    while (point.find()) {
      String most = point.group(3);
      own.append(point.group(1)).append(',').append(factor * Double.parseDouble(point.group(2)));
      own.append(',').append(most.isEmpty() ? "" : factor * Double.parseDouble(most));
      own.append(',').append(point.group(4)).append('\n');
    }
    return own.toString();
  }

  private String run(Object command, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        new CommandLine(command)
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(arguments);
    assertTrue(code == 0 || code == 3, err.toString());
    return out.toString();
  }

  private static Amplifier amplifier() {
    return BenchFiles.AMPLIFIER
        .read(AMPLIFIER.getBytes(StandardCharsets.UTF_8), "amp")
        .found()
        .orElseThrow();
  }

  private static Bench bench(String supplies) {
    byte[] bytes = BENCH.formatted(supplies).getBytes(StandardCharsets.UTF_8);
    return BenchFiles.BENCH.read(bytes, "bench").found().orElseThrow();
  }

  private ProgramUnderTest opened(Path home, String supplies) {
    ProgramUnderTest program =
        new ProgramUnderTest(home, clocks, new Look(false), Inputs.NONE, OwnTables.rules(home));
    program.open(
        new Effect.OpenWalk("stereo-only", amplifier(), bench(supplies), OptionalLong.of(3), 1));
    return program;
  }

  /** Walks on the practice bench and returns what plain mode says. */
  private String plain(Path home) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    opened(home, "").fill(new PrintStream(said, true, StandardCharsets.UTF_8));
    return said.toString(StandardCharsets.UTF_8);
  }

  private String rehearsed(Path home) throws IOException {
    Path line = folder.resolve("line.jsonl");
    Files.writeString(
        line,
        "{\"name\":\"x\",\"amp\":"
            + AMPLIFIER
            + ",\"bench\":"
            + BENCH.formatted("")
            + ",\"answers\":{\"stereo-4\":{\"outputVolts\":\"14.2 V\",\"supplyVolts\":\"13.7 V\","
            + "\"supplyAmps\":\"11.5 A\"}}}\n");
    return run(
        new RehearseCommand(new KeptSequencesOnDisk()),
        "--home",
        home.toString(),
        "--sequence",
        "stereo-only",
        line.toString());
  }

  private String planned(Path home) throws IOException {
    Path amp = Files.writeString(folder.resolve("amp.json"), AMPLIFIER);
    Path bench = Files.writeString(folder.resolve("bench.json"), BENCH.formatted(""));
    return run(
        new PlanCommand(new KeptSequencesOnDisk()),
        "stereo-only",
        "--home",
        home.toString(),
        "--amp",
        amp.toString(),
        "--bench",
        bench.toString());
  }

  private String replayed(Path home) {
    return run(new ReplayCommand(KeptWalksOnDisk::at), "--home", home.toString(), WALK).strip();
  }

  private Map<String, String> said(Path home) throws IOException {
    Map<String, String> said = new LinkedHashMap<>();
    said.put("plain", plain(home));
    said.put("plan", planned(home));
    said.put("rehearse", rehearsed(home));
    said.put(
        "sheet",
        run(new SheetCommand(KeptWalksOnDisk::at), "--home", home.toString(), WALK, "--json"));
    return said;
  }

  @ParameterizedTest
  @ValueSource(strings = {"wire.csv", "ampacity.csv", "fuse.csv", "limits.csv", "insulation.csv"})
  void changedRow_changesEveryPlaceThatGoesByIt(String table) throws IOException {
    Path own = home("own", table);
    Path stock = home("stock", "");
    Map<String, String> byOwn = said(own);
    Map<String, String> byStock = said(stock);
    byStock.forEach((place, text) -> assertNotEquals(text, byOwn.get(place), place));
    assertEquals(WALK + ": nothing differs", replayed(own));
    assertEquals(WALK + ": nothing differs", replayed(stock));
    run(new LedgerCommand(KeptWalksOnDisk::at), "--home", own.toString());
  }

  @Test
  void walkOfOwnTables_replayedWithoutThem_isJudgedDifferently() throws IOException {
    Path own = home("own", "ampacity.csv");
    plain(own);
    Files.delete(own.resolve("data/ampacity.csv"));
    assertTrue(replayed(own).contains("lead-amps"), replayed(own));
  }

  @Test
  void cautionAndLeadVolts_ofOneBrief_agree() throws IOException {
    JsonNode steps = new ObjectMapper().readTree(rehearsed(home("own", "wire.csv"))).get("steps");
    int told = 0;
    for (JsonNode step : steps) {
      for (JsonNode caution : step.get("cautions")) {
        if (caution.get("code").asText().equals("lead-drop")) {
          JsonNode band = step.get("forecast").get("leadVolts");
          String text = caution.get("text").asText();
          Matcher likely = LOST.matcher(text);
          assertTrue(likely.find(), text);
          double volts = Double.parseDouble(likely.group(1));
          // By the stock copper a tenth is lost: no caution, and a band that ends below it.
          double low = band.get(0).asDouble();
          double high = band.get(1).asDouble();
          assertTrue(low < volts && volts < high, text + " " + band);
          told++;
        }
      }
    }
    assertTrue(told > 0, "no lead was told to lose volts");
  }

  @Test
  void runPanel_holdsTheDropAgainstTheOwnCopper() throws IOException {
    assertTrue(runPanel(home("stock", "")).contains("joint wastes"));
    assertFalse(runPanel(home("own", "wire.csv")).contains("joint wastes"));
  }

  private String runPanel(Path home) {
    ProgramUnderTest program = opened(home, SUPPLIES);
    skipTo(program, "stereo-4");
    begin(program);
    for (Map.Entry<ReadingId, String> e :
        Map.of(
                ReadingId.SUPPLY_VOLTS, "12.9 V",
                ReadingId.SUPPLY_AMPS, "30 A")
            .entrySet()) {
      program.accept(
          new ProgramEvent.OfWalk(new Intent.Enter("stereo-4", e.getKey(), e.getValue())));
      program
          .model()
          .state()
          .step("stereo-4")
          .openDoubts()
          .forEach(
              id ->
                  program.accept(
                      new ProgramEvent.OfWalk(new Intent.StandBy("stereo-4", id, "read twice"))));
    }
    return String.join("\n", program.paintWhole(SIZE).lines());
  }

  private static void skipTo(ProgramUnderTest program, String step) {
    while (!program.model().state().currentId().equals(step)) {
      program.accept(new ProgramEvent.OfWalk(new Intent.Skip("not today")));
    }
  }

  private static void begin(ProgramUnderTest program) {
    program.accept(new ProgramEvent.OfWalk(new Intent.LiftHalt("cooled and watched")));
    program.accept(new ProgramEvent.OfWalk(new Intent.Begin()));
    program.accept(new ProgramEvent.OfWalk(new Intent.Arm("4 ohm")));
  }
}
