package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import org.junit.jupiter.api.Test;

/** ±(1 % + 2 digits) of a 2000-count meter where none is entered (common practice, no source). */
class MeterFloorTest {
  private static final ReadingId VOLTS = ReadingId.OUTPUT_VOLTS;

  /** A 2000-count meter shows 13.40 on its 20 V range, 134.0 on that of 200 V. */
  @Test
  void noMeterEntered_isOnePercentAndTwoDigitsOfItsRange() {
    assertEquals(0.134 + 0.02, MeterFloor.halfWidth(Bench.unknown(), VOLTS, 13.4), 1e-12);
    assertEquals(1.34 + 0.2, MeterFloor.halfWidth(Bench.unknown(), VOLTS, 134), 1e-12);
    assertEquals(0.0134 + 0.002, MeterFloor.halfWidth(Bench.unknown(), VOLTS, 1.34), 1e-12);
    assertEquals(0.134 + 0.02, MeterFloor.halfWidth(Bench.unknown(), VOLTS, -13.4), 1e-12);
  }

  @Test
  void noMeterEntered_atNothing_isStillSomething() {
    assertEquals(0.01, MeterFloor.halfWidth(Bench.unknown(), VOLTS, 0));
    assertEquals(0.01, MeterFloor.halfWidth(Bench.unknown(), VOLTS, Double.NaN));
  }

  @Test
  void meterEntered_isTakenAtItsWord() {
    Meter meter = new Meter("bench meter", VOLTS, 0.5, 3, 0.01, Optional.empty());
    Bench bench =
        new Bench(
            "b", List.of(), List.of(), OptionalDouble.empty(), List.of(), List.of(meter), 0.9);
    assertEquals(0.1 + 0.03, MeterFloor.halfWidth(bench, VOLTS, 20), 1e-12);
  }

  @Test
  void widen_takesANarrowBandToTheMeter_andLeavesAWideOne() {
    Band narrow = MeterFloor.widen(Bench.unknown(), VOLTS, new Band(13.39, 13.4, 13.41));
    assertEquals(13.4 - 0.154, narrow.low(), 1e-12);
    assertEquals(13.4, narrow.middle());
    assertEquals(13.4 + 0.154, narrow.high(), 1e-12);
    Band wide = new Band(10, 13.4, 17);
    assertEquals(wide, MeterFloor.widen(Bench.unknown(), VOLTS, wide));
  }

  @Test
  void widen_neverGoesBelowNothing_byItself() {
    assertEquals(0, MeterFloor.widen(Bench.unknown(), VOLTS, new Band(0, 0, 0)).low());
    assertEquals(-2, MeterFloor.widen(Bench.unknown(), VOLTS, new Band(-2, 1, 3)).low());
  }
}
