package loadwalk.app.loop;

import java.time.Instant;

/** Clocks that go on only when a test says so, and a wall clock that can be set. */
public final class FakeClocks implements Clocks {
  private long nanos = 1_000_000_000L;
  private long millis = Instant.parse("2026-03-01T10:00:00Z").toEpochMilli();

  @Override
  public long monoNanos() {
    return nanos;
  }

  @Override
  public long wallMillis() {
    return millis;
  }

  /** Lets both clocks go on. */
  public void goOn(double seconds) {
    nanos += Math.round(seconds * 1e9);
    setForward(seconds);
  }

  /** Moves the wall clock alone, back where the seconds are below zero. */
  public void setForward(double seconds) {
    millis += Math.round(seconds * 1e3);
  }

  /** Sets the wall clock alone. */
  public void setWall(Instant time) {
    millis = time.toEpochMilli();
  }

  /** Starts the forward-only clock anew, as another boot of the machine does. */
  public void boot() {
    nanos = 5_000_000_000L;
  }
}
