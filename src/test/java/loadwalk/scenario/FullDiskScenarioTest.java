package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import loadwalk.bench.ReadingId;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that fills up in mid-walk, and room made again. */
class FullDiskScenarioTest {
  @TempDir Path folder;

  @Test
  void fullDisk_holdsTheWalk_saysSo_andGoesOnWhenThereIsRoom() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("text:4", "Enter", "text:15.5 V", "Enter");
    bench.disk().fill();
    bench.press("text:15.4", "Enter").sees("NOT ON DISK", "disk is full", "The walk is held");
    assertEquals(List.of(), bench.typed("stereo-4", ReadingId.OTHER_OUTPUT_VOLTS));
    bench.press("F9", "F10").sees("NOT ON DISK").press("wait:10").sees("NOT ON DISK");
    assertEquals(Status.RUNNING, bench.step("stereo-4").status());
    bench.press("F4").sees("15.5 V").press("F10");
    bench.disk().makeRoom();
    bench.press("wait:5").seesNot("NOT ON DISK").sees("15.4 V");
    assertEquals(List.of("15.4"), bench.typed("stereo-4", ReadingId.OTHER_OUTPUT_VOLTS));
    bench.press("F9").sees("stereo-2 brief").journalTellsTheSame();
  }

  @Test
  void leaving_withAnEntryThatIsNotOnDisk_asksFirst() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("text:4", "Enter", "text:15.5 V", "Enter");
    bench.disk().fill();
    bench.press("text:15.4", "Enter").sees("NOT ON DISK").press("F10");
    bench.sees("Type leave to leave without it", "NOT ON DISK: The disk is full").press("F10");
    bench.sees("stereo-4 running").press("F10", "text:no", "Enter").sees("stereo-4 running");
    bench.disk().makeRoom();
    bench.press("wait:5").sees("15.4 V").seesNot("NOT ON DISK").press("F10").sees("Resume");
    bench.press("Up", "Enter").disk().fill();
    bench.press("F2", "text:a note", "Enter", "F10", "text:Leave", "Enter").sees("Resume");
    assertTrue(bench.program().program().walk().isEmpty());
  }

  @Test
  void everyScreen_saysThatNothingIsOnDisk() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("text:4", "Enter", "text:15.5 V", "Enter");
    bench.disk().fill();
    bench.press("text:15.4", "Enter");
    for (String key : new String[] {"F1", "F2", "F3", "F4", "F6", "F12"}) {
      bench.press(key).sees("NOT ON DISK: The disk is full").press("F10");
    }
    bench.sees("stereo-4 running").disk().makeRoom();
    bench.press("F4", "wait:4").seesNot("NOT ON DISK").journalTellsTheSame();
  }

  @Test
  void stopKey_onAFullDisk_showsAtOnce_andIsKeptWhenThereIsRoom() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.disk().fill();
    bench.press("F2", "text:a note", "Enter", "wait:2", "Esc");
    bench.sees("OUTPUT DOWN", "NOT ON DISK");
    assertTrue(bench.model().isStopped());
    bench.disk().makeRoom();
    bench.press("wait:5").sees("OUTPUT DOWN").seesNot("NOT ON DISK").journalTellsTheSame();
    bench.press("text:disk", "Enter").sees("PAUSED");
    assertFalse(bench.model().isStopped());
    assertEquals(1, bench.model().state().notes().size());
  }
}
