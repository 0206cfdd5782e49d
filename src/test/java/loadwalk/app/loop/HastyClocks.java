package loadwalk.app.loop;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;

/** Clocks that run ahead, and whose pauses are as much shorter. */
public record HastyClocks(int times) implements Clocks {
  @Override
  public long monoNanos() {
    return MACHINE.monoNanos() * times;
  }

  @Override
  public long wallMillis() {
    return MACHINE.wallMillis();
  }

  @Override
  public void await(Condition condition, long millis) throws InterruptedException {
    condition.awaitNanos(TimeUnit.MILLISECONDS.toNanos(millis) / times);
  }

  @Override
  public void pause(long millis) throws InterruptedException {
    TimeUnit.NANOSECONDS.sleep(TimeUnit.MILLISECONDS.toNanos(millis) / times);
  }
}
