package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs the commands that README shows, those that need no file of the reader's own. */
class ReadmeTest {
  private static final Pattern COMMAND = Pattern.compile("\\| `loadwalk ([^`]+)` \\|");

  private static final Path README = Path.of("README.md");

  @TempDir private Path home;

  @Test
  void commandsOfTheTable_run() throws IOException {
    List<String> commands = commands();
    assertTrue(commands.size() >= 2, "README shows too few commands: " + commands);
    for (String command : commands) {
      List<String> words = new ArrayList<>(List.of(command.split("\\s+")));
      words.add("--home");
      words.add(home.toString());
      assertEquals(0, Main.run(words.toArray(String[]::new)), "loadwalk " + command);
    }
  }

  @Test
  void everyCommand_takesHomeAndHelp() throws IOException {
    Set<String> names = new TreeSet<>();
    Matcher matcher = Pattern.compile("`loadwalk ([a-z]+)").matcher(Files.readString(README));
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    assertEquals(11, names.size(), names.toString());
    for (String name : names) {
      assertEquals(0, Main.run(name, "--home", home.toString(), "--help"), name);
    }
  }

  @Test
  void structure_opensWithTheJobAndTwoCommands() throws IOException {
    String readme = Files.readString(README);
    assertTrue(readme.startsWith("# Loadwalk\n\nLoadwalk is a bench assistant"), "first paragraph");
    assertTrue(readme.contains("mvn -q package -DskipTests && target/loadwalk\n"), "start");
    assertTrue(readme.contains("```\nmvn verify\n```"), "tests");
  }

  private static List<String> commands() throws IOException {
    List<String> commands = new ArrayList<>();
    Matcher matcher = COMMAND.matcher(Files.readString(README));
    while (matcher.find()) {
      String command = matcher.group(1);
      if (!command.contains("FILE") && !command.matches("(resume|replay).*")) {
        commands.add(command);
      }
    }
    return commands;
  }
}
