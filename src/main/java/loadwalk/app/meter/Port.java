package loadwalk.app.meter;

import java.io.Closeable;
import java.io.IOException;
import loadwalk.bench.Connection;

/** The line to one instrument; used by one thread, but closed by any. */
public interface Port extends Closeable {

  /**
   * Opens the line; what waits in it from before is thrown away.
   *
   * @throws IOException if it cannot be opened, or was closed before
   */
  void open() throws IOException;

  /** Sends characters. */
  void send(String text) throws IOException;

  /**
   * Returns what came, empty where nothing came in time.
   *
   * @param millis the longest wait, ms, above 0
   * @throws IOException if the line is gone
   */
  String receive(int millis) throws IOException;

  /** Makes ports; tests make their own. */
  interface Maker {
    /** Returns a port that is not open yet. */
    Port make(Connection.Line line);
  }

  /** Makes the ports of this machine. */
  Maker OF_MACHINE = new OfMachine();

  /** The two kinds of port that a machine has. */
  final class OfMachine implements Maker, Connection.Kinds<Port> {
    private OfMachine() {}

    @Override
    public Port make(Connection.Line line) {
      return line.to(this);
    }

    @Override
    public Port tcp(Connection.Tcp line) {
      return new TcpPort(line);
    }

    @Override
    public Port serial(Connection.Serial line) {
      return new SerialScpiPort(line);
    }
  }
}
