package loadwalk.app.loop;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;

/** The two clocks of the machine; tests give their own. */
public interface Clocks {

  /** Returns a clock that only goes forward, ns. */
  long monoNanos();

  /** Returns the wall clock, ms since 1970. */
  long wallMillis();

  /** Waits for a condition, at most so many ms; its lock must be held. */
  default void await(Condition condition, long millis) throws InterruptedException {
    condition.awaitNanos(TimeUnit.MILLISECONDS.toNanos(millis));
  }

  /** Waits so many ms. */
  default void pause(long millis) throws InterruptedException {
    Thread.sleep(millis);
  }

  /** The clocks of the machine. */
  Clocks MACHINE =
      new Clocks() {
        @Override
        public long monoNanos() {
          return System.nanoTime();
        }

        @Override
        public long wallMillis() {
          return System.currentTimeMillis();
        }
      };
}
