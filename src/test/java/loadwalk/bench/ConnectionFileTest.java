package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import loadwalk.json.Read;
import org.junit.jupiter.api.Test;

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
      assertFault("{\"tcp\":\"a\",\"query\":\"" + bad + "\"}", "only reads");
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

  private static void assertFault(String connection, String part) {
    Read<Bench> read = read(connection);
    assertTrue(read.found().isEmpty(), connection);
    assertTrue(
        read.faults().stream().anyMatch(f -> f.sentence().contains(part)),
        connection + ": " + read.faults());
  }

  private static Read<Bench> read(String connection) {
    String text =
        "{\"format\":\"loadwalk-bench/1\",\"meters\":[{\"reads\":\"outputVolts\",\"percent\":1,"
            + "\"connection\":"
            + connection
            + "}]}";
    return BenchFiles.BENCH.read(text.getBytes(StandardCharsets.UTF_8), "bench.json");
  }
}
