package loadwalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** Two lines for words that are wrong: which, and where help is. */
class WrongUsageTest {
  private static String told(String... words) {
    StringWriter err = new StringWriter();
    CommandLine line = new CommandLine(new Loadwalk(null)).addSubcommand(new CheckCommand());
    line.addSubcommand(new ReplayCommand(home -> null));
    line.addSubcommand(new WalkCommand(null)).addSubcommand(new WaveCommand());
    line.setParameterExceptionHandler(WrongUsage::told).setErr(new PrintWriter(err));
    assertEquals(ExitCode.BAD_INPUT, line.execute(words));
    return err.toString().replace("\r\n", "\n");
  }

  @Test
  void wrongWord_isNamed_withTheCommandsThereAre() {
    assertEquals(
        "There is no command chek. The commands: check, replay, walk, wave.\n"
            + "For help: loadwalk --help\n",
        told("chek"));
  }

  @Test
  void wrongOption_isNamed_withTheOneMeant() {
    String help = "For help: loadwalk check --help\n";
    assertEquals(
        "There is no option --jso; did you mean --json?\n" + help, told("check", "a", "--jso"));
    assertEquals("There is no option --\\u001b.\n" + help, told("check", "a", "--\u001b"));
  }

  @Test
  void valueOfAnotherKind_isToldWithoutTheNameOfAType() {
    String help = "For help: loadwalk walk --help\n";
    assertEquals(
        "--speed takes a whole number, not fast.\n" + help,
        told("walk", "full-walk", "--speed=fast"));
    assertEquals(
        "--practice takes a whole number, not 1.5.\n" + help,
        told("walk", "full-walk", "--practice=1.5"));
    assertEquals(
        "--amp takes the name of a file or folder, not a\\u0000b.\n" + help,
        told("walk", "full-walk", "--amp=a\0b"));
    assertEquals(
        "--full-scale takes a number, not 1,4.\nFor help: loadwalk wave --help\n",
        told("wave", "a.wav", "--full-scale", "1,4"));
  }

  @Test
  void missingWord_isNamed() {
    assertEquals(
        "Missing required parameter: 'WALK'\nFor help: loadwalk replay --help\n", told("replay"));
  }

  @Test
  void helpOfWalk_namesEveryStockSequence() throws IOException {
    String help = new CommandLine(new WalkCommand(null)).getUsageMessage();
    try (Stream<Path> files = Files.list(Path.of("sequences"))) {
      List<String> names =
          files.map(file -> file.getFileName().toString().replace(".json", "")).toList();
      assertEquals(5, names.size());
      names.forEach(name -> assertTrue(help.contains(name), name + " is not in: " + help));
    }
  }
}
