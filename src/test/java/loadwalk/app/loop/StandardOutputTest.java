package loadwalk.app.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.Needs;
import loadwalk.app.Child;
import loadwalk.app.Main;
import loadwalk.cli.ExitCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a full disk swallows of an output is told; a pipe that nobody reads is none of our faults.
 */
class StandardOutputTest {
  private static final OutputStream FULL =
      new OutputStream() {
        @Override
        public void write(int b) throws IOException {
          throw new IOException("no room");
        }
      };

  @TempDir Path folder;

  @Test
  void fileThatTakesNoMore_isToldEvenWhenAPrinterPassesItOver() throws IOException {
    StandardOutput out = new StandardOutput(FULL, Files.createFile(folder.resolve("file")));
    assertEquals(Optional.empty(), out.lost());
    new PrintWriter(out, true).println("a line");
    assertEquals(Optional.of("Not all of the output was written: no room."), out.lost());
    assertThrows(IOException.class, () -> out.write(1));
  }

  @Test
  void closedPipe_isNoFault_norWhatCannotBeLookedAt() throws Exception {
    Path pipe = folder.resolve("pipe");
    Needs.tool("mkfifo");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    for (Path named : List.of(pipe, folder.resolve("none"))) {
      StandardOutput out = new StandardOutput(FULL, named);
      new PrintWriter(out, true).println("a line");
      assertEquals(Optional.empty(), out.lost());
    }
  }

  @Test
  void whatIsWritten_goesThrough() throws IOException {
    ByteArrayOutputStream through = new ByteArrayOutputStream();
    StandardOutput out = new StandardOutput(through, folder);
    out.write('a');
    out.write("bc".getBytes(StandardCharsets.UTF_8));
    assertEquals("abc", through.toString(StandardCharsets.UTF_8));
    assertEquals(Optional.empty(), out.lost());
  }

  @Test
  void lostOutput_isNoSuccess_andLeavesGraverCodesAlone() {
    StringWriter said = new StringWriter();
    PrintWriter err = new PrintWriter(said, true);
    assertEquals(ExitCode.BAD_INPUT, Main.unwritten(ExitCode.DONE, "Lost.", err));
    assertEquals(ExitCode.DAMAGED, Main.unwritten(ExitCode.DAMAGED, "Lost.", err));
    assertEquals("Lost.\nLost.\n", said.toString());
  }

  @Test
  void everyCommand_onAFullDevice_saysSo() throws Exception {
    Path full = Path.of("/dev/full");
    Needs.that(
        Files.isWritable(full) && !Files.isRegularFile(full), "this system has no full device");
    Path sequence = Path.of("sequences", "full-walk.json").toAbsolutePath();
    List<List<String>> commands = new ArrayList<>();
    commands.add(List.of("check", sequence.toString()));
    commands.add(List.of("ledger"));
    commands.add(List.of("tone", "-", "--seconds", "1"));
    commands.add(List.of("walk", "stereo-only", "--practice", "1", "--fill"));
    commands.add(List.of("sheet"));
    for (List<String> command : commands) {
      Process process =
          new ProcessBuilder(Child.command(folder, command.toArray(String[]::new)))
              .redirectOutput(full.toFile())
              .start();
      String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(said.contains("Not all of the output was written: "), command + ": " + said);
      assertEquals(ExitCode.BAD_INPUT, process.waitFor(), command.toString());
    }
  }
}
