package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import loadwalk.json.Fault;
import loadwalk.json.Read;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConnectionFileTest {

  @Test
  void connection_withItsDefaults_isRead_andWrittenBack() {
    Bench bench =
        read("{\"tcp\":\"192.0.2.10\",\"query\":\"MEAS:VOLT:AC?\"}").found().orElseThrow();
    Connection expected =
        new Connection(new Connection.Tcp("192.0.2.10", 5025), "MEAS:VOLT:AC?", "V", 1, 2000);
    assertEquals(expected, bench.meters().get(0).connection().orElseThrow());
    assertRoundTrip(bench);
    Bench com = read("{\"serial\":\"COM3\",\"query\":\"READ?\"}").found().orElseThrow();
    assertEquals(
        new Connection.Serial("COM3", 9600), com.meters().get(0).connection().orElseThrow().line());
  }

  @Test
  void exampleFiles_areRead_andWrittenBack() throws IOException {
    for (String name : List.of("net-multimeter", "serial-clamp", "two-channel-multimeter")) {
      String file = "/loadwalk/benches/" + name + ".json";
      try (InputStream in = ConnectionFileTest.class.getResourceAsStream(file)) {
        Read<Bench> read = BenchFiles.BENCH.read(in.readAllBytes(), file);
        assertEquals(List.of(), read.faults(), file);
        Bench bench = read.found().orElseThrow();
        assertTrue(bench.meters().stream().anyMatch(m -> m.connection().isPresent()), file);
        assertRoundTrip(bench);
      }
    }
  }

  private static void assertRoundTrip(Bench bench) {
    byte[] written = BenchFiles.BENCH.text(bench).getBytes(StandardCharsets.UTF_8);
    assertEquals(bench, BenchFiles.BENCH.read(written, "written").found().orElseThrow());
  }

  @Test
  void address_ofEveryForm_isRead() {
    assertEquals(
        new Connection.Tcp("meter.example", 5555), Connection.Tcp.of("meter.example:5555"));
    assertEquals(new Connection.Tcp("2001:db8::7", 5025), Connection.Tcp.of("[2001:db8::7]"));
    Connection.Tcp six = Connection.Tcp.of("[2001:db8::7]:4000");
    assertEquals(new Connection.Tcp("2001:db8::7", 4000), six);
    assertEquals(six, Connection.Tcp.of(six.text()));
  }

  /** The place in a file, and the place as it is said; the port of SCPI is 5025 (IANA). */
  @ParameterizedTest
  @CsvSource({
    "meter, meter:5025",
    "meter:1, meter:1",
    "192.0.2.10:65535, 192.0.2.10:65535",
    "::1, 'port must be between 1 and 65535, got :1'",
    "[::1], [::1]:5025",
    "[::1]:7, [::1]:7",
    "a:, 'port must be between 1 and 65535, got '",
    "a:5x, 'port must be between 1 and 65535, got 5x'",
    "a:123456, 'port must be between 1 and 65535, got 123456'",
    ":5025, host must not be empty",
    "[], host must not be empty",
    "[::1, 'port must be between 1 and 65535, got :1'",
    "[a]b, 'tcp must be a host and a port, got host [a]b'"
  })
  void address_isSaidBack_orRefused(String text, String words) {
    String said;
    try {
      said = Connection.Tcp.of(text).text();
    } catch (IllegalArgumentException refused) {
      said = refused.getMessage();
    }
    assertEquals(words, said);
  }

  @Test
  void line_isSaidAndTold() {
    Connection.Kinds<String> kinds =
        new Connection.Kinds<>() {
          @Override
          public String tcp(Connection.Tcp line) {
            return line.host();
          }

          @Override
          public String serial(Connection.Serial line) {
            return line.device();
          }
        };
    assertEquals("meter", new Connection.Tcp("meter", 5025).to(kinds));
    Connection.Serial serial = new Connection.Serial("/dev/ttyUSB0", 115_200);
    assertEquals("/dev/ttyUSB0", serial.to(kinds));
    assertEquals("/dev/ttyUSB0 at 115200 baud", serial.text());
  }

  @Test
  void query_ofAtMost120Characters_isAsked() {
    String longest = "MEAS:VOLT? " + "1".repeat(109);
    assertEquals(120, longest.length());
    assertTrue(Connection.isQuestion(longest));
    assertFalse(Connection.isQuestion(longest + "1"));
  }

  @Test
  void query_thatCouldDoMoreThanRead_isAFault() {
    for (String bad :
        List.of(
            "CONF:VOLT:AC",
            "OUTP ON",
            "*RST",
            "*TST?",
            "*CAL?",
            "CAL:ALL?",
            "diag:test?",
            "OUTP ON;MEAS:VOLT:AC?",
            "MEAS:VOLT:AC?;OUTP ON",
            "MEAS:VOLT:AC? 1;*RST",
            "?",
            "MEAS :VOLT?")) {
      assertFault("{\"tcp\":\"a\",\"query\":\"" + bad + "\"}", "Loadwalk controls nothing");
      assertFalse(Connection.isQuestion(bad), bad);
    }
    assertFalse(Connection.isQuestion("MEAS:VOLT:AC?\nOUTP ON"));
    for (String good :
        List.of(
            "MEAS:VOLT:AC?", "read?", ":FETC?", "MEAS:VOLT:DC? 10,0.001", "MEAS:TEMP? (@101)")) {
      assertTrue(Connection.isQuestion(good), good);
    }
  }

  @Test
  void line_thatIsNone_isAFault() {
    String query = "\"query\":\"READ?\"";
    assertFault("{" + query + "}", "exactly one of «tcp» and «serial»");
    assertFault("{\"tcp\":\"a\",\"serial\":\"/dev/ttyS0\"," + query + "}", "exactly one");
    assertFault("{\"tcp\":\"a:99999\"," + query + "}", "port");
    assertFault("{\"tcp\":\"a b\"," + query + "}", "host");
    assertFault("{\"tcp\":\"a\",\"baud\":9600," + query + "}", "serial port");
    assertFault("{\"serial\":\"/etc/passwd\"," + query + "}", "below /dev/");
    assertFault("{\"serial\":\"/dev/../etc/passwd\"," + query + "}", "below /dev/");
    assertFault("{\"serial\":\"/dev/ttyS0\",\"baud\":5," + query + "}", "baud");
    assertFault("{\"tcp\":\"a\"}", "«query» is missing");
    assertFault("{\"tcp\":\"a\"," + query + ",\"scal\":2}", "«scale»");
  }

  @Test
  void replyInAnotherUnit_needsAScale() {
    assertFault("{\"tcp\":\"a\",\"query\":\"READ?\",\"unit\":\"mV\"}", "needs a «scale»");
    assertFault("{\"tcp\":\"a\",\"query\":\"READ?\",\"unit\":\"mV\",\"scale\":0}", "scale");
    Connection by =
        read("{\"tcp\":\"a\",\"query\":\"READ?\",\"unit\":\"mV\",\"scale\":0.001}")
            .found()
            .orElseThrow()
            .meters()
            .get(0)
            .connection()
            .orElseThrow();
    assertEquals(0.001, by.scale());
  }

  /** An ohmmeter may answer in Ω, as people write it, or in ohm, as files do. */
  @Test
  void replyInTheReadingsOwnUnit_needsNoScale() {
    for (String unit : List.of("ohm", "Ω")) {
      String by = "{\"tcp\":\"a\",\"query\":\"READ?\",\"unit\":\"" + unit + "\"}";
      Bench bench = readOf("loadOhms", by).found().orElseThrow();
      assertEquals(unit, bench.meters().get(0).connection().orElseThrow().unit());
      assertRoundTrip(bench);
    }
    Read<Bench> volts = readOf("loadOhms", "{\"tcp\":\"a\",\"query\":\"READ?\",\"unit\":\"V\"}");
    assertEquals(
        List.of("a reply in another unit needs a «scale» that converts it to ohm"),
        volts.faults().stream().map(Fault::sentence).toList());
  }

  @Test
  void baud_isOfSerialPortsOnly() {
    String query = "\"query\":\"READ?\"";
    Bench bench =
        read("{\"serial\":\"/dev/ttyS0\",\"baud\":19200," + query + "}").found().orElseThrow();
    assertEquals(
        new Connection.Serial("/dev/ttyS0", 19_200),
        bench.meters().get(0).connection().orElseThrow().line());
    assertRoundTrip(bench);
    assertEquals(
        List.of("«baud» is for serial ports only"),
        read("{\"tcp\":\"a\",\"baud\":9600," + query + "}").faults().stream()
            .map(Fault::sentence)
            .filter(said -> said.contains("serial"))
            .toList());
  }

  private static void assertFault(String connection, String part) {
    Read<Bench> read = read(connection);
    assertTrue(read.found().isEmpty(), connection);
    assertTrue(
        read.faults().stream().anyMatch(f -> f.sentence().contains(part)),
        connection + ": " + read.faults());
  }

  private static Read<Bench> read(String connection) {
    return readOf("outputVolts", connection);
  }

  private static Read<Bench> readOf(String reading, String connection) {
    String text =
        "{\"format\":\"loadwalk-bench/1\",\"meters\":[{\"reads\":\""
            + reading
            + "\",\"percent\":1,\"connection\":"
            + connection
            + "}]}";
    return BenchFiles.BENCH.read(text.getBytes(StandardCharsets.UTF_8), "bench.json");
  }
}
