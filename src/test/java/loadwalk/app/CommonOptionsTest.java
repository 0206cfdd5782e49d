package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.cli.BadInput;
import loadwalk.cli.CommonOptions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Holds that {@code --home} means the same ahead of every command as behind it. */
class CommonOptionsTest {
  private static final String WALK = "2026-11-25-halvorsen-pike-hp-250";
  private static final String SEQUENCE = "own-walk";
  private static final List<String> COMMANDS = Main.COMMANDS;

  @TempDir Path folder;

  private final InputStream input = System.in;
  private Path home;
  private Path empty;
  private String another = "another";

  /** What each command needs to succeed; the walk and the sequence are in one home alone. */
  private List<String> words(String command) {
    Map<String, List<String>> words =
        Map.ofEntries(
            Map.entry("walk", List.of(SEQUENCE, "--practice", "--fill")),
            Map.entry("resume", List.of(WALK, "--plain")),
            Map.entry("rehearse", List.of("--sequence", SEQUENCE, file("none.jsonl"))),
            Map.entry("plan", List.of(SEQUENCE, "--amp", file("amp.json"))),
            Map.entry("meters", List.of("--example")),
            Map.entry("sheet", List.of(WALK)),
            Map.entry("ledger", List.of("--compare", WALK + "," + another)),
            Map.entry("tone", List.of(file("tone.wav"), "--seconds", "0.2")),
            Map.entry("wave", List.of(file("tone.wav"))),
            Map.entry("replay", List.of(WALK)),
            Map.entry("check", List.of("sequences/full-walk.json")));
    return words.get(command);
  }

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  @AfterEach
  void giveTheInputBack() {
    System.setIn(input);
  }

  @BeforeEach
  void furnish() throws IOException {
    System.setIn(InputStream.nullInputStream());
    home = Files.createDirectories(folder.resolve("home"));
    empty = Files.createDirectories(folder.resolve("empty"));
    String own =
        Files.readString(Path.of("sequences/stereo-only.json"))
            .replace("\"stereo-only\"", "\"" + SEQUENCE + "\"");
    Files.createDirectories(home.resolve("sequences"));
    Files.writeString(home.resolve("sequences").resolve(SEQUENCE + ".json"), own);
    Files.createDirectories(home.resolve("sessions"));
    Path walk = Path.of("sessions", WALK + ".jsonl");
    Files.copy(walk, home.resolve(walk));
    Files.writeString(folder.resolve("none.jsonl"), "");
    Files.writeString(
        folder.resolve("amp.json"),
        "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"Brightmoor\",\"model\":\"M 2\","
            + "\"ratings\":[{\"mode\":\"stereo\",\"ohms\":4,\"watts\":20,\"supplyVolts\":13.8}],"
            + "\"minimumOhms\":{\"stereo\":1,\"bridged\":2},\"fuses\":[60]}");
    assertEquals(0, Main.run("tone", file("tone.wav"), "--seconds", "0.2"));
  }

  private static int run(List<String> first, String command, List<String> last) {
    List<String> all = new ArrayList<>(first);
    all.add(command);
    all.addAll(last);
    return Main.run(all.toArray(String[]::new));
  }

  /** Walks once more, for what wants two walks. */
  private void walkAnother() throws IOException {
    assertEquals(0, run(List.of("--home", home.toString()), "walk", words("walk")));
    try (var files = Files.list(home.resolve("sessions"))) {
      another =
          files
              .map(f -> f.getFileName().toString())
              .filter(f -> f.endsWith(".jsonl") && !f.startsWith(WALK))
              .map(f -> f.substring(0, f.length() - ".jsonl".length()))
              .findFirst()
              .orElseThrow();
    }
  }

  private static boolean needsTheHome(String command) {
    return !List.of("meters", "tone", "wave", "check").contains(command);
  }

  @ParameterizedTest
  @FieldSource("COMMANDS")
  void home_aheadOfACommand_isTheOneBehindIt(String command) throws IOException {
    if (command.equals("ledger")) {
      walkAnother();
    }
    List<String> there = List.of("--home", home.toString());
    List<String> elsewhere = List.of("--home", empty.toString());
    List<String> behind = new ArrayList<>(words(command));
    behind.addAll(there);
    int due = run(List.of(), command, behind);
    assertTrue(due == 0 || due == 3, command + " gave " + due);
    assertEquals(due, run(there, command, words(command)));
    assertEquals(due, run(List.of("--home=" + home), command, words(command)));
    if (needsTheHome(command)) {
      assertFalse(due == run(elsewhere, command, words(command)), command + " in another home");
    }
  }

  @ParameterizedTest
  @FieldSource("COMMANDS")
  void home_givenTwice_isRefused(String command) {
    List<String> behind = new ArrayList<>(words(command));
    behind.addAll(List.of("--home", home.toString()));
    assertEquals(2, run(List.of("--home", empty.toString()), command, behind));
    assertFalse(Files.exists(empty.resolve("sessions")), "something was written");
  }

  @Test
  void walk_isWrittenInTheHomeNamedAheadOfIt() throws IOException {
    assertEquals(0, run(List.of("--home", home.toString()), "walk", words("walk")));
    try (var files = Files.list(home.resolve("sessions"))) {
      assertEquals(2, files.filter(f -> f.toString().endsWith(".jsonl")).count());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"resume", "rehearse", "plan", "sheet", "ledger", "replay"})
  void home_thatIsNoFolder_isRefusedByACommandThatOnlyReads(String command) {
    List<String> words = command.equals("ledger") ? List.of() : words(command);
    for (String wrong : List.of(file("mistyped"), file("amp.json"))) {
      assertEquals(2, run(List.of("--home", wrong), command, words), command);
      assertEquals(2, run(List.of("--home=" + wrong), command, words), command);
    }
    assertFalse(Files.exists(folder.resolve("mistyped")));
  }

  @Test
  void home_thatIsNoFolder_isToldInOneSentence() {
    Path mistyped = folder.resolve("mistyped");
    Path amplifier = folder.resolve("amp.json");
    assertEquals("--home " + mistyped + ": there is no such folder.", refusal(mistyped));
    assertEquals("--home " + amplifier + " is a file; it must be a folder.", refusal(amplifier));
    assertEquals(Optional.of(empty), given("--home", empty.toString()).homeToRead());
    assertEquals(Optional.empty(), given().homeToRead());
  }

  private static String refusal(Path home) {
    CommonOptions option = given("--home", home.toString());
    return assertThrows(BadInput.class, option::homeToRead).getMessage();
  }

  private static CommonOptions given(String... words) {
    return CommandLine.populateCommand(new CommonOptions(), words);
  }

  @Test
  void walk_makesTheHomeItIsGiven() {
    assertEquals(
        0,
        run(
            List.of("--home", file("new")),
            "walk",
            List.of("stereo-only", "--practice", "--fill")));
    assertTrue(Files.isDirectory(folder.resolve("new").resolve("sessions")));
  }

  @Test
  void plain_aheadOfACommand_isTakenOrRefusedByIt() {
    List<String> plain = List.of("--plain", "--home", home.toString());
    assertEquals(0, run(plain, "walk", words("walk")));
    assertEquals(2, run(plain, "sheet", words("sheet")));
  }

  @Test
  void crash_isReportedInTheHomeNamed_howeverItIsWritten() throws IOException {
    assertEquals(1, Main.crashed(new IllegalStateException(), "--home=" + empty, "walk"));
    assertEquals(1, Main.crashed(new IllegalStateException(), "walk", "--home", empty.toString()));
    try (var files = Files.list(empty.resolve("crashes"))) {
      assertEquals(2, files.count());
    }
  }

  @Test
  void words_keepTheirOrderButForTheCommand() {
    List<String> commands = List.of("sheet", "walk");
    assertEquals(
        List.of("walk", "--plain", "--home", "sheet", "a", "--fill"),
        ArgumentOrder.commandFirst(
            List.of("--plain", "--home", "sheet", "walk", "a", "--fill"), commands));
    for (List<String> words :
        List.of(
            List.<String>of(),
            List.of("sheet", "--home", "walk"),
            List.of("--home"),
            List.of("--home", "walk"),
            List.of("--help", "walk"),
            List.of("--home", "a", "no-command"))) {
      assertEquals(words, ArgumentOrder.commandFirst(words, commands));
    }
  }
}
