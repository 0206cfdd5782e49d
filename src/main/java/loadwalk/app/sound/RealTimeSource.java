package loadwalk.app.sound;

import java.io.IOException;
import java.util.OptionalDouble;
import java.util.concurrent.locks.LockSupport;
import loadwalk.app.loop.Clocks;
import loadwalk.wave.CaptureException;
import loadwalk.wave.file.AudioSource;

/** Gives the samples of another source no sooner than a sound input would. */
final class RealTimeSource implements LiveInput.Opened {
  private final AudioSource source;
  private final Clocks clocks;
  private final long startNanos;
  private long frames;

  RealTimeSource(AudioSource source, Clocks clocks) {
    this.source = source;
    this.clocks = clocks;
    this.startNanos = clocks.monoNanos();
  }

  @Override
  public double samplesPerSecond() {
    return source.samplesPerSecond();
  }

  @Override
  public int channels() {
    return source.channels();
  }

  @Override
  public OptionalDouble step() {
    return source.step();
  }

  @Override
  public int read(double[][] block) throws IOException, CaptureException {
    int read = source.read(block);
    frames += Math.max(0, read);
    long due = startNanos + (long) (frames * 1e9 / source.samplesPerSecond());
    long wait = due - clocks.monoNanos();
    while (wait > 0 && !Thread.currentThread().isInterrupted()) {
      LockSupport.parkNanos(wait);
      wait = due - clocks.monoNanos();
    }
    return read;
  }

  @Override
  public void close() {
    // Nothing of the machine is held open.
  }
}
