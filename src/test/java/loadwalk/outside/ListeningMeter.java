package loadwalk.outside;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.atomic.AtomicInteger;

/** A meter on a port of this machine that counts who came to it, and shows 13.71 V. */
final class ListeningMeter implements Closeable {
  private final ServerSocket server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
  private final AtomicInteger callers = new AtomicInteger();

  ListeningMeter() throws IOException {
    Thread thread = new Thread(this::listen, "listening meter");
    thread.setDaemon(true);
    thread.start();
  }

  /** Returns how often it was called. */
  int callers() {
    return callers.get();
  }

  /** Returns its address as a bench file and a screen have it. */
  String address() {
    return "127.0.0.1:" + server.getLocalPort();
  }

  /** Returns a bench file that names it under a label. */
  String bench(String label) {
    return """
    {"format":"loadwalk-bench/1","name":"North bench","meters":[{"label":"%s",
     "reads":"supplyVolts","percent":0.5,"resolution":0.01,
     "connection":{"tcp":"%s","query":"MEAS:VOLT:DC?"}}]}
    """
        .formatted(label, address());
  }

  private void listen() {
    try {
      while (true) {
        Socket caller = server.accept();
        callers.incrementAndGet();
        Thread thread = new Thread(() -> answer(caller), "answering meter");
        thread.setDaemon(true);
        thread.start();
      }
    } catch (IOException closed) {
      // The test is over.
    }
  }

  private static void answer(Socket caller) {
    try (caller;
        BufferedReader asked =
            new BufferedReader(new InputStreamReader(caller.getInputStream(), US_ASCII))) {
      int n = 0;
      for (String line = asked.readLine(); line != null; line = asked.readLine()) {
        String reply = line.equals("*IDN?") ? "Brightmoor,M6,0,1.0" : "13.7" + 1 + n++ % 7;
        caller.getOutputStream().write((reply + "\n").getBytes(US_ASCII));
      }
    } catch (IOException gone) {
      // The program has let it go.
    }
  }

  @Override
  public void close() throws IOException {
    server.close();
  }
}
