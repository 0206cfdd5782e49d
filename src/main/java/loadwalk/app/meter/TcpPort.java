package loadwalk.app.meter;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import loadwalk.bench.Connection;
import loadwalk.text.Sentence;

/** SCPI over a raw TCP socket. */
final class TcpPort implements Port {
  private static final int CONNECT_MILLIS = 3000;
  private static final int BUFFER = 4096;

  private final Connection.Tcp line;
  private final Socket socket = new Socket();
  private final byte[] buffer = new byte[BUFFER];

  TcpPort(Connection.Tcp line) {
    this.line = line;
  }

  @Override
  public void open() throws IOException {
    InetSocketAddress address = new InetSocketAddress(line.host(), line.port());
    if (address.isUnresolved()) {
      throw new IOException(Sentence.of("the host {} is not known", line.host()));
    }
    socket.setTcpNoDelay(true);
    socket.connect(address, CONNECT_MILLIS);
  }

  @Override
  public void send(String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
  }

  @Override
  public String receive(int millis) throws IOException {
    socket.setSoTimeout(millis);
    try {
      int count = socket.getInputStream().read(buffer);
      if (count < 0) {
        throw new IOException("the meter closed the connection");
      }
      return new String(buffer, 0, count, StandardCharsets.ISO_8859_1);
    } catch (SocketTimeoutException nothing) {
      return "";
    }
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
