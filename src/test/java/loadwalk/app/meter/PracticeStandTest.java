package loadwalk.app.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loadwalk.app.loop.FakeClocks;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;

class PracticeStandTest {
  private final PracticeStand stand = new PracticeStand(1, new FakeClocks());

  private double read(ReadingId id) {
    return stand.read(id).orElseThrow();
  }

  @Test
  void lines_setWhatIsConnected_andTheMetersFollow() {
    double stereo4 = read(ReadingId.SUPPLY_AMPS);
    assertEquals("On the bench: stereo 2.00 ohm, at the limit.", stand.set(" Stereo 2 "));
    double stereo2 = read(ReadingId.SUPPLY_AMPS);
    double loaded = read(ReadingId.OUTPUT_VOLTS);
    assertTrue(stereo2 > 1.3 * stereo4, stereo2 + " A against " + stereo4 + " A");
    assertEquals(2, read(ReadingId.LOAD_OHMS), 0.02);
    stand.set("open");
    assertTrue(read(ReadingId.OUTPUT_VOLTS) > loaded, "the load taken off");
    stand.set("bridged 4");
    // From equal channels: V_bridged(R) = 2 V_stereo(R/2), within the unlike channels' difference.
    assertEquals(2, read(ReadingId.OUTPUT_VOLTS) / loaded, 0.1);
    stand.set("idle");
    assertEquals(0, read(ReadingId.OUTPUT_VOLTS));
    assertTrue(read(ReadingId.SUPPLY_AMPS) < 0.5 * stereo4, "idle");
    assertTrue(Double.isNaN(read(ReadingId.THD_PERCENT)), "there is no THD without a tone");
  }

  @Test
  void overload_isOnEveryMeter_untilSomethingElseIsSet() {
    stand.set("overload");
    for (ReadingId id : new ReadingId[] {ReadingId.OUTPUT_VOLTS, ReadingId.SUPPLY_AMPS}) {
      assertEquals(9.9e37, read(id));
    }
    stand.set("idle");
    assertEquals(0, read(ReadingId.OUTPUT_VOLTS));
  }

  @Test
  void wordsThatAreNone_changeNothing_andAreAnsweredWithThoseThatAre() {
    double before = read(ReadingId.SUPPLY_AMPS);
    for (String bad : new String[] {"", "stereo", "stereo 0", "bridged x", "stereo 99999", "on"}) {
      assertTrue(stand.set(bad).startsWith("Type one of: "), bad);
    }
    assertEquals(before, read(ReadingId.SUPPLY_AMPS));
  }
}
