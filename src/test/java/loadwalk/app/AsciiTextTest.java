package loadwalk.app;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds that text is plain ASCII wherever that is wanted, whatever names are in it. */
class AsciiTextTest {
  @TempDir Path folder;

  private String out;
  private String err;

  /** Runs every command in a process of its own; what they print is cut apart by their marks. */
  private void runAll(String locale, String... flags) throws Exception {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    words.addAll(List.of("-cp", System.getProperty("java.class.path")));
    words.addAll(List.of(HostileWords.class.getName(), folder.toString()));
    words.addAll(List.of(flags));
    Path printed = folder.resolve("printed.txt");
    Path complained = folder.resolve("complained.txt");
    ProcessBuilder builder =
        new ProcessBuilder(words)
            .redirectOutput(printed.toFile())
            .redirectError(complained.toFile());
    builder.environment().keySet().removeAll(List.of("JDK_JAVA_OPTIONS", "JAVA_TOOL_OPTIONS"));
    builder.environment().put("LC_ALL", locale);
    assertEquals(0, builder.start().waitFor());
    out = Files.readString(printed, ISO_8859_1);
    err = Files.readString(complained, ISO_8859_1);
  }

  private static List<String> commands(String text) {
    return List.of(text.split("\n(?=" + HostileWords.MARK + "[0-9])"));
  }

  private static void assertAscii(String text) {
    for (String command : commands(text)) {
      boolean ascii = command.chars().allMatch(c -> c == '\n' || c >= ' ' && c <= '~');
      assertTrue(ascii || isJson(command), command);
    }
  }

  private static boolean isJson(String command) {
    return command.startsWith("== ") && command.contains(" rehearse\n");
  }

  private void assertHolds() throws IOException {
    assertAscii(out);
    assertAscii(err);
    assertFalse(out.contains(HostileWords.MARK + "exit 1\n"), "a fault of Loadwalk");
    assertTrue(commands(out).size() > 80, "commands are missing");
    for (String told :
        List.of(
            "Evil \"ohm\" ??e",
            "Every step is done.",
            "Bench plan for own-walk",
            ": no errors (amplifier)",
            "Usage: loadwalk ledger",
            "nothing differs")) {
      assertTrue(out.contains(told), told + " is not in: " + out);
    }
    for (String told : List.of("There is no option", "There is no sequence named", "unknown key")) {
      assertTrue(err.contains(told), told + " is not in: " + err);
    }
    assertJsonIsWhole();
  }

  /** JSON is for programs: it has every name as it is, in UTF-8. */
  private void assertJsonIsWhole() throws IOException {
    List<String> rehearsed =
        commands(out).stream().filter(AsciiTextTest::isJson).map(c -> c.split("\n")[1]).toList();
    String line = new String(rehearsed.get(0).getBytes(ISO_8859_1), UTF_8);
    JsonNode json = new ObjectMapper().readTree(line);
    assertEquals(HostileWords.KEPT, json.get("name").asText());
  }

  @Test
  void option_putsAllTextIntoAscii() throws Exception {
    runAll("C.UTF-8", "--ascii");
    assertHolds();
  }

  @Test
  void localeWithoutUtf8_putsAllTextIntoAscii() throws Exception {
    runAll("POSIX");
    assertHolds();
  }

  @Test
  void localeWithUtf8_keepsNames() throws Exception {
    runAll("C.UTF-8");
    String utf8 = new String(out.getBytes(ISO_8859_1), UTF_8);
    assertTrue(utf8.contains("\u00c9vil \u00ab\u03a9\u00bb"), utf8);
  }

  @Test
  void words_orLocale_askForAscii() {
    assertTrue(AsciiWanted.in(List.of("sheet", "--ascii"), Map.of("LANG", "en_US.UTF-8")));
    assertFalse(AsciiWanted.in(List.of("sheet"), Map.of("LANG", "en_US.utf8")));
    assertTrue(AsciiWanted.in(List.of(), Map.of("LANG", "en_US.UTF-8", "LC_ALL", "C")));
    assertFalse(AsciiWanted.in(List.of(), Map.of("LANG", "en_US.UTF-8", "LC_ALL", "")));
    assertTrue(AsciiWanted.in(List.of(), Map.of()));
    assertEquals(List.of("sheet", "--ascii", "a"), AsciiWanted.added(List.of("sheet", "a"), true));
    assertEquals(List.of("--ascii", "--help"), AsciiWanted.added(List.of("--help"), false));
    List<String> there = List.of("sheet", "a", "--ascii");
    assertEquals(there, AsciiWanted.added(there, true));
  }
}
