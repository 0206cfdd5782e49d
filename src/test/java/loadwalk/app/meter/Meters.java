package loadwalk.app.meter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.meter.Act;
import loadwalk.meter.Identity;
import loadwalk.meter.MeterReading;

/** Benches with connected meters, and what they said. */
public final class Meters {
  public static final Identity WHO = new Identity("Halvorsen & Pike", "Loopback 6", "0", "1.0");

  private Meters() {}

  public static Meter meter(Connection.Line line, String query, int answerMillis) {
    return new Meter("DMM", ReadingId.SUPPLY_VOLTS, 0.5, 2, 0.01, Optional.empty())
        .connectedBy(new Connection(line, query, "V", 1, answerMillis));
  }

  public static Bench bench(Meter... meters) {
    return new Bench(
        "North bench",
        List.of(),
        List.of(),
        OptionalDouble.empty(),
        List.of(),
        List.of(meters),
        Bench.DEFAULT_USABLE_FRACTION);
  }

  /** Waits for a value, as long as a loaded machine may need. */
  static MeterReading.Value awaitValue(BlockingQueue<Act> news) throws InterruptedException {
    for (int i = 0; i < 400; i++) {
      Act act = news.poll(10, TimeUnit.SECONDS);
      if (act instanceof Act.Heard heard && heard.reading() instanceof MeterReading.Value value) {
        return value;
      }
    }
    throw new AssertionError("no value came");
  }

  static void end(MeterLinks bank) throws InterruptedException {
    bank.close();
    for (int i = 0; i < 1000 && bank.isAlive(); i++) {
      Thread.sleep(10);
    }
    if (bank.isAlive()) {
      throw new AssertionError("a meter's thread is left");
    }
  }
}
