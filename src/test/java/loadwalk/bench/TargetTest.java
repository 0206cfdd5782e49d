package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What a step does to the amplifier. */
class TargetTest {
  @Test
  void into_anotherLoad_changesOnlyTheLoad() {
    Target warmUp = new Target("warm-up", Target.Kind.WARM_UP, Mode.BRIDGED, 4, 0.5);
    assertEquals(
        new Target("warm-up", Target.Kind.WARM_UP, Mode.BRIDGED, 3.9, 0.5), warmUp.into(3.9));
    assertSame(warmUp, warmUp.into(4));
  }

  @Test
  void in_isTheSameStepWiredOtherwise() {
    Target bridged = Target.loaded("bridged-2", Mode.BRIDGED, 2);
    assertEquals(Target.loaded("bridged-2", Mode.STEREO, 2), bridged.in(Mode.STEREO));
  }

  @Test
  void idle_hasNoLoad_andNoPower() {
    Target idle = Target.idle("idle");
    assertTrue(Double.isNaN(idle.ohms()));
    assertEquals(0, idle.powerFraction());
    assertEquals(1, Target.loaded("stereo-4", Mode.STEREO, 4).powerFraction());
  }
}
