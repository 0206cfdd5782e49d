package loadwalk.app.sound;

import java.util.OptionalDouble;
import java.util.concurrent.Semaphore;
import java.util.concurrent.SynchronousQueue;
import loadwalk.app.Ramps;

/**
 * A sound input that gives what a test feeds it, block by block, each heard whole before the next.
 */
final class FedInput implements LiveInput, LiveInput.Opened {
  private final int channels;
  private final SynchronousQueue<double[][]> blocks = new SynchronousQueue<>();
  private final Semaphore asked = new Semaphore(0);

  FedInput(int channels) {
    this.channels = channels;
  }

  /** Feeds rows, one a channel, and returns once the listener has heard all of them. */
  void feed(double[]... rows) throws InterruptedException {
    int block = Ramps.RATE / 20;
    for (int from = 0; from < rows[0].length; from += block) {
      double[][] part = new double[rows.length][Math.min(block, rows[0].length - from)];
      for (int row = 0; row < rows.length; row++) {
        System.arraycopy(rows[row], from, part[row], 0, part[row].length);
      }
      asked.acquire();
      blocks.put(part);
    }
    asked.acquire();
    asked.release();
  }

  @Override
  public Opened open() {
    return this;
  }

  @Override
  public double samplesPerSecond() {
    return Ramps.RATE;
  }

  @Override
  public int channels() {
    return channels;
  }

  @Override
  public OptionalDouble step() {
    return OptionalDouble.empty();
  }

  @Override
  public int read(double[][] block) {
    asked.release();
    try {
      double[][] part = blocks.take();
      for (int row = 0; row < part.length; row++) {
        System.arraycopy(part[row], 0, block[row], 0, part[row].length);
      }
      return part[0].length;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return -1;
    }
  }

  @Override
  public void close() {
    // Nothing of the machine is held open.
  }
}
