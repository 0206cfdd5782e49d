package loadwalk.app.meter;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import loadwalk.bench.Connection;
import loadwalk.text.Sentence;

/**
 * SCPI over a serial port.
 *
 * <p>The library behind it, native code and all, is loaded when the first port is opened. The
 * number of waiting bytes is asked before every read, so that no read blocks: a port that was
 * pulled out answers that question with an error. Whoever closes a port in use does not wait for
 * its user, who closes it when done.
 */
final class SerialScpiPort implements Port {
  private static final int LOOK_MILLIS = 5;
  private static final int MOST = 4096;

  private final Connection.Serial line;
  private final byte[] buffer = new byte[MOST];
  private final ReentrantLock use = new ReentrantLock();
  private volatile boolean closed;
  private SerialLine port;

  SerialScpiPort(Connection.Serial line) {
    this.line = line;
  }

  @Override
  public void open() throws IOException {
    use.lock();
    try {
      port = SerialLibrary.line();
      if (closed) {
        throw new IOException("the port was closed");
      }
      port.open(line.device(), line.baud());
    } finally {
      leave();
    }
  }

  @Override
  public void send(String text) throws IOException {
    use.lock();
    try {
      byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
      if (closed || port.write(bytes) != bytes.length) {
        throw gone();
      }
    } finally {
      leave();
    }
  }

  @Override
  public String receive(int millis) throws IOException {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
    use.lock();
    try {
      while (!closed) {
        int waiting = port.waiting();
        if (waiting < 0) {
          throw gone();
        }
        if (waiting > 0) {
          return read(Math.min(waiting, MOST));
        }
        if (System.nanoTime() >= end) {
          return "";
        }
        pause();
      }
      throw new IOException("the port was closed");
    } finally {
      leave();
    }
  }

  private String read(int most) throws IOException {
    int count = port.read(buffer, most);
    if (count < 0) {
      throw gone();
    }
    return new String(buffer, 0, count, StandardCharsets.ISO_8859_1);
  }

  private IOException gone() {
    return new IOException(Sentence.of("the port {} is gone", line.device()));
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(LOOK_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("the wait for the meter was interrupted", e);
    }
  }

  private void leave() {
    use.unlock();
    if (closed) {
      letGo();
    }
  }

  /** Closes the port unless it is in use: then its user comes here behind that. */
  private void letGo() {
    if (use.tryLock()) {
      try {
        if (port != null) {
          port.close();
        }
      } finally {
        use.unlock();
      }
    }
  }

  @Override
  public void close() {
    closed = true;
    letGo();
  }
}
