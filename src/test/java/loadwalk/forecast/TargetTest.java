package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;

/** A step as the forecast sees it, and what was read in it. */
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

  @Test
  void observation_givesWhatWasRead_andNothingElse() {
    Observation read = new Observation(Target.idle("idle"), Map.of(ReadingId.SUPPLY_AMPS, 1.9));
    assertEquals(OptionalDouble.of(1.9), read.reading(ReadingId.SUPPLY_AMPS));
    assertEquals(OptionalDouble.empty(), read.reading(ReadingId.SUPPLY_VOLTS));
  }

  @Test
  void observation_ofNoFiniteNumber_isRefused() {
    for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      Map<ReadingId, Double> readings = Map.of(ReadingId.SUPPLY_AMPS, value);
      assertThrows(
          IllegalArgumentException.class, () -> new Observation(Target.idle("idle"), readings));
    }
  }
}
