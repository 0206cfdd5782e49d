package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import loadwalk.view.LastWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C and Ctrl-\: the stop while a step runs, and never a way to lose an entry in silence. */
class InterruptScenarioTest {
  private static final String OFF_WHILE_RUNNING =
      "OUTPUT DOWN, SUPPLY OFF: stereo-4 was still running.";
  private static final String OFF_WHEN_STOPPED =
      "OUTPUT DOWN, SUPPLY OFF: the walk was stopped at stereo-4.";
  private static final String LOST =
      "NOT ON DISK: The disk is full: make room, then try again. The last entry is lost.";

  @TempDir Path folder;

  private BenchSide running() {
    return BenchSide.at(folder).warmAtStereoFour().press("text:4", "Enter", "text:15.5 V", "Enter");
  }

  private static List<String> lastWords(BenchSide bench) {
    return LastWords.of(bench.program().program());
  }

  @Test
  void interruptInARunningStep_stops_andOnceMoreLeaves() {
    BenchSide bench = running();
    assertEquals(List.of(OFF_WHILE_RUNNING), lastWords(bench));
    bench.press("Ctrl-c").sees("S T O P", "Ctrl-C once more within two seconds leaves Loadwalk.");
    assertTrue(bench.model().isStopped() && !bench.isLeft());
    bench.journalTellsTheSame().press("wait:2", "Ctrl-\\");
    assertTrue(bench.isLeft());
    assertEquals(List.of(OFF_WHEN_STOPPED), lastWords(bench));
  }

  @Test
  void interruptInEveryScreenOfARunningStep_isTheStop() {
    BenchSide bench = running();
    for (String key : List.of("F1", "F2", "F4", "F6", "F12", "Ctrl-w")) {
      bench.press(key, "Ctrl-c").sees("OUTPUT DOWN");
      assertFalse(bench.isLeft(), key);
      bench.press("text:again", "Enter", "Enter", "text:4", "Enter", "wait:3");
      bench.sees("stereo-4 running");
    }
  }

  @Test
  void interruptThatComesTooLate_stopsTheNextTimeToo() {
    BenchSide bench = running().press("Ctrl-c", "text:smell", "Enter", "Enter", "text:4", "Enter");
    bench.press("wait:3", "Ctrl-c").sees("OUTPUT DOWN");
    assertFalse(bench.isLeft());
  }

  @Test
  void interruptBetweenSteps_leaves_withoutLastWords() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour().press("Ctrl-c");
    assertTrue(bench.isLeft());
    assertEquals(List.of(), lastWords(bench));
    BenchSide atHome = BenchSide.at(folder.resolve("other")).press("Ctrl-\\");
    assertTrue(atHome.isLeft());
    assertEquals(List.of(), lastWords(atHome));
  }

  @Test
  void interruptWithAnEntryThatIsNotOnDisk_asksFirst() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.disk().fill();
    bench.press("F2", "text:a note", "Enter").sees("NOT ON DISK").press("Ctrl-c");
    bench.sees("The last entry is not on the disk. Ctrl-C once more within two seconds leaves");
    assertFalse(bench.isLeft());
    bench.press("wait:3", "Ctrl-c").sees("Ctrl-C once more");
    assertFalse(bench.isLeft());
    bench.resize(40, 10).press("wait:3", "Ctrl-c").sees("Ctrl-C once more");
    assertFalse(bench.isLeft());
    bench.press("Ctrl-c");
    assertTrue(bench.isLeft());
    assertEquals(List.of(LOST), lastWords(bench));
  }

  @Test
  void stopByInterruptThatIsNotOnDisk_asksAgain() {
    BenchSide bench = running();
    bench.disk().fill();
    bench.press("Ctrl-c").sees("OUTPUT DOWN", "NOT ON DISK").press("wait:3", "Ctrl-c");
    bench.sees("The last entry is not on the disk.");
    assertFalse(bench.isLeft());
    assertEquals(List.of(OFF_WHEN_STOPPED, LOST), lastWords(bench));
  }

  @Test
  void interruptInsideAPastedText_isPartOfTheText() {
    BenchSide bench = running();
    bench.press("F2", "F18", "text:one", "Ctrl-c", "Ctrl-\\", "Ctrl-z", "text:two", "F19");
    bench.sees("onetwo", "stereo-4 running");
    assertFalse(bench.isLeft() || bench.model().isStopped());
  }

  @Test
  void pasteWithoutAnEnd_swallowsAHandsTypingForTwoSecondsAtMost() {
    BenchSide bench = running().press("F2", "F18", "text:from the clipboard ");
    for (int key = 0; key < 8; key++) {
      bench.clocks().goOn(0.25);
      bench.press("text:x");
    }
    bench.sees("from the clipboard xxxxxxxx").press("text:y", "Enter").seesNot("Note");
    assertEquals("from the clipboard xxxxxxxxy", bench.model().state().notes().get(0).text());
    bench.press("F2", "F18", "text:all that came", "wait:2").sees("all that came");
    bench.press("Ctrl-c").sees("OUTPUT DOWN");
  }

  @Test
  void longPaste_isOnePaste_howeverLongItLasts() {
    BenchSide bench = running().press("F2", "F18");
    for (int piece = 0; piece < 40; piece++) {
      bench.clocks().goOn(0.2);
      bench.press("text:ten keys, ", "Enter");
    }
    bench.sees("Note").press("F19").sees("ten keys,");
    assertEquals(0, bench.model().state().notes().size());
  }

  @Test
  void leavingARunningStep_isNotWithoutAWord() {
    running().press("F10").sees("Resume", OFF_WHILE_RUNNING);
  }
}
