package loadwalk.shipped;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loadwalk.Needs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher from many folders and through links, beside the jar. */
class LauncherIT {
  @TempDir Path folder;

  private Path installed;
  private Path launcher;
  private Path sequence;

  @BeforeEach
  void install() throws IOException {
    Needs.tool("sh");
    installed = Files.createDirectories(folder.resolve("a place with blanks"));
    launcher = Files.copy(Shipped.launcher(), installed.resolve("loadwalk"));
    assertTrue(launcher.toFile().setExecutable(true));
    sequence = Path.of("sequences", "full-walk.json").toAbsolutePath();
    Files.copy(Shipped.jar(), installed.resolve("loadwalk.jar"));
  }

  /** Checks a sequence from a folder and expects the sentence that plain java prints. */
  private void works(Path from, String command) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(command, "check", sequence.toString())
            .directory(from.toFile())
            .redirectErrorStream(true);
    Shipped.prepare(builder.environment());
    builder.environment().put("CDPATH", folder + ":/");
    Process process = Shipped.limited(builder);
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(sequence + ": no errors (sequence)\n", said, command + " from " + from);
    assertEquals(0, process.waitFor());
  }

  @Test
  void absoluteAndRelativePaths_work() throws Exception {
    works(folder, launcher.toString());
    works(installed, "./loadwalk");
    works(folder, "a place with blanks/loadwalk");
  }

  @Test
  void symbolicLinks_leadToTheJar() throws Exception {
    Path elsewhere = Files.createDirectories(folder.resolve("bin"));
    Path absolute = Files.createSymbolicLink(elsewhere.resolve("absolute"), launcher);
    Files.createSymbolicLink(
        elsewhere.resolve("relative"), Path.of("..", "a place with blanks", "loadwalk"));
    Files.createSymbolicLink(elsewhere.resolve("twice"), Path.of("relative"));
    works(folder, absolute.toString());
    works(elsewhere, "./relative");
    works(folder, "bin/twice");
  }

  @Test
  void damagedArchive_isPassedOverInSilence() throws Exception {
    Files.writeString(installed.resolve("loadwalk.jsa"), "no archive at all");
    works(folder, launcher.toString());
    Files.write(installed.resolve("loadwalk.jsa"), new byte[1 << 20]);
    works(folder, launcher.toString());
  }

  /** What java is asked for, told by a stand-in for it. */
  private String asked(String... words) throws Exception {
    Path home = Files.createDirectories(folder.resolve("jdk").resolve("bin"));
    Path java = home.resolve("java");
    Files.writeString(java, "#!/bin/sh\nprintf '%s\\n' \"$@\"\n");
    assertTrue(java.toFile().setExecutable(true));
    List<String> command = new ArrayList<>(List.of(launcher.toString()));
    command.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("JAVA_HOME", home.getParent().toString());
    Process process = Shipped.limited(builder);
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor());
    return said;
  }

  @Test
  void compilers_goByTheCommand_whateverStandsAheadOfIt() throws Exception {
    for (String[] ahead : new String[][] {{}, {"--home", "a home"}, {"--home=sheet", "--plain"}}) {
      for (String command : List.of("rehearse", "replay", "plan", "wave", "sheet", "walk", "")) {
        List<String> words = new ArrayList<>(List.of(ahead));
        words.addAll(List.of(command, "--home", "rehearse"));
        String asked = asked(words.toArray(String[]::new));
        boolean computes = List.of("rehearse", "replay", "plan", "wave").contains(command);
        assertEquals(!computes, asked.contains("TieredStopAtLevel=1"), asked);
        assertTrue(asked.endsWith("loadwalk.jar\n" + String.join("\n", words) + "\n"), asked);
      }
    }
  }

  /** There, as in /tmp, everybody may put an archive beside a jar that has none. */
  @Test
  void archiveInAFolderWhereEverybodyMayPutFiles_isNotTaken() throws Exception {
    assertTrue(asked("sheet").contains("-XX:SharedArchiveFile="));
    Files.setAttribute(installed, "unix:mode", 01777);
    String asked = asked("sheet");
    assertFalse(asked.contains("SharedArchiveFile"), asked);
    assertTrue(asked.endsWith("loadwalk.jar\nsheet\n"), asked);
  }

  @Test
  void javaThatBreaks_leavesNothingInTheFolderWorkedIn() throws Exception {
    String asked = asked("sheet");
    assertTrue(asked.contains("\n-XX:ErrorFile=/"), asked);
  }

  /** BSD and macOS have neither {@code readlink -f} nor GNU's long options. */
  @Test
  void script_keepsToPosix() throws IOException {
    String script = Files.readString(Shipped.launcher());
    assertTrue(script.startsWith("#!/bin/sh\n"));
    for (String gnu : new String[] {"readlink -", "realpath", "[[", "function ", "local "}) {
      assertFalse(script.contains(gnu), gnu);
    }
  }
}
