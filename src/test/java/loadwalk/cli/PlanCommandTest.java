package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loadwalk.app.KeptSequencesOnDisk;
import loadwalk.json.JsonText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Checks the command from its arguments to its exit codes. */
class PlanCommandTest {
  private static final String AMPLIFIER =
      "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"Brightmoor\",\"model\":\"M 2\","
          + "\"ratings\":[{\"mode\":\"stereo\",\"ohms\":4,\"watts\":20,\"supplyVolts\":13.8}],"
          + "\"minimumOhms\":{\"stereo\":1,\"bridged\":2},\"fuses\":[60]}";
  private static final String BENCH =
      "{\"format\":\"loadwalk-bench/1\",\"name\":\"North bench\","
          + "\"supplies\":[{\"volts\":14.4,\"amps\":200}],"
          + "\"leads\":[{\"label\":\"plus\",\"awg\":4,\"metres\":1,\"insulationCelsius\":105},"
          + "{\"label\":\"minus\",\"awg\":4,\"metres\":1,\"insulationCelsius\":105}],\"fuse\":{\"amps\":150},\"loads\":[{\"label\":\"8"
          + " ohm\",\"ohms\":8,\"watts\":100,\"count\":4}]}";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    List<String> words = new ArrayList<>(List.of(arguments));
    words.addAll(List.of("--home", folder.toString()));
    return new CommandLine(new PlanCommand(new KeptSequencesOnDisk()))
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err))
        .execute(words.toArray(String[]::new));
  }

  private String file(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return file.toString();
  }

  @Test
  void plan_ofALightSequence_isATableAndGives0() throws IOException {
    String amplifier = file("amp.json", AMPLIFIER);
    String bench = file("bench.json", BENCH);
    assertEquals(0, run("rated-conditions", "--amp", amplifier, "--bench", bench), err.toString());
    assertTrue(out.toString().startsWith("Bench plan for rated-conditions\n"), out.toString());
    assertTrue(out.toString().contains("Wiring of stereo 4 Ω"), out.toString());
  }

  @Test
  void plan_withAHalt_gives3() throws IOException {
    assertEquals(3, run("full-walk", "--amp", file("amp.json", AMPLIFIER)));
    assertTrue(out.toString().contains("What the bench needs"), out.toString());
  }

  @Test
  void json_goesToStdoutOrAFile() throws IOException {
    String amplifier = file("amp.json", AMPLIFIER);
    run("rated-conditions", "--amp", amplifier, "--json");
    assertTrue(JsonText.strict("plan").read(out.toString()).found().isPresent(), out.toString());
    Path target = folder.resolve("plan.json");
    run("rated-conditions", "--amp", amplifier, "--json", target.toString());
    assertTrue(Files.readString(target).contains("\"loadwalk-plan/1\""));
    run("rated-conditions", "--amp", amplifier, "--markdown", target.toString());
    assertTrue(Files.readString(target).startsWith("# Bench plan for rated"));
    run("rated-conditions", "--amp", amplifier, "--html", target.toString());
    assertTrue(Files.readString(target).contains("<h1>Bench plan for rated-conditions</h1>"));
  }

  @Test
  void output_neverTakesThePlaceOfWhatIsRead() throws IOException {
    String amplifier = file("amp.json", AMPLIFIER);
    String bench = file("bench.json", BENCH);
    for (String target : List.of(amplifier, bench, folder + "/./amp.json")) {
      err.getBuffer().setLength(0);
      String[] words = {"rated-conditions", "--amp", amplifier, "--bench", bench};
      List<String> all = new ArrayList<>(List.of(words));
      all.addAll(List.of("--html", file("p.html", ""), "--json", target));
      assertEquals(2, run(all.toArray(String[]::new)));
      assertEquals(target + " is read by this command; name another file.\n", err.toString());
    }
    assertEquals(AMPLIFIER, Files.readString(Path.of(amplifier)));
    assertEquals(BENCH, Files.readString(Path.of(bench)));
    assertEquals("", Files.readString(folder.resolve("p.html")), "half of the outputs written");
  }

  @Test
  void ascii_isAscii_whateverTheNames() throws IOException {
    String amplifier = file("amp.json", AMPLIFIER.replace("Brightmoor", "Blåmyr Ω 音"));
    String bench = file("bench.json", BENCH.replace("North bench", "Büchen µ–±"));
    assertEquals(
        0,
        run("rated-conditions", "--amp", amplifier, "--bench", bench, "--ascii"),
        err.toString());
    assertTrue(out.toString().chars().allMatch(c -> c == '\n' || (c >= ' ' && c <= '~')));
  }

  @Test
  void badInput_isToldAndGives2() throws IOException {
    String amplifier = file("amp.json", AMPLIFIER);
    assertEquals(2, run("no-such-walk", "--amp", amplifier));
    assertTrue(err.toString().contains("There is no sequence named"), err.toString());
    assertEquals(2, run("full-walk", "--amp", folder.resolve("none.json").toString()));
    assertTrue(err.toString().contains("there is no such file"), err.toString());
    assertEquals(2, run("full-walk"));
    String absurd = BENCH.replace("\"metres\":1", "\"metres\":0");
    assertEquals(2, run("full-walk", "--amp", amplifier, "--bench", file("b.json", absurd)));
    assertTrue(err.toString().contains("metres"), err.toString());
    String folderName = folder.toString();
    assertEquals(2, run("rated-conditions", "--amp", amplifier, "--json", folderName));
    assertTrue(err.toString().contains("cannot be written"), err.toString());
  }

  @Test
  void ownTables_areUsedAndAFaultInThemIsTold() throws IOException {
    String amplifier = file("amp.json", AMPLIFIER);
    String bench = file("bench.json", BENCH);
    file("data/ampacity.csv", "gauge,amps,source,how\nAWG 4,1,my own fear,read\n");
    run("rated-conditions", "--amp", amplifier, "--bench", bench);
    assertTrue(out.toString().contains("carries 1 A. Use a heavier lead"), out.toString());
    file("data/ampacity.csv", "gauge,amps,source,how\nAWG 4,-1,x,read\n");
    assertEquals(2, run("rated-conditions", "--amp", amplifier, "--bench", bench));
    assertEquals("ampacity.csv line 2: column amps must be above 0, got -1\n", err.toString());
  }
}
