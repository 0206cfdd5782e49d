package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What may stand in an operator's own table, as spreadsheets write it (RFC 4180). */
class CsvTest {
  private static final String HEAD = "gauge,ohmsPerKilometre,source,how\n";

  private static SourcedNumber four(String text) {
    return Tables.stock().with("wire.csv", text).wires().get(new Lead.Awg(4));
  }

  private static SourcedNumber fourFrom(String source) {
    return four(HEAD + "AWG 4,0.9," + source + ",read\n");
  }

  @Test
  void quotes_holdCommasAndQuotes() {
    assertEquals("reel, 10 m", fourFrom("\"reel, 10 m\"").source());
    assertEquals("the \"good\" reel", fourFrom("\"the \"\"good\"\" reel\"").source());
    assertEquals("\"good\"", fourFrom("\"\"\"good\"\"\"").source());
    assertEquals("reel", fourFrom(" reel ").source());
    assertEquals(
        0.9, four("\"gauge\",ohmsPerKilometre,source,how\n\"AWG 4\",\"0.9\",x,\"read\"").value());
  }

  @Test
  void commentsAndBlankLines_countAsLinesOnly() {
    assertEquals(0.9, four("# mine\n\n" + HEAD + "  \n#AWG 4,7,x,read\nAWG 4,0.9,x,read").value());
    String faulty = "# mine\n\n" + HEAD + "AWG 6,1,x,read\n\nAWG 4,x,x,read";
    assertTold("wire.csv line 6: column ohmsPerKilometre must be a number, got \"x\"", faulty);
  }

  @Test
  void byteOrderMark_ofASpreadsheet_isNoFault() {
    assertEquals(0.9, four("\uFEFF" + HEAD + "AWG 4,0.9,x,read").value());
    assertTold("wire.csv line 2: the header must be", "# mine\n\uFEFF" + HEAD);
  }

  @Test
  void rows_areAtMostTenThousand() {
    String row = "AWG 4,0.9,x,read\n";
    assertEquals(0.9, four(HEAD + row.repeat(10_000)).value());
    assertTold(
        "wire.csv line 10002: a table may hold at most 10000 rows", HEAD + row.repeat(10_001));
  }

  @Test
  void quote_leftOpenAtTheEnd_isTold() {
    assertTold("wire.csv line 2: a quote is not closed", HEAD + "AWG 4,0.9,x,read\"");
    assertTold("wire.csv line 2: column how must not be empty", HEAD + "AWG 4,0.9,x,\"\"");
    assertTold("wire.csv line 2: column how must not be empty", HEAD + "AWG 4,0.9,x, ");
  }

  private static void assertTold(String start, String text) {
    String told = assertThrows(IllegalArgumentException.class, () -> four(text)).getMessage();
    assertTrue(told.startsWith(start), told);
  }
}
