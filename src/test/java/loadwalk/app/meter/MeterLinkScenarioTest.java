package loadwalk.app.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.Condition;
import loadwalk.app.loop.Clocks;
import loadwalk.bench.Connection;
import loadwalk.meter.Act;
import loadwalk.meter.MeterReading;
import loadwalk.meter.SimulatedInstrument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Runs a link's real thread for hours in time that only its own waiting brings on. */
class MeterLinkScenarioTest {
  private static final long HOUR_MILLIS = 3_600_000L;
  private static final int PATIENCE = 500;
  private static final long SEED = 80;

  private final AtomicLong millis = new AtomicLong();
  private final AtomicInteger made = new AtomicInteger();
  private final AtomicInteger open = new AtomicInteger();
  private final SimulatedInstrument instrument =
      new SimulatedInstrument(Meters.WHO, query -> OptionalDouble.of(13.7), OptionalLong.of(SEED));

  private final Clocks clocks =
      new Clocks() {
        @Override
        public long monoNanos() {
          return TimeUnit.MILLISECONDS.toNanos(millis.get());
        }

        @Override
        public long wallMillis() {
          return millis.get();
        }

        @Override
        public void await(Condition condition, long wait) {
          millis.addAndGet(wait);
        }
      };

  @Test
  void faultyInstrument_forTwoHours_leavesNoPortAndNoThread() throws Exception {
    poll(2);
  }

  @Test
  @Tag("long")
  void faultyInstrument_forADay_leavesNoPortAndNoThread() throws Exception {
    poll(24);
  }

  private void poll(int hours) throws Exception {
    CountDownLatch end = new CountDownLatch(1);
    Map<Class<?>, Integer> kinds = new ConcurrentHashMap<>();
    Connection.Line line = new Connection.Tcp("192.0.2.1", 5025);
    try (MeterLinks bank =
        MeterLinks.start(
            Meters.bench(Meters.meter(line, "MEAS:VOLT:DC?", PATIENCE)),
            where -> new FaultyPort(),
            clocks,
            (meter, act) -> {
              if (act instanceof Act.Heard heard) {
                kinds.merge(heard.reading().getClass(), 1, Integer::sum);
              }
              if (millis.get() >= hours * HOUR_MILLIS) {
                end.countDown();
              }
            })) {
      assertTrue(end.await(5, TimeUnit.MINUTES), "seed " + SEED + ": stuck at " + millis.get());
      Meters.end(bank);
    }
    String message = "seed " + SEED + ": " + kinds + ", ports " + made;
    assertEquals(0, open.get(), message);
    assertTrue(made.get() > 10 * hours, message);
    assertTrue(kinds.getOrDefault(MeterReading.Value.class, 0) > 4000 * hours, message);
    assertEquals(6, kinds.size(), message);
  }

  /** A port on which waiting for an answer lets the clock jump to it. */
  private final class FaultyPort implements Port {
    private record Due(long atMillis, String text, boolean cuts) {}

    private final Deque<Due> due = new ArrayDeque<>();
    private boolean closed;

    @Override
    public void open() throws IOException {
      if (made.incrementAndGet() % 5 == 0) {
        throw new IOException("connection refused");
      }
      open.incrementAndGet();
    }

    @Override
    public void send(String text) {
      long at = millis.get();
      for (SimulatedInstrument.Delivery piece : instrument.hear(text, PATIENCE)) {
        at += piece.delayMillis();
        due.add(new Due(at, piece.text(), piece.cuts()));
      }
    }

    @Override
    public String receive(int wait) throws IOException {
      Due next = due.peek();
      if (next == null || next.atMillis() > millis.get() + wait) {
        millis.addAndGet(wait);
        return "";
      }
      due.poll();
      millis.set(Math.max(millis.get(), next.atMillis()));
      if (next.cuts()) {
        throw new IOException("the cable was pulled");
      }
      return next.text();
    }

    @Override
    public void close() {
      if (!closed && made.get() % 5 != 0) {
        open.decrementAndGet();
      }
      closed = true;
    }
  }
}
