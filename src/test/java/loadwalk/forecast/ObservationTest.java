package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import org.junit.jupiter.api.Test;

/** What was read in a step. */
class ObservationTest {
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
