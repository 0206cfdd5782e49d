package loadwalk.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import org.junit.jupiter.api.Test;

/** What each kind of step asks for, and what it cannot do without. */
class AsksTest {
  private static final Target STEREO = Target.loaded("stereo-4", Mode.STEREO, 4);
  private static final Target BRIDGED = Target.loaded("bridged-4", Mode.BRIDGED, 4);
  private static final Target IDLE = Target.idle("idle");
  private static final Target OPEN =
      new Target("open-load", Target.Kind.OPEN_LOAD, Mode.STEREO, 4, 1);
  private static final Target WARM_UP =
      new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5);

  @Test
  void otherChannel_isAskedInStereoOnly() {
    assertTrue(Asks.readings(STEREO).contains(ReadingId.OTHER_OUTPUT_VOLTS));
    assertFalse(Asks.readings(BRIDGED).contains(ReadingId.OTHER_OUTPUT_VOLTS));
  }

  @Test
  void loadIsCheckedCold_beforeAnythingElse() {
    for (Target target : List.of(STEREO, BRIDGED)) {
      assertEquals(ReadingId.LOAD_OHMS, Asks.readings(target).get(0));
    }
  }

  @Test
  void step_isNotFinishedWithoutItsOwnReading() {
    assertEquals(List.of(ReadingId.OUTPUT_VOLTS), Asks.required(STEREO));
    assertEquals(List.of(ReadingId.OUTPUT_VOLTS), Asks.required(BRIDGED));
    assertEquals(List.of(ReadingId.SUPPLY_AMPS), Asks.required(IDLE));
    assertEquals(List.of(ReadingId.OPEN_VOLTS), Asks.required(OPEN));
    assertEquals(List.of(), Asks.required(WARM_UP));
    for (Target target : List.of(STEREO, BRIDGED, IDLE, OPEN, WARM_UP)) {
      assertTrue(Asks.readings(target).containsAll(Asks.required(target)), target.stepId());
    }
  }
}
