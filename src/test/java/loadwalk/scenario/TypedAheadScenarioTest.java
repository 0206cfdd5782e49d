package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Keys typed before the screen that they would answer was there, as where the disk is slow: they do
 * not answer it, and the screen says so. What is typed fast into one form is all taken.
 */
class TypedAheadScenarioTest {
  @TempDir Path folder;

  private static List<String> volts(BenchSide bench) {
    return bench.typed("stereo-4", ReadingId.OUTPUT_VOLTS);
  }

  @Test
  void loadTypedTwiceToArm_isNoReading() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.typeAhead("text:4", "Enter", "text:4", "Enter").sees("stereo-4 running");
    bench.sees("2 keys were typed before this was on the screen, and are dropped.");
    assertEquals(List.of(), volts(bench));
    bench.press("wait:1", "text:15.5 V", "Enter").sees("15.5 V").seesNot("dropped");
    assertEquals(List.of("15.5 V"), volts(bench));
  }

  @Test
  void readingsTypedFastIntoOneForm_areAllTaken() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour().press("text:4", "Enter");
    bench.typeAhead("text:15.5 V", "Enter", "text:15.4 V", "Enter", "text:13.5 V", "Enter");
    bench.sees("15.5 V", "15.4 V", "13.5 V").seesNot("dropped");
    assertEquals(List.of("15.5 V"), volts(bench));
    assertEquals(List.of("13.5 V"), bench.typed("stereo-4", ReadingId.SUPPLY_VOLTS));
  }

  @Test
  void restOfANumberWhoseBeginWasDropped_isDroppedToo_untilTheHandRests() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.typeAhead("text:4", "Enter", "text:15").press("text:.5 V", "Enter");
    bench.sees("7 keys were typed before");
    assertEquals(List.of(), volts(bench));
    bench.clocks().goOn(0.3);
    bench.press("text:9", "Enter").sees("9 keys were typed before");
    assertEquals(List.of(), volts(bench));
    bench.clocks().goOn(0.4);
    bench.press("text:15.5 V", "Enter");
    assertEquals(List.of("15.5 V"), volts(bench));
  }

  @Test
  void stopKeyTypedAhead_stops_andWhatFollowsIsNoReasonForIt() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.typeAhead("text:4", "Enter", "text:15", "Esc", "text:hot", "Enter");
    bench.sees("S T O P", "OUTPUT DOWN", "6 keys were typed before").seesNot("hot");
    assertTrue(bench.model().isStopped());
    assertEquals(Optional.empty(), bench.model().state().stops().get(0).reason());
  }

  @Test
  void stopKeyOnAFullDisk_takesNoReasonThatWasTypedAheadOfIt() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.disk().fill();
    bench.typeAhead("F2", "text:it hums", "Enter", "Esc", "text:hot").seesNot("hot");
    bench.sees("S T O P", "NOT ON DISK", "3 keys were typed before");
  }

  @Test
  void finishPressedTwice_finishesOneStep_andEnterBeginsNoOther() {
    BenchSide bench = BenchSide.at(folder).practising().warmedUp().press("Enter", "F8");
    bench.typeAhead("F9", "F9", "Enter").sees("stereo-4  brief:", "2 keys were typed before");
    assertEquals(Status.DONE, bench.step("idle").status());
    assertEquals(Status.BRIEFED, bench.step("stereo-4").status());
  }

  @Test
  void leaveKeyPressedTwice_leavesTheWalkAndNotTheProgram() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.typeAhead("F10", "F10").sees("Resume", "1 key was typed before this was on the screen");
    assertTrue(!bench.program().isLeaving() && !bench.isLeft());
  }

  @Test
  void questionThatTheOwnKeyBringsUp_mayBeAnsweredAhead() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.typeAhead("F2", "text:fan is loud", "Enter").seesNot("dropped");
    assertEquals("fan is loud", bench.model().state().notes().get(0).text());
  }

  @Test
  void pasteBegunBeforeTheScreenItWouldLandOn_isDroppedWhole() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.typeAhead("text:4", "Enter", "F18", "text:15.5 V").press("F19");
    bench.sees("stereo-4 running", "6 keys were typed before").press("wait:1", "Enter");
    assertEquals(List.of(), volts(bench));
    bench.press("Up", "F18", "text:15.5 V", "F19").sees("15.5 V").press("Enter");
    assertEquals(List.of("15.5 V"), volts(bench));
  }

  @Test
  void amplifierThatCooledMeanwhile_isNotArmedByKeysTypedForAnother() {
    BenchSide bench = BenchSide.at(folder).practising().press("Enter", "wait:2");
    bench.press("text:5").clocks().goOn(700);
    bench.typeAhead("wait:1", "text:3", "Enter");
    bench.sees("warm-up  brief:", "2 keys were typed before");
    assertEquals(Status.BRIEFED, bench.step("warm-up").status());
  }
}
