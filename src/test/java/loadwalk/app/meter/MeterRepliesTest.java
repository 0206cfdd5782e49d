package loadwalk.app.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.concurrent.TimeUnit;
import loadwalk.app.loop.FakeClocks;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.meter.Act;
import loadwalk.meter.MeterReading;
import loadwalk.meter.MeterWatch;
import loadwalk.quantity.Unit;
import loadwalk.view.state.ConnectedMeters;
import org.junit.jupiter.api.Test;

class MeterRepliesTest {
  @Test
  void valueOfAnHourAgo_isStale_alsoOnceTheWallClockWasSetBack() {
    FakeClocks clocks = new FakeClocks();
    Meter meter = Meters.meter(new Connection.Tcp("127.0.0.1", 5025), "MEAS:VOLT:DC?", 5000);
    MeterReplies replies = new MeterReplies(Meters.bench(meter), clocks, () -> {});
    replies.heard(meter, new Act.Heard(0, new MeterReading.Value(13.71, Unit.VOLT, "13.71")));
    ConnectedMeters fresh = replies.news().orElseThrow();
    MeterWatch watch = fresh.of(ReadingId.SUPPLY_VOLTS).orElseThrow();
    assertEquals("13.71 V", fresh.words(watch));
    clocks.setForward(-7200);
    clocks.goOn(3600);
    long now = TimeUnit.NANOSECONDS.toMillis(clocks.monoNanos());
    assertNotEquals("13.71 V", fresh.at(now, clocks.wallMillis()).words(watch));
  }
}
