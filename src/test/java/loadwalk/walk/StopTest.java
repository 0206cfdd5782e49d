package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState.Hold;
import org.junit.jupiter.api.Test;

/** The stop key: its screen comes at once and stays until the stop is explained. */
class StopTest {
  private final Floor floor = new Floor();

  /** A measurement that is being started while the disk is slow, and the stop key pressed then. */
  private List<Stamped> stoppedWhileTheStartIsWritten() {
    floor.at("stereo-4");
    floor.disk = false;
    floor.hear(new Intent.Begin()).hear(new Intent.Stop());
    return floor.model.waiting();
  }

  @Test
  void stop_whileAnEntryIsWritten_showsAtOnce() {
    List<Stamped> waiting = stoppedWhileTheStartIsWritten();
    assertEquals(2, waiting.size(), waiting.toString());
    assertTrue(floor.model.isStopped());
    assertEquals(Hold.RUNNING, floor.model.state().hold(), "its record is not on the disk yet");
  }

  @Test
  void stop_thatWaitsForTheDisk_outlivesTheRecordBeforeIt() {
    List<Stamped> waiting = stoppedWhileTheStartIsWritten();
    floor.hear(new Event.Kept(waiting.subList(0, 1)));
    assertEquals(Status.RUNNING, floor.step("stereo-4").status());
    assertTrue(floor.model.isStopped(), "the stop screen goes away");
    floor.disk = true;
    floor.hear(new Intent.Retry());
    assertEquals(Hold.STOPPED, floor.model.state().hold());
    assertTrue(floor.model.isStopped());
    assertEquals(Status.AHEAD, floor.step("stereo-4").status(), "it must be briefed again");
  }

  @Test
  void stop_thatFailedToBeWritten_holdsUntilItIs() {
    stoppedWhileTheStartIsWritten();
    floor.letPass(1).hear(new Intent.Resume());
    assertTrue(floor.said().contains("not on disk yet"), floor.said());
    assertTrue(floor.model.isStopped());
    floor.disk = true;
    floor.letPass(3).hear(new Intent.ExplainStop("it smelled"));
    floor.hear(new Intent.Resume());
    assertFalse(floor.model.isStopped());
    assertEquals(Status.BRIEFED, floor.step("stereo-4").status());
  }
}
