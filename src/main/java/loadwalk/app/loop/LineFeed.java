package loadwalk.app.loop;

import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Reads lines on a thread of its own, one whenever one is wanted, so that what a meter says need
 * not wait for the operator's next line, and neither need the clocks.
 */
public final class LineFeed implements Closeable {
  private static final long TICK_MILLIS = 1000;

  private final BlockingQueue<Heard> queue = new LinkedBlockingQueue<>();
  private final Semaphore wanted = new Semaphore(0);
  private final AtomicBoolean meterWaits = new AtomicBoolean();
  private final Thread reader;

  private sealed interface Heard {
    /** Returns the line where it is one. */
    Optional<Line> line() throws IOException;
  }

  private record Line(Optional<String> text) implements Heard {
    @Override
    public Optional<Line> line() {
      return Optional.of(this);
    }
  }

  private record Failed(IOException why) implements Heard {
    @Override
    public Optional<Line> line() throws IOException {
      throw why;
    }
  }

  private record MetersSpoke() implements Heard {
    @Override
    public Optional<Line> line() {
      return Optional.empty();
    }
  }

  /**
   * Makes a feed; nothing is read before the first line is wanted.
   *
   * @param in what is read; a read under way cannot be called off, so the feed never closes it
   */
  public LineFeed(Reader in) {
    this.reader = new Thread(() -> read(new BoundedLines(in)), "lines");
    reader.setDaemon(true);
    reader.start();
  }

  private void read(BoundedLines lines) {
    try {
      while (true) {
        wanted.acquire();
        queue.add(new Line(lines.next()));
      }
    } catch (IOException fault) {
      queue.add(new Failed(fault));
    } catch (InterruptedException closed) {
      Thread.currentThread().interrupt();
    }
  }

  /** Tells from another thread that a meter has spoken; told once until it was looked at. */
  public void metersSpoke() {
    if (meterWaits.compareAndSet(false, true)) {
      queue.add(new MetersSpoke());
    }
  }

  /**
   * Waits for the next line; empty at the end of the input.
   *
   * @param look what is run, on the caller's thread, whenever a meter has spoken before that
   * @param tick what is run whenever a second has passed before that
   * @throws IOException if reading fails
   */
  Optional<String> next(Runnable look, Runnable tick) throws IOException {
    wanted.release();
    try {
      while (true) {
        Heard heard = queue.poll(TICK_MILLIS, TimeUnit.MILLISECONDS);
        if (heard == null) {
          tick.run();
          continue;
        }
        Optional<Line> line = heard.line();
        if (line.isPresent()) {
          return line.get().text();
        }
        meterWaits.set(false);
        look.run();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** Ends the thread, at once or behind the line that it still waits for. */
  @Override
  public void close() {
    reader.interrupt();
  }
}
