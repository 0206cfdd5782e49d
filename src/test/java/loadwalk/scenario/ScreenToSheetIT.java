package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import loadwalk.shipped.Shipped;
import org.junit.jupiter.api.Test;

/** A practice amplifier on the screen of a real terminal, from brief to sheet, killed between. */
class ScreenToSheetIT extends InShell {
  @Test
  void practiceWalk_killedBetweenTwoSteps_endsOnItsSheet() throws Exception {
    Path home = folder.resolve("home");
    Path sequences = Files.createDirectories(home.resolve("sequences"));
    Files.writeString(
        sequences.resolve("short.json"),
        "{\"format\":\"loadwalk-sequence/1\",\"name\":\"short\",\"title\":\"Two loads\",\"tone\":"
            + "{\"hertz\":40},\"limit\":{\"thdPercent\":1},\"supplyVolts\":13.8,\"steps\":["
            + "{\"do\":\"idle\"},{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4}]}");
    ProcessHandle first =
        pane.start("", Shipped.command(home, "walk", "short", "--practice", "1"), "Step 1 of 2");
    pane.keys("Enter").sees("meter 13.77 V").keys("F8").sees("F9 finishes the step");
    pane.keys("F9").sees("Step 2 of 2");
    assertTrue(first.destroyForcibly(), "the program could not be killed");
    first.onExit().get(30, TimeUnit.SECONDS);
    // A killed program cannot give the terminal back; the operator does.
    pane.line("reset; stty -a > " + folder.resolve("before") + "; clear; echo sa''ne").sees("sane");

    ProcessHandle second = pane.start("", Shipped.command(home, "resume"), "Step 2 of 2");
    pane.keys("Enter").sees("meter 17.4 A").keys("F8").sees("F9 finishes the step");
    pane.keys("F9").sees("Every step is done.").keys("F6").sees("Sheet of", "Power at each load");
    pane.sees("123.6 ± 2.5").keys("F10").sees("Every step").keys("F10").sees("New walk");
    pane.keys("F10");
    second.onExit().get(30, TimeUnit.SECONDS);
    pane.line("clear; stty -a > " + folder.resolve("after") + "; echo ba''ck").sees("back");
    assertEquals(pane.read("before"), pane.read("after"));
  }
}
