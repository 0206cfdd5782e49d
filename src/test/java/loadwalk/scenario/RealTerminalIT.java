package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The program in a real pseudo-terminal, under a shell with job control. */
class RealTerminalIT extends InShell {
  /** The shell is back, the terminal is as it was, and the program is gone. */
  private void restored(ProcessHandle program) throws Exception {
    program.onExit().get(30, TimeUnit.SECONDS);
    pane.line("clear; stty -a > " + folder.resolve("after") + "; echo ba''ck").sees("back");
    assertEquals(pane.read("before"), pane.read("after"));
    assertFalse(program.isAlive());
  }

  @Test
  void homeScreen_practiceWalk_andLeaving_restoreTheTerminal() throws Exception {
    ProcessHandle program = pane.startProgram();
    pane.sees("what a car amplifier really delivers", "New walk");
    pane.keys("Enter").sees("seed 1").sees("full-walk").keys("Enter").sees("warm-up  brief: CLEAR");
    pane.keys("Enter").sees("time left").keys("Escape").sees("OUTPUT DOWN");
    pane.keys("done", "Enter").sees("PAUSED").keys("F10").sees("Resume").keys("F10");
    restored(program);
  }

  @Test
  void controlC_inAWalk_restoresTheTerminal() throws Exception {
    ProcessHandle program = pane.startProgram();
    pane.keys("Enter").sees("full-walk").keys("Enter").sees("brief: CLEAR").keys("C-c");
    restored(program);
  }

  @Test
  void terminationSignal_restoresTheTerminal() throws Exception {
    ProcessHandle program = pane.startProgram();
    assertTrue(program.destroy());
    restored(program);
  }

  @Test
  void hangUp_endsTheProgram() throws Exception {
    ProcessHandle program = pane.startProgram();
    pane.close();
    program.onExit().get(30, TimeUnit.SECONDS);
    assertFalse(program.isAlive());
  }

  @Test
  void controlZ_givesTheTerminalBack_andFgGoesOn() throws Exception {
    ProcessHandle program = pane.startProgram();
    pane.keys("Enter").sees("full-walk").keys("C-z").sees("Stopped");
    pane.line("clear; stty -a > " + folder.resolve("after") + "; echo ba''ck").sees("back");
    assertEquals(pane.read("before"), pane.read("after"));
    pane.line("fg").sees("full-walk", "Left Right").keys("F10").sees("New walk").keys("F10");
    restored(program);
  }

  @Test
  void pastedText_pressesNoKeys() throws Exception {
    ProcessHandle program = pane.startProgram();
    pane.paste("one\ntwo\nthree\n").keys("Down", "Down", "Down", "Enter").sees("Start here.");
    pane.keys("F10").sees("New walk").keys("Home", "Enter").sees("full-walk").keys("Enter");
    pane.sees("brief: CLEAR").keys("F2").sees("Note").paste("first line\nsecond line");
    pane.sees("first line second line").keys("Enter", "F10").sees("Resume").keys("F10");
    restored(program);
  }

  @Test
  void controlBackslash_leavesWithoutAThreadDump() throws Exception {
    ProcessHandle program = pane.startProgram();
    pane.keys("C-\\");
    program.onExit().get(30, TimeUnit.SECONDS);
    assertFalse(pane.picture().contains("Full thread dump"), pane.picture());
    restored(program);
  }
}
