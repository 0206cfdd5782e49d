package loadwalk.scenario;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import loadwalk.Needs;
import loadwalk.shipped.Shipped;
import org.junit.jupiter.api.Test;

/** Keys in a real terminal: typed ahead of the screen, and Ctrl-C in a step that runs. */
class KeysIT extends InShell {

  private ProcessHandle armedByHand() throws Exception {
    Path home = folder.resolve("home");
    Path sequences = Files.createDirectories(home.resolve("sequences"));
    Files.writeString(
        sequences.resolve("heavy.json"),
        "{\"format\":\"loadwalk-sequence/1\",\"name\":\"heavy\",\"title\":\"One load\",\"tone\":"
            + "{\"hertz\":40},\"limit\":{\"thdPercent\":1},\"supplyVolts\":13.8,\"steps\":["
            + "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":1}]}");
    return pane.start(
        "", Shipped.command(home, "walk", "heavy", "--practice", "1"), "Load really connected");
  }

  private String journal() throws Exception {
    try (Stream<Path> files = Files.list(folder.resolve("home/sessions"))) {
      return Files.readString(
          files.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow());
    }
  }

  private void saysAtTheEnd(ProcessHandle program, String words) throws Exception {
    program.onExit().get(30, TimeUnit.SECONDS);
    pane.sees(words)
        .line("stty -a > " + folder.resolve("after") + "; echo gi''ven back")
        .sees("given back");
    assertEquals(pane.read("before"), pane.read("after"));
  }

  @Test
  void loadTypedTwiceInOneBreath_armsAndIsNoReading() throws Exception {
    armedByHand();
    pane.bytes("1\r1\r").sees("running", "2 keys were typed before this was on the screen");
    assertTrue(journal().contains("armed"), journal());
    assertFalse(journal().contains("entered"), journal());
    Thread.sleep(500);
    pane.keys("1", "1", ".", "5", "Enter").sees("11.5 V");
  }

  @Test
  void keysTypedBeforeTheFirstScreen_pressNothingOnIt() throws Exception {
    List<String> command =
        Shipped.command(folder.resolve("home"), "walk", "full-walk", "--practice", "1");
    pane.run("sleep 1;", command).bytes("\r\r\r").sees("brief: CLEAR", "were typed before this");
    assertFalse(journal().contains("begun"), journal());
    Thread.sleep(500);
    pane.keys("Enter").sees("time left");
  }

  @Test
  void controlC_inARunningStep_stops_andASecondOneLeavesWithTheWords() throws Exception {
    ProcessHandle program = armedByHand();
    pane.keys("1", "Enter").sees("running").keys("C-c").sees("S T O P", "Ctrl-C once more");
    assertTrue(program.isAlive());
    pane.keys("C-c");
    saysAtTheEnd(program, "OUTPUT DOWN, SUPPLY OFF: the walk was stopped at");
    assertTrue(journal().contains("\"stopped\""), journal());
  }

  @Test
  void terminationSignal_inARunningStep_leavesWithTheWords() throws Exception {
    ProcessHandle program = armedByHand();
    pane.keys("1", "Enter").sees("running");
    assertTrue(program.destroy());
    saysAtTheEnd(program, "was still running.");
  }

  private void signal(ProcessHandle program, String name) throws Exception {
    Process kill = Shipped.limited(new ProcessBuilder("kill", "-" + name, "" + program.pid()));
    assertEquals(0, kill.waitFor());
  }

  private void leaves(ProcessHandle program) throws Exception {
    pane.keys("F10");
    program.onExit().get(30, TimeUnit.SECONDS);
    pane.line("stty -a > " + folder.resolve("after") + "; echo gi''ven back").sees("given back");
  }

  @Test
  void stopFromOutside_andFg_givesTheScreenBackAsItWas() throws Exception {
    ProcessHandle program = pane.startProgram();
    // It listens for signals from a moment after its first screen on.
    Thread.sleep(1000);
    signal(program, "TSTP");
    pane.sees("Stopped").line("clear; fg").sees("New walk", "F10 leave");
    pane.keys("F1").sees("Help").keys("F10").sees("New walk");
    leaves(program);
    assertEquals(pane.read("before"), pane.read("after"));
  }

  @Test
  void quitSignal_leavesTheScreenAsItIs() throws Exception {
    ProcessHandle program = pane.startProgram();
    pane.keys("F1").sees("Practice: a simulated amplifier").keys("F10").sees("Walks are kept");
    String before = pane.picture();
    signal(program, "QUIT");
    pane.keys("F1").sees("Practice: a simulated amplifier").keys("F10").sees("Walks are kept");
    assertEquals(before, pane.picture());
    leaves(program);
  }

  @Test
  void sequencesThatNoKeySends_leaveNothingInTheField() throws Exception {
    armedByHand();
    pane.keys("F2").sees("Note");
    pane.bytes(
        "fan \u001b[I\u001b[<0;10;20M\u001b]11;rgb:0/0/0\u0007\u001b[32~is\u001b[97;5u loud");
    pane.sees("fan is loud").keys("Enter").sees("F2 note");
    assertTrue(journal().contains("\"fan is loud\""), journal());
  }

  @Test
  void windowThatClaimsASizeNoMemoryHolds_isPaintedAsFarAsWindowsGo() throws Exception {
    ProcessHandle program =
        pane.start(
            "stty rows 65535 cols 65535;", Shipped.command(folder.resolve("home")), "F10 leave");
    assertTrue(program.isAlive(), pane.picture());
    leaves(program);
  }

  @Test
  void slowDisk_isSaid_andTheStopKeyShowsBeforeItAnswers() throws Exception {
    Needs.tool("strace");
    ProcessHandle program = armedByHand();
    Path calls = folder.resolve("calls");
    Process slow =
        Shipped.limited(
            new ProcessBuilder(
                    "strace",
                    "-f",
                    "-o",
                    calls.toString(),
                    "-e",
                    "trace=fsync,fdatasync",
                    "-e",
                    "inject=fsync,fdatasync:delay_enter=12000000",
                    "-p",
                    "" + program.pid())
                .redirectErrorStream(true));
    assertTrue(new String(slow.getInputStream().readNBytes(8), UTF_8).startsWith("strace: "));
    pane.keys("1", "Enter").sees("Waiting for the disk, ", "brief: CLEAR").keys("1", "Enter");
    pane.keys("Escape").sees("S T O P", "OUTPUT DOWN");
    assertFalse(journal().contains("\"stopped\""), "the stop showed only with its record");
    slow.destroy();
    assertTrue(slow.waitFor(60, TimeUnit.SECONDS));
    pane.sees("2 keys were typed before").keys("C-c");
    saysAtTheEnd(program, "OUTPUT DOWN, SUPPLY OFF");
    assertTrue(journal().contains("\"stopped\""), journal());
  }
}
