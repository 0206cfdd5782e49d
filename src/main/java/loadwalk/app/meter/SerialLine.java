package loadwalk.app.meter;

import java.io.IOException;

/**
 * A serial port as the serial library knows it, and the only way from us to that library; public,
 * as who implements it has another loader.
 */
public interface SerialLine {

  /**
   * Opens a device with 8 data bits, no parity, 1 stop bit and no flow control, and throws away
   * what waits in it.
   *
   * @throws IOException with a clause that says why it cannot be opened
   */
  void open(String device, int baud) throws IOException;

  /** Returns how many bytes were taken, fewer where the port is gone. */
  int write(byte[] bytes);

  /** Returns how many bytes wait; below 0 where the port is gone. */
  int waiting();

  /** Reads at most so many bytes and returns how many came; below 0 where the port is gone. */
  int read(byte[] into, int most);

  /** Closes the port; one that is not open stays so. */
  void close();
}
