package loadwalk.app.meter;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.IOException;
import loadwalk.text.Sentence;

/**
 * A port of the serial library; this class and the library's are loaded by {@link SerialLibrary}.
 */
public final class LibraryLine implements SerialLine {
  private static final int DATA_BITS = 8;

  private SerialPort port;

  /** Makes one that is not open; the first one made loads the library's native part. */
  public LibraryLine() {
    SerialPort.getVersion();
  }

  @Override
  public void open(String device, int baud) throws IOException {
    try {
      port = SerialPort.getCommPort(device);
    } catch (SerialPortInvalidPortException none) {
      throw new IOException(Sentence.of("there is no port {}", device), none);
    }
    port.setComPortParameters(baud, DATA_BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
    port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
    port.setComPortTimeouts(SerialPort.TIMEOUT_NONBLOCKING, 0, 0);
    if (!port.openPort()) {
      throw new IOException(Sentence.of("the port {} cannot be opened", device));
    }
    port.flushIOBuffers();
  }

  @Override
  public int write(byte[] bytes) {
    return port.writeBytes(bytes, bytes.length);
  }

  @Override
  public int waiting() {
    return port.bytesAvailable();
  }

  @Override
  public int read(byte[] into, int most) {
    return port.readBytes(into, most);
  }

  @Override
  public void close() {
    if (port != null && port.isOpen()) {
      port.closePort();
    }
  }
}
