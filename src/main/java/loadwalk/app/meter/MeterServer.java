package loadwalk.app.meter;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import loadwalk.app.loop.Clocks;
import loadwalk.bench.Connection;
import loadwalk.meter.SimulatedInstrument;

/** Serves a simulated instrument on a loopback port, one asker after another. */
public final class MeterServer implements Closeable {
  private static final int LONGEST_LINE = 1024;

  private final SimulatedInstrument instrument;
  private final Clocks clocks;
  private final ServerSocket server;
  private final Set<Socket> open = ConcurrentHashMap.newKeySet();
  private volatile boolean over;

  /**
   * Takes the port, or any free one where it is taken, and starts to serve.
   *
   * @throws IOException if no port can be had
   */
  public MeterServer(SimulatedInstrument instrument, int port, Clocks clocks) throws IOException {
    this.instrument = instrument;
    this.clocks = clocks;
    this.server = bound(port);
    Thread thread = new Thread(this::serve, "meter-server-" + server.getLocalPort());
    thread.setDaemon(true);
    thread.start();
  }

  private static ServerSocket bound(int port) throws IOException {
    InetAddress loopback = InetAddress.getLoopbackAddress();
    ServerSocket socket = new ServerSocket();
    try {
      socket.bind(new InetSocketAddress(loopback, port));
    } catch (IOException taken) {
      socket.close();
      return new ServerSocket(0, 50, loopback);
    }
    return socket;
  }

  /** Returns where it is. */
  public Connection.Tcp line() {
    return new Connection.Tcp(server.getInetAddress().getHostAddress(), server.getLocalPort());
  }

  @Override
  public void close() throws IOException {
    over = true;
    server.close();
    pullCable();
  }

  /** Breaks the connection there is. */
  public void pullCable() throws IOException {
    for (Socket socket : open) {
      socket.close();
    }
  }

  private void serve() {
    while (!over) {
      try (Socket socket = server.accept()) {
        open.add(socket);
        answerAll(socket);
        open.remove(socket);
      } catch (IOException gone) {
        open.removeIf(Socket::isClosed);
      }
    }
  }

  private void answerAll(Socket socket) throws IOException {
    InputStream in = socket.getInputStream();
    StringBuilder line = new StringBuilder();
    for (int c = in.read(); c >= 0 && line.length() < LONGEST_LINE; c = in.read()) {
      if (c != '\n') {
        line.append((char) c);
        continue;
      }
      for (SimulatedInstrument.Delivery piece :
          instrument.hear(line.toString(), Connection.DEFAULT_ANSWER_MILLIS)) {
        pause(piece.delayMillis());
        socket.getOutputStream().write(piece.text().getBytes(StandardCharsets.ISO_8859_1));
        if (piece.cuts()) {
          return;
        }
      }
      line.setLength(0);
    }
  }

  private void pause(long millis) throws IOException {
    try {
      clocks.pause(millis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("the meter server was interrupted");
    }
  }
}
