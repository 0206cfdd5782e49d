package loadwalk.app.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import loadwalk.Needs;
import loadwalk.app.Child;
import loadwalk.app.loop.Clocks;
import loadwalk.app.loop.HastyClocks;
import loadwalk.bench.Bench;
import loadwalk.bench.Connection;
import loadwalk.cli.MeterPort;
import loadwalk.meter.Act;
import loadwalk.meter.MeterReading;
import loadwalk.meter.SimulatedInstrument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeterLinkTest {
  private static final int PATIENCE = 5000;
  private final BlockingQueue<Act> news = new LinkedBlockingQueue<>();

  private static MeterServer server() throws IOException {
    SimulatedInstrument instrument =
        new SimulatedInstrument(
            Meters.WHO,
            query ->
                query.equals("MEAS:VOLT:DC?") ? OptionalDouble.of(13.7) : OptionalDouble.empty(),
            OptionalLong.empty());
    return new MeterServer(instrument, 0, Clocks.MACHINE);
  }

  private MeterLinks start(Connection.Line line) {
    Bench bench = Meters.bench(Meters.meter(line, "MEAS:VOLT:DC?", PATIENCE));
    return MeterLinks.start(bench, Port.OF_MACHINE, Clocks.MACHINE, (meter, act) -> news.add(act));
  }

  @Test
  void instrumentOnLoopback_tellsWhoItIs_andItsValue_andComesBackAfterItsCableWasPulled()
      throws Exception {
    try (MeterServer server = server();
        MeterLinks bank = start(server.line())) {
      assertEquals(new Act.Identified(Meters.WHO), news.poll(20, TimeUnit.SECONDS));
      assertEquals(13.7, Meters.awaitValue(news).value(), 1e-9);
      server.pullCable();
      Act act = news.poll(20, TimeUnit.SECONDS);
      while (act != null && !isSilent(act)) {
        act = news.poll(20, TimeUnit.SECONDS);
      }
      assertTrue(act != null, "the pulled cable was not told");
      assertEquals(13.7, Meters.awaitValue(news).value(), 1e-9);
      Meters.end(bank);
    }
  }

  private static boolean isSilent(Act act) {
    return act instanceof Act.Heard heard && heard.reading() instanceof MeterReading.Silent;
  }

  @Test
  void addressWhereNothingListens_isToldWithoutAnException() throws Exception {
    int free;
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      free = socket.getLocalPort();
    }
    try (MeterLinks bank = start(new Connection.Tcp("127.0.0.1", free))) {
      Act.Heard heard = assertInstanceOf(Act.Heard.class, news.poll(20, TimeUnit.SECONDS));
      assertInstanceOf(MeterReading.Silent.class, heard.reading());
      Meters.end(bank);
    }
  }

  @Test
  void deviceThatIsNone_isTold() throws Exception {
    try (MeterLinks bank = start(new Connection.Serial("/dev/loadwalk-none", 9600))) {
      Act.Heard heard = assertInstanceOf(Act.Heard.class, news.poll(20, TimeUnit.SECONDS));
      assertInstanceOf(MeterReading.Silent.class, heard.reading());
      Meters.end(bank);
    }
  }

  @Test
  void serialPort_onAPairOfPseudoTerminals_isRead(@TempDir Path folder) throws Exception {
    // It makes the pair of pseudo-terminals.
    Needs.tool("socat");
    try (MeterServer server = server()) {
      Process socat =
          new ProcessBuilder("socat", "-d", "-d", "pty,raw,echo=0", "tcp:" + server.line().text())
              .redirectError(folder.resolve("socat").toFile())
              .start();
      try (MeterLinks bank = start(new Connection.Serial(device(folder.resolve("socat")), 9600))) {
        assertEquals(new Act.Identified(Meters.WHO), news.poll(20, TimeUnit.SECONDS));
        assertEquals(13.7, Meters.awaitValue(news).value(), 1e-9);
        socat.destroy();
        Act act = news.poll(20, TimeUnit.SECONDS);
        while (act != null && !isSilent(act)) {
          act = news.poll(20, TimeUnit.SECONDS);
        }
        assertTrue(act != null, "the pulled cable was not told");
        Meters.end(bank);
      } finally {
        socat.destroy();
      }
    }
  }

  @Test
  void serialLibrary_isLoadedOnlyWhereABenchNamesASerialPort(@TempDir Path folder)
      throws Exception {
    assertTrue(!loaded(folder, "\"tcp\":\"127.0.0.1:9\"").contains("com.fazecast"));
    assertTrue(
        loaded(folder, "\"serial\":\"/dev/loadwalk-none\"").contains("com.fazecast.jSerialComm"));
  }

  /** Tries a meter in a process of its own and returns the log of the classes loaded for that. */
  private static String loaded(Path folder, String line) throws Exception {
    Path bench = folder.resolve("bench.json");
    Files.writeString(
        bench,
        "{\"format\":\"loadwalk-bench/1\",\"meters\":[{\"label\":\"DMM\",\"reads\":\"supplyVolts\","
            + "\"percent\":1,\"connection\":{"
            + line
            + ",\"query\":\"READ?\"}}]}");
    Path log = folder.resolve("classes");
    List<String> words = Child.command(folder, "meters", "--bench", bench.toString());
    ProcessBuilder child = new ProcessBuilder(words.subList(0, words.size() - 2));
    child.environment().put("JDK_JAVA_OPTIONS", "-Xlog:class+load:file=" + log);
    child.redirectErrorStream(true);
    Process process = child.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(2, process.waitFor(), said);
    assertTrue(said.contains("Nothing was entered"), said);
    return Files.readString(log);
  }

  private static String device(Path log) throws Exception {
    for (int i = 0; i < 1000; i++) {
      for (String line : Files.readAllLines(log)) {
        if (line.contains("PTY is ")) {
          return line.substring(line.indexOf("PTY is ") + "PTY is ".length()).strip();
        }
      }
      Thread.sleep(10);
    }
    throw new AssertionError("socat made no pseudo-terminal");
  }

  @Test
  void practiceMeters_areServed_andTriedWhole() throws Exception {
    MeterTrial room = new MeterTrial(Port.OF_MACHINE, Clocks.MACHINE);
    MeterPort.Served served = room.serve(1, OptionalLong.empty());
    try {
      List<MeterPort.Tried> tried = room.tryAll(served.bench());
      assertEquals(7, tried.size());
      for (MeterPort.Tried each : tried) {
        assertInstanceOf(MeterReading.Value.class, each.reading().orElseThrow(), each.toString());
        assertEquals("Loadwalk", each.identity().orElseThrow().maker());
      }
    } finally {
      served.end().close();
    }
  }

  @Test
  void practiceMeters_withFaults_failAndComeBack() throws Exception {
    Clocks hasty = new HastyClocks(20);
    Port.Maker ports = line -> new HastyPort(Port.OF_MACHINE.make(line), 20);
    MeterPort.Served served = new MeterTrial(ports, hasty).serve(1, OptionalLong.of(5));
    try (MeterLinks bank =
        MeterLinks.start(served.bench(), ports, hasty, (meter, act) -> news.add(act))) {
      int values = 0;
      int failures = 0;
      for (int i = 0; i < 4000 && (values < 50 || failures < 3); i++) {
        Act act = news.poll(20, TimeUnit.SECONDS);
        if (act instanceof Act.Heard heard) {
          boolean value = heard.reading() instanceof MeterReading.Value;
          values += value ? 1 : 0;
          failures += value ? 0 : 1;
        }
      }
      assertTrue(values >= 50, "only " + values + " values came, seed 5");
      assertTrue(failures >= 3, "only " + failures + " faults came, seed 5");
      Meters.end(bank);
    } finally {
      served.end().close();
    }
  }

  /** Waits as much shorter as its clocks run ahead. */
  private record HastyPort(Port port, int times) implements Port {
    @Override
    public void open() throws IOException {
      port.open();
    }

    @Override
    public void send(String text) throws IOException {
      port.send(text);
    }

    @Override
    public String receive(int millis) throws IOException {
      return port.receive(Math.max(1, millis / times));
    }

    @Override
    public void close() throws IOException {
      port.close();
    }
  }

  @Test
  void instrumentThatDoesNotKnowTheQuery_isToldAsSilent_andNothingButQuestionsIsSent()
      throws Exception {
    try (ServerSocket listening = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        MeterLinks bank =
            MeterLinks.start(
                Meters.bench(
                    Meters.meter(
                        new Connection.Tcp("127.0.0.1", listening.getLocalPort()), "READ?", 50)),
                Port.OF_MACHINE,
                Clocks.MACHINE,
                (meter, act) -> news.add(act))) {
      StringBuilder sent = new StringBuilder();
      try (var socket = listening.accept()) {
        InputStream in = socket.getInputStream();
        for (int c = in.read(); c >= 0; c = in.read()) {
          sent.append((char) c);
        }
      }
      assertEquals("*IDN?\nREAD?\n", sent.toString());
      Act.Heard heard = assertInstanceOf(Act.Heard.class, news.poll(20, TimeUnit.SECONDS));
      assertTrue(heard.reading().refusal("DMM").contains("no answer to READ?"), heard.toString());
      Meters.end(bank);
    }
  }
}
