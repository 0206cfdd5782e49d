package loadwalk.app;

import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import loadwalk.bench.Connection;

/**
 * SCPI over a serial port, read and written as the plain file that it is on Linux and macOS.
 *
 * <p>{@code stty} sets the speed, 8 data bits, no parity, 1 stop bit, and takes away everything a
 * terminal would do to the characters; it opens the device without waiting for a carrier, and with
 * {@code clocal} neither does this port. So no native library is carried along for the few who have
 * such a meter. The number of waiting bytes is asked before every read, so that no read blocks: a
 * port that was pulled out answers that question with an error. Windows has neither {@code stty}
 * nor such files; there a serial meter is told as not to be opened.
 */
final class SerialPort implements Port {
  private static final int LOOK_MILLIS = 5;
  private static final int STTY_SECONDS = 5;
  private static final int MOST = 4096;

  private final Connection.Serial line;
  private final byte[] buffer = new byte[MOST];
  private volatile boolean closed;
  private FileInputStream in;
  private FileOutputStream out;

  SerialPort(Connection.Serial line) {
    this.line = line;
  }

  @Override
  public void open() throws IOException {
    set();
    synchronized (this) {
      if (closed) {
        throw new IOException("the port was closed");
      }
      in = new FileInputStream(line.device());
      out = new FileOutputStream(line.device());
    }
    while (in.available() > 0) {
      read();
    }
  }

  private void set() throws IOException {
    boolean mac = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("mac");
    Process stty =
        new ProcessBuilder(
                List.of(
                    "stty",
                    mac ? "-f" : "-F",
                    line.device(),
                    String.valueOf(line.baud()),
                    "cs8",
                    "-parenb",
                    "-cstopb",
                    "raw",
                    "-echo",
                    "clocal",
                    "-hupcl",
                    "-ixon",
                    "-crtscts"))
            .redirectErrorStream(true)
            .start();
    stty.getOutputStream().close();
    try {
      if (!stty.waitFor(STTY_SECONDS, TimeUnit.SECONDS)) {
        stty.destroyForcibly();
        throw new IOException("the port does not let itself be set");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("setting the port was broken off");
    }
    if (stty.exitValue() != 0) {
      byte[] said = stty.getInputStream().readNBytes(MOST);
      throw new IOException(new String(said, StandardCharsets.UTF_8).strip());
    }
  }

  @Override
  public void send(String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.US_ASCII));
  }

  @Override
  public String receive(int millis) throws IOException {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
    while (!closed) {
      if (in.available() > 0) {
        return read();
      }
      if (System.nanoTime() >= end) {
        return "";
      }
      pause();
    }
    throw new IOException("the port was closed");
  }

  /** Only this form of reading never asks for the position, which a port does not have. */
  private String read() throws IOException {
    int count = in.read(buffer);
    if (count < 0) {
      throw new IOException("the port is gone");
    }
    return new String(buffer, 0, count, StandardCharsets.ISO_8859_1);
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(LOOK_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("waiting for the meter was broken off");
    }
  }

  @Override
  public synchronized void close() throws IOException {
    closed = true;
    if (in != null) {
      in.close();
    }
    if (out != null) {
      out.close();
    }
  }
}
