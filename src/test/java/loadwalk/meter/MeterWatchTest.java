package loadwalk.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MeterWatchTest {
  private static MeterReading.Value value(String raw) {
    return (MeterReading.Value) MeterReading.of(Connections.VOLTS, raw);
  }

  @Test
  void fineReading_thatNeverMoves_isHeld() {
    MeterWatch watch = MeterWatch.begin(Connections.meter(0.0001), 0);
    for (int i = 1; i <= MeterWatch.HELD_REPLIES; i++) {
      assertTrue(!(watch.at(500 * i) instanceof MeterReading.Held), "reply " + i);
      watch = watch.after(value("+1.37012340E+01"), 500 * i);
    }
    MeterReading.Held held = assertInstanceOf(MeterReading.Held.class, watch.at(5000));
    assertTrue(held.refusal("DMM").contains("hold"), held.refusal("DMM"));
    assertEquals(13.701234, held.believed().orElseThrow().value(), 1e-9, "it still warns");
    assertTrue(held.fresh().isEmpty(), "it is not entered");
    watch = watch.after(value("+1.37012350E+01"), 5500);
    assertInstanceOf(MeterReading.Value.class, watch.at(5500));
  }

  @Test
  void coarseReading_mayStandStill() {
    MeterWatch watch = MeterWatch.begin(Connections.meter(0.01), 0);
    for (int i = 1; i <= 50; i++) {
      watch = watch.after(value("+1.37000000E+01"), 500 * i);
    }
    assertInstanceOf(MeterReading.Value.class, watch.at(25_000));
    assertEquals(11, watch.recent().size(), "the values of five seconds");
  }

  @Test
  void silentMeter_growsStale() {
    MeterWatch watch = MeterWatch.begin(Connections.meter(0.01), 0).after(value("13.7"), 1000);
    long limit = 1000 + MeterWatch.STALE_MILLIS + Connections.PATIENCE;
    assertInstanceOf(MeterReading.Value.class, watch.at(limit));
    MeterReading.Stale stale = assertInstanceOf(MeterReading.Stale.class, watch.at(limit + 1));
    assertEquals("stale, 5 s old", stale.words());
  }

  @Test
  void lateReply_changesNothing_andOverloadForgetsTheScatter() {
    MeterWatch watch =
        MeterWatch.begin(Connections.meter(0.01), 0)
            .after(value("13.70"), 1000)
            .after(value("13.72"), 1500);
    assertEquals(watch, watch.after(new MeterReading.Late("9"), 1600));
    assertEquals(0.02, watch.scatter().orElseThrow().spread(), 1e-9);
    MeterWatch over = watch.after(new MeterReading.Overload("9.9E37"), 2000);
    assertTrue(over.scatter().isEmpty());
    assertEquals("overload", over.at(2000).words());
  }

  @Test
  void significantDigits_countWhatCarriesSomething() {
    assertEquals(3, MeterWatch.significantDigits("+1.37000000E+01"));
    assertEquals(2, MeterWatch.significantDigits("0.0012"));
    assertEquals(0, MeterWatch.significantDigits("0.000E+00"));
    assertEquals(7, MeterWatch.significantDigits("-1.370123E-05"));
  }
}
