package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two Loadwalks on one walk: the second is told, and can watch. */
class SecondLoadwalkScenarioTest {
  @TempDir Path folder;

  @Test
  void second_isToldThatTheWalkIsHeld_andWatches() {
    BenchSide first = BenchSide.at(folder).heedAtStereoFour();
    BenchSide second = first.second().sees("open at stereo-4");
    second.press("Up", "Enter").sees("Watching only", "Another Loadwalk has this walk open");
    assertTrue(second.program().program().walk().isEmpty());
    second.press("Enter").sees("Practice");
    first.press("text:4", "Enter").sees("stereo-4 running").journalTellsTheSame();
    first.press("F10");
    second.press("Enter").sees("stereo-4 brief");
    assertEquals("stereo-4", second.model().state().currentId());
  }

  @Test
  void walkOfAKilledLoadwalk_isTakenOver() {
    BenchSide first = BenchSide.at(folder).warmAtStereoFour();
    first.killedAndStartedAgain().press("Up", "Enter").sees("stereo-4 brief");
    assertEquals("stereo-4", first.model().state().currentId());
  }
}
