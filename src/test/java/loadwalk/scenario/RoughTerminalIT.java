package loadwalk.scenario;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import loadwalk.app.Child;
import loadwalk.shipped.Shipped;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a real terminal can throw at the program: sizes, megabytes, signals, faults, old looks. */
class RoughTerminalIT extends InShell {
  private static final long SEED = 606;

  private void restored(ProcessHandle program) throws Exception {
    program.onExit().get(120, TimeUnit.SECONDS);
    pane.line("stty -a > " + folder.resolve("after") + "; echo ba''ck").sees("back");
    assertEquals(pane.read("before"), pane.read("after"));
  }

  @Test
  void stormOfSizes_endsWithTheSameScreen() throws Exception {
    Random random = new Random(SEED);
    ProcessHandle program = pane.startProgram();
    pane.keys("Enter").sees("full-walk");
    String before = pane.picture();
    for (int i = 0; i < 60; i++) {
      boolean tiny = i % 7 == 0;
      pane.resize(tiny ? 1 : 1 + random.nextInt(200), tiny ? 1 : 1 + random.nextInt(80));
    }
    pane.resize(60, 20).sees("80 columns").resize(80, 24).sees("full-walk", "Left Right");
    assertEquals(before, pane.picture(), "seed " + SEED);
    pane.keys("F10").sees("New walk").keys("F10");
    restored(program);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void pastedMegabytes_areTakenWithoutHarm_andTheProgramStillHears(boolean marked)
      throws Exception {
    Path much = folder.resolve("much");
    Files.writeString(much, "a long line of words, 4 V\n".repeat(marked ? 80_000 : 20_000));
    ProcessHandle program = pane.startProgram();
    pane.keys("Enter").sees("full-walk").keys("Enter").sees("brief: CLEAR").keys("F2").sees("Note");
    pane.pasteFile(much, marked);
    if (marked) {
      pane.sees("a long line of words").keys("Enter").sees("F2 note");
    } else {
      // Its line breaks ended the note; what followed is no load, so nothing was started.
      pane.sees("type ohms such as");
    }
    pane.keys("C-c");
    restored(program);
  }

  @Test
  void stopKey_isHeard_whileAPasteHasNoEnd() throws Exception {
    ProcessHandle program = pane.startProgram();
    pane.keys("Enter").sees("full-walk").keys("Enter").sees("brief: CLEAR").keys("F2").sees("Note");
    pane.begunPaste("half a note").keys("Escape").sees("S T O P");
    pane.sees("11 keys were typed before this was on the screen").keys("C-c");
    restored(program);
  }

  @Test
  void hangUpSignal_restoresTheTerminal() throws Exception {
    ProcessHandle program = pane.startProgram();
    assertEquals(
        0, Shipped.limited(new ProcessBuilder("kill", "-HUP", "" + program.pid())).waitFor());
    restored(program);
  }

  @Test
  void terminalWithoutColourAndUtf8_getsNeither() throws Exception {
    List<String> command = Shipped.command(folder.resolve("home"));
    ProcessHandle program = pane.start("LC_ALL=C NO_COLOR=1", command, "New walk");
    pane.keys("Enter").sees("full-walk").keys("Enter").sees("brief: CLEAR");
    String shown = pane.colouredPicture();
    assertTrue(shown.chars().allMatch(c -> c < 127), shown);
    assertFalse(shown.matches("(?s).*\u001b\\[([0-9;]*;)?([34][0-8]|9[0-7])m.*"), shown);
    pane.keys("F10").sees("Resume").keys("F10");
    restored(program);
  }

  @Test
  void escapeSequencesInFilesAndTheirNames_reachNoTerminal() throws Exception {
    String evil = "\u001b]0;owned\u0007\u001b[2J\u001b[31m\u009b2J";
    String json = "\\u001b]0;owned\\u0007\\u001b[2J\\u009b2J";
    Path sequences = Files.createDirectories(folder.resolve("home/sequences"));
    Path sessions = Files.createDirectories(folder.resolve("home/sessions"));
    String steps = "\"steps\":[{\"do\":\"note\",\"text\":\"" + json + "\"}]}";
    String head = "{\"format\":\"loadwalk-sequence/1\",\"name\":\"mine\",\"title\":\"" + json;
    String rest = "\",\"tone\":{\"hertz\":40},\"limit\":{\"thdPercent\":1},\"supplyVolts\":13.8,";
    Files.writeString(sequences.resolve("mine.json"), head + rest + steps);
    String named = evil.replace("/", "") + ".json";
    Files.writeString(sequences.resolve(named), head + rest + steps);
    Files.write(sessions.resolve("evil" + evil + ".jsonl"), evil.getBytes(UTF_8));
    Files.write(sessions.resolve("evil.jsonl"), evil.getBytes(UTF_8));
    Path amplifier = folder.resolve("amp.json");
    String maker = "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"" + json;
    Files.writeString(amplifier, maker + "\",\"model\":\"B2\"}");
    ProcessHandle program = pane.startProgram();
    pane.keys("Enter").sees("full-walk").keys("Down").keys("Right").keys("Right").keys("F10");
    pane.sees("New walk").keys("F10");
    restored(program);
    int runs = 0;
    for (List<String> words :
        List.of(
            List.of("check", amplifier.toString(), sequences.resolve("mine.json").toString()),
            List.of("check", sequences.resolve(named).toString(), evil),
            List.of("rehearse", "--sequence", evil, "-"),
            List.of("sheet", evil),
            List.of(evil, "--" + evil),
            List.of("walk", "mine", "--plain", "--amp", amplifier.toString()),
            List.of("walk", "mine", "--practice", "--plain"),
            List.of("walk", evil, "--practice"),
            List.of("resume", evil),
            List.of("ledger"))) {
      String[] all = words.toArray(String[]::new);
      pane.run("< /dev/null", Shipped.command(folder.resolve("home"), all));
      pane.line("echo fini''shed " + ++runs).sees("finished " + runs);
      assertNotEquals("owned", pane.title(), words.toString());
      assertFalse(pane.picture().contains("\u009b"), words.toString());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"loop", "thread"})
  void faultOfTheProgram_restoresTheTerminal_reports_andSaysWhatToDo(String what) throws Exception {
    Path home = folder.resolve("home");
    ProcessHandle program = pane.start("", Child.brokenCommand(home, what), "New walk");
    pane.keys("F10").sees("Loadwalk stopped on a fault of its own");
    restored(program);
    try (Stream<Path> files = Files.list(home.resolve("crashes"))) {
      Path report = files.findFirst().orElseThrow();
      String text = Files.readString(report);
      assertTrue(text.contains("java.lang.IllegalStateException"), text);
      assertTrue(text.contains("BrokenChild"), text);
      assertFalse(text.contains("4711") || text.contains("customer"), text);
      assertFalse(pane.picture().contains("4711"), pane.picture());
    }
  }
}
