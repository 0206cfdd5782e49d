package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    assertEquals(0.9, 1000 * new Wire(own).ohmsPerMetre(new Lead.Awg(4), Metal.COPPER, 20), 1e-12);
    assertEquals(
        0.780, 1000 * new Wire(own).ohmsPerMetre(new Lead.Mm2(25), Metal.COPPER, 20), 1e-12);
  }

  @Test
  void ownAmpacity_overridesOneGauge() {
    Tables own =
        Tables.stock().with("ampacity.csv", "gauge,amps,source,how\nAWG 4,125,cable maker,read\n");
    assertEquals(
        125, new Wire(own).ampacity(new Lead("plus", new Lead.Awg(4), 1, 1).insulatedFor(105)));
    assertEquals(
        120, new Wire(own).ampacity(new Lead("plus", new Lead.Awg(6), 1, 1).insulatedFor(105)));
    assertEquals(Tables.stock().wires(), own.wires());
    assertEquals(Tables.stock().fuses(), own.fuses());
    assertEquals(Tables.stock().limits(), own.limits());
  }

  /** The single values against their sources, each a row of a published table or rule. */
  @ParameterizedTest
  @CsvSource({
    "copper-ohm-mm2-per-metre, 0.017241, IACS annealed copper (IEC 60028)",
    "copper-zero-celsius, -234.5, IEC 60228",
    "cca-zero-celsius, -228, IEC 60228: aluminium R20 = Rt 248 / (228 + t)",
    "bundle-factor-3, 0.70, 33 CFR 183.425",
    "bundle-factor-6, 0.60, 33 CFR 183.425",
    "bundle-factor-24, 0.50, 33 CFR 183.425",
    "shock-volts, 50, IEC 61140: extra-low voltage up to 50 V AC rms",
    "resistor-full-celsius, 25, MIL-PRF-39009",
    "resistor-zero-celsius, 250, MIL-PRF-39009",
    "resistor-burst-multiple, 5, catalogues: 5 times for 5 s",
    "resistor-burst-seconds, 5, catalogues: 5 times for 5 s",
    "resistor-free-air-10, 5.5, catalogue pairs",
    "resistor-free-air-25, 12.5, catalogue pairs",
    "resistor-free-air-50, 20, catalogue pairs",
    "resistor-free-air-100, 50, catalogue pairs",
    "resistor-free-air-150, 50, catalogue pairs",
    "resistor-free-air-200, 50, catalogue pairs",
    "resistor-free-air-300, 75, catalogue pairs",
    "aluminium-joules-per-kilogram-kelvin, 897, specific heat of aluminium",
    "sink-touch-celsius, 65, ISO 13732-1: bare metal for 1 s"
  })
  void stock_limit_isThePublishedOne(String key, double published, String source) {
    assertEquals(published, Tables.stock().limit(key), source);
  }

  @Test
  void stock_fuseAndDropRules_areThoseOfFuseDeratingCsv() {
    Map<String, String> keys =
        Map.of(
            "continuous load, general fuse practice", "fuse-continuous-percent",
            "overcurrent device rating vs conductor ampacity, boats", "fuse-over-ampacity-percent",
            "voltage drop critical circuits", "drop-percent");
    int compared = 0;
    for (Csv.Row row : ReferenceTable.rows("fuse-derating.csv")) {
      String key = keys.get(row.text("rule"));
      if (key != null) {
        assertEquals(row.number("value"), Tables.stock().limit(key), row.where());
        compared++;
      }
    }
    assertEquals(3, compared);
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

  @Test
  void ownInsulationRow_isUsed_andOneAtTheRoomItselfIsRefused() {
    String head = "gauge,celsius,amps,source,how\n";
    Tables own = Tables.stock().with("insulation.csv", head + "AWG 4,75,80,cable maker,read");
    Lead lead = new Lead("plus", new Lead.Awg(4), 1, 1).insulatedFor(75);
    assertEquals(80, new Wire(own).ampacity(lead), 1e-9);
    assertEquals(125, new Wire(Tables.stock()).ampacity(lead), 1e-9);
    assertSentence(
        "insulation.csv line 2: celsius must lie above the 30 °C",
        "insulation.csv",
        head + "AWG 4,30,80,x,read");
  }

  /** "00" is 2/0 in every table, not 1/0. */
  @Test
  void ought_isReadAsPeopleWriteIt() {
    String own = "gauge,amps,source,how\nAWG 00,111,x,read\nAWG 0000,222,x,read\n";
    Tables tables = Tables.stock().with("ampacity.csv", own);
    assertEquals(111, tables.ampacities().get(new Lead.Awg(-1)).value());
    assertEquals(222, tables.ampacities().get(new Lead.Awg(-3)).value());
    assertEquals(285, tables.ampacities().get(new Lead.Awg(0)).value());
  }

  private static void assertOrigin(SourcedNumber value) {
    assertTrue(
        value.how().matches("(read|from memory|computed|common practice).*"), value.toString());
  }
}
