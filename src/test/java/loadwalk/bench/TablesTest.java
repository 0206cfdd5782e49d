package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Checks that the operator's own tables take the place of the stock ones, row by row. */
class TablesTest {
  @Test
  void stock_valuesAllTellHowTheyWereObtained() {
    Tables stock = Tables.stock();
    stock.wires().values().forEach(TablesTest::assertOrigin);
    stock.ampacities().values().forEach(TablesTest::assertOrigin);
    stock.limits().values().forEach(TablesTest::assertOrigin);
    stock.fuses().stream()
        .flatMap(fuse -> fuse.points().stream())
        .forEach(point -> assertOrigin(new SourcedNumber(1, point.source(), point.how())));
  }

  @Test
  void ownWire_overridesOneGauge() {
    Tables own =
        Tables.stock()
            .with("wire.csv", "gauge,ohmsPerKilometre,source,how\nAWG 4,0.90,my meter,read\n");
    assertEquals(0.9, 1000 * new Wire(own).ohmsPerMetre(new Lead.Awg(4), 20), 1e-12);
    assertEquals(0.780, 1000 * new Wire(own).ohmsPerMetre(new Lead.Mm2(25), 20), 1e-12);
  }

  @Test
  void ownFuse_replacesAllPointsOfItsKindOnly() {
    String text =
        "type,upToAmps,percentOfRating,minSeconds,maxSeconds,source,how\r\n"
            + "\"blade, 19 mm (ISO 8820-3 type C)\",40,110,360000,,datasheet,read\r\n"
            + "\"blade, 19 mm (ISO 8820-3 type C)\",40,135,2,300,datasheet,read\r\n";
    Tables own = Tables.stock().with("fuse.csv", text);
    assertEquals(2, own.fuseFor(30).points().size());
    assertEquals(2, own.fuseFor(30).opening(1.35).minSeconds());
    assertEquals(5, own.fuseFor(60).points().size());
  }

  @Test
  void ownLimit_overridesByKey() {
    String text = "key,value,unit,source,how\nlead-celsius,35,degC,thermometer,read\n";
    assertEquals(35, new Wire(Tables.stock().with("limits.csv", text)).workingCelsius());
  }

  @Test
  void badTables_getASentenceWithFileAndLine() {
    String head = "gauge,ohmsPerKilometre,source,how\n";
    assertSentence(
        "wire.csv line 2: column ohmsPerKilometre must be above 0, got 0",
        "wire.csv",
        head + "AWG 4,0,x,read");
    assertSentence(
        "wire.csv line 2: column ohmsPerKilometre must be a number, got \"a\"",
        "wire.csv",
        head + "AWG 4,a,x,read");
    assertSentence(
        "wire.csv line 2: column ohmsPerKilometre must be finite",
        "wire.csv",
        head + "AWG 4,1e999,x,read");
    assertSentence(
        "wire.csv line 2: column source must not be empty", "wire.csv", head + "AWG 4,1,,read");
    assertSentence("wire.csv line 2: gauge must read like", "wire.csv", head + "four,1,x,read");
    assertSentence("wire.csv line 2: expected 4 columns, got 2", "wire.csv", head + "AWG 4,1");
    assertSentence("wire.csv line 1: the header must be", "wire.csv", "a,b\n");
    assertSentence("wire.csv line 2: a quote is not closed", "wire.csv", head + "\"AWG 4,1,x,read");
    assertSentence("wire.csv: the table is empty", "wire.csv", "");
    assertSentence("meter.csv is not a data table", "meter.csv", "");
    assertSentence(
        "limits.csv line 2: unknown key \"lead-celcius\"",
        "limits.csv",
        "key,value,unit,source,how\nlead-celcius,1,degC,x,read");
    String fuse = "type,upToAmps,percentOfRating,minSeconds,maxSeconds,source,how\n";
    assertSentence(
        "fuse.csv line 3: f: percent of rating must rise",
        "fuse.csv",
        fuse + "f,40,200,1,2,x,read\nf,40,110,9,,x,read");
    assertSentence(
        "fuse.csv line 2: maxSeconds must not lie below", "fuse.csv", fuse + "f,40,200,3,2,x,read");
  }

  @Test
  void valuesNoBenchCanHave_areRefusedAtTheirLine() {
    String wire = "gauge,ohmsPerKilometre,source,how\nAWG 4,1,x,read\n";
    assertSentence("wire.csv line 3: awg must", "wire.csv", wire + "AWG 99,1,x,read");
    assertSentence("wire.csv line 3: mm2 must", "wire.csv", wire + "0 mm2,1,x,read");
    String head = "key,value,unit,source,how\n";
    for (String key : Tables.stock().limits().keySet()) {
      if (!key.endsWith("-celsius")) {
        String row = key + ",0,x,x,read";
        assertSentence("limits.csv line 2: column value must be above 0", "limits.csv", head + row);
      }
    }
    assertSentence(
        "limits.csv line 2: copper-zero-celsius must be below lead-celsius",
        "limits.csv",
        head + "lead-celsius,-300,degC,x,read");
    assertSentence(
        "limits.csv line 3: resistor-full-celsius must be below resistor-zero-celsius",
        "limits.csv",
        head + "drop-percent,3,percent,x,read\nresistor-full-celsius,250,degC,x,read");
    String both = "resistor-full-celsius,300,degC,x,read\nresistor-zero-celsius,350,degC,x,read";
    Tables hot = Tables.stock().with("limits.csv", head + both);
    assertEquals(350, hot.limit("resistor-zero-celsius"));
  }

  @Test
  void ownFuse_ofARatingThatAStockKindHasToo_isTheOneUsed() {
    String head = "type,upToAmps,percentOfRating,minSeconds,maxSeconds,source,how\n";
    Tables own = Tables.stock().with("fuse.csv", head + "mine,120,200,1,2,x,read");
    assertEquals("mine", own.fuseFor(100).type());
    assertEquals(Tables.stock().fuseFor(40), own.fuseFor(40));
    assertEquals(Tables.stock().fuseFor(121), own.fuseFor(121));
  }

  private static void assertSentence(String start, String file, String text) {
    Tables stock = Tables.stock();
    String message =
        assertThrows(IllegalArgumentException.class, () -> stock.with(file, text)).getMessage();
    assertTrue(message.startsWith(start), message);
  }

  private static void assertOrigin(SourcedNumber value) {
    assertTrue(
        value.how().matches("(read|from memory|computed|common practice).*"), value.toString());
  }
}
