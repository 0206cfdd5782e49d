package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import loadwalk.bench.ReadingId;
import loadwalk.walk.StepState.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that fills up in mid-walk, and room made again. */
class FullDiskScenarioTest {
  @TempDir Path folder;

  @Test
  void fullDisk_holdsTheWalk_saysSo_andGoesOnWhenThereIsRoom() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("Tab", "text:4", "Enter", "text:15.5 V", "Enter");
    bench.disk().fill();
    bench.press("text:15.4", "Enter").sees("NOT ON DISK", "disk is full", "The walk holds");
    assertEquals(List.of(), bench.typed("stereo-4", ReadingId.OTHER_OUTPUT_VOLTS));
    bench.press("F9").sees("NOT ON DISK").press("wait:10").sees("NOT ON DISK");
    assertEquals(Status.RUNNING, bench.step("stereo-4").status());
    bench.press("F4").sees("15.5 V").press("F10");
    bench.disk().makeRoom();
    bench.press("wait:5").seesNot("NOT ON DISK").sees("15.4 V");
    assertEquals(List.of("15.4"), bench.typed("stereo-4", ReadingId.OTHER_OUTPUT_VOLTS));
    bench.press("F9").sees("stereo-2 brief").journalTellsTheSame();
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
