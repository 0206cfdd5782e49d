package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Checks leads against published wire tables; each file names its sources row by row. */
class WireTest {
  private final Wire wire = new Wire(Tables.stock());

  @Test
  void awg_diameterAreaAndResistance_followAstmB258() {
    List<Csv.Row> rows = ReferenceTable.rows("awg.csv");
    assertEquals(22, rows.size());
    for (Csv.Row row : rows) {
      Lead.Awg gauge = new Lead.Awg((int) row.number("n"));
      assertEquals(row.number("diameter_mm"), gauge.diameterMm(), 1e-6, row.where());
      assertEquals(row.number("area_mm2"), gauge.areaMm2(), 1e-6, row.where());
      double perKilometre = 1000 * wire.ohmsPerMetre(gauge, Metal.COPPER, 20);
      assertEquals(row.number("r20_ohm_per_km"), perKilometre, 2e-6, row.where());
    }
  }

  /** NEC Chapter 9 Table 8 (read): solid agrees, stranded lies up to 2.5 % above for its lay. */
  @Test
  void awg_at75Celsius_agreesWithNecChapter9Table8() {
    int compared = 0;
    for (Csv.Row row : ReferenceTable.rows("awg.csv")) {
      Lead.Awg gauge = new Lead.Awg((int) row.number("n"));
      double computed = 1000 * wire.ohmsPerMetre(gauge, Metal.COPPER, 75);
      if (row.has("nec_r75_solid_ohm_per_km")) {
        double solid = row.number("nec_r75_solid_ohm_per_km");
        assertEquals(1, computed / solid, 0.005, row.where());
      }
      if (row.has("nec_r75_stranded_ohm_per_km")) {
        double ratio = row.number("nec_r75_stranded_ohm_per_km") / computed;
        assertTrue(ratio > 1.0 && ratio < 1.027, row.where() + ": " + ratio);
        compared++;
      }
    }
    assertEquals(15, compared);
  }

  @Test
  void mm2_at20Celsius_isTheClass5MaximumOfIec60228() {
    List<Csv.Row> rows = ReferenceTable.rows("iec60228.csv");
    assertEquals(15, rows.size());
    for (Csv.Row row : rows) {
      Lead.Mm2 gauge = new Lead.Mm2(row.number("size_mm2"));
      assertEquals(
          row.number("class5_plain_max_ohm_per_km_20C"),
          1000 * wire.ohmsPerMetre(gauge, Metal.COPPER, 20),
          1e-9,
          row.where());
    }
  }

  @Test
  void mm2_betweenSizes_liesBetweenTheirResistances() {
    double twelve = 1000 * wire.ohmsPerMetre(new Lead.Mm2(12), Metal.COPPER, 20);
    assertTrue(twelve < 1.91 && twelve > 1.21, "12 mm² has " + twelve);
    double copper = 17.241 / 12;
    assertTrue(twelve > copper, "a class 5 maximum lies above copper alone: " + twelve);
  }

  /** IEC 60228 correction factors kt (read): published to three digits by a rounder rule. */
  @Test
  void temperatureFactor_agreesWithIec60228() {
    for (Csv.Row row : ReferenceTable.rows("iec60228-kt.csv")) {
      double kt = 1 / wire.temperatureFactor(Metal.COPPER, row.number("conductor_temp_C"));
      assertEquals(row.number("kt_exact_254.5/(234.5+t)"), kt, 6e-6, row.where());
      assertEquals(row.number("kt_published"), kt, 0.0035, row.where());
    }
  }

  @Test
  void ampacity_isTheTableOf33Cfr183AndIso10133() {
    for (Csv.Row row : ReferenceTable.rows("ampacity-awg-105C.csv")) {
      Lead.Gauge gauge = TableReader.gauge("AWG " + row.text("awg"));
      assertEquals(row.number("ampacity_A"), wire.ampacity(of105(new Lead("plus", gauge, 1, 1))));
      double three = wire.ampacity(of105(new Lead("plus", gauge, 1, 3)));
      assertEquals(3 * row.number("bundle_3_x0.70"), three, 1e-9, row.where());
      for (int beside : new int[] {4, 6}) {
        double bundled = wire.ampacity(of105(new Lead("plus", gauge, 1, beside)));
        assertEquals(beside * row.number("bundle_4to6_x0.60"), bundled, 1e-9, row.where());
      }
      for (int beside : new int[] {7, 24}) {
        double bundled = wire.ampacity(of105(new Lead("plus", gauge, 1, beside)));
        assertEquals(beside * row.number("bundle_7to24_x0.50"), bundled, 1e-9, row.where());
      }
      assertEquals(
          2 * row.number("ampacity_A"),
          wire.ampacity(of105(new Lead("plus", gauge, 1, 2))),
          row.where());
    }
    for (Csv.Row row : ReferenceTable.rows("ampacity-mm2-105C.csv")) {
      Lead lead = new Lead("plus", new Lead.Mm2(row.number("size_mm2")), 1, 1);
      assertEquals(row.number("ampacity_A"), wire.ampacity(of105(lead)), row.where());
    }
  }

  @Test
  void ampacity_beyondTheTable_staysOnTheLowSide() {
    Lead hair = new Lead("plus", new Lead.Awg(24), 1, 1);
    assertTrue(wire.ampacity(of105(hair)) < 20 * new Lead.Awg(24).areaMm2() / 0.82);
    assertEquals(475, wire.ampacity(of105(new Lead("plus", new Lead.Mm2(400), 1, 1))));
    Lead thread = new Lead("plus", new Lead.Mm2(0.375), 1, 1);
    assertEquals(8, wire.ampacity(of105(thread)), 1e-9, "half of the 16 A of 0.75 mm²");
  }

  /** √(10 · 16) = 12.649 mm² lies half way on logarithmic scales: √(1.91 · 1.21), √(90 · 130). */
  @Test
  void mm2_betweenSizes_isInterpolatedOnLogScales() {
    Lead.Mm2 between = new Lead.Mm2(Math.sqrt(10 * 16.0));
    assertEquals(Math.sqrt(1.91 * 1.21), 1000 * wire.ohmsPerMetre(between, Metal.COPPER, 20), 1e-9);
    assertEquals(
        Math.sqrt(90 * 130.0), wire.ampacity(of105(new Lead("plus", between, 1, 1))), 1e-9);
  }

  /** AWG 5 is not in the table of 33 CFR 183.425: half way in log area between 4 and 6. */
  @Test
  void awg_betweenTheSizesOfTheTable_isInterpolatedOnLogScales() {
    Lead five = new Lead("plus", new Lead.Awg(5), 1, 1);
    assertEquals(Math.sqrt(120 * 160.0), wire.ampacity(of105(five)), 1e-9);
  }

  /** Beyond the table the area counts alone: twice the copper of 120 mm² has half its ohms. */
  @Test
  void mm2_outsideTheTable_followsTheArea() {
    assertEquals(0.161 / 2, 1000 * wire.ohmsPerMetre(new Lead.Mm2(240), Metal.COPPER, 20), 1e-9);
    assertEquals(39.0 * 2, 1000 * wire.ohmsPerMetre(new Lead.Mm2(0.25), Metal.COPPER, 20), 1e-9);
  }

  /** Both runs at 50 °C by hand: (2 + 1) m · 0.815153 mΩ · 284.5/254.5 = 2.73372 mΩ. */
  @Test
  void leadsOfABench_areInSeriesAtWorkingTemperature_andNoneIsUnknown() {
    Lead.Gauge four = new Lead.Awg(4);
    Bench bench =
        new Bench(
            "b",
            List.of(),
            List.of(new Lead("plus", four, 2, 1), new Lead("minus", four, 1, 1)),
            OptionalDouble.empty(),
            List.of(),
            List.of(),
            1);
    assertEquals(2.73372e-3, wire.ohms(bench).orElseThrow(), 1e-8);
    assertEquals(OptionalDouble.empty(), wire.ohms(Bench.unknown()));
  }

  /** Ohm's law by hand: 2 m of AWG 4 at 20 °C is 2 · 0.815153 mΩ; at 100 A 0.163 V. */
  @Test
  void drop_ofAHandWorkedRun_followOhmsLaw() {
    Lead lead = new Lead("plus", new Lead.Awg(4), 2, 1);
    assertEquals(0.1630306, wire.dropVolts(lead, 100, 20), 1e-6);
    Lead doubled = new Lead("plus", new Lead.Awg(4), 2, 2);
    assertEquals(0.1630306 / 2, wire.dropVolts(doubled, 100, 20), 1e-6);
  }

  /** Copper heated by 50 K gains 3930 ppm/K · 50 K = 19.65 % (resistor-derating notes). */
  @Test
  void ohms_of50KelvinMore_gainAFifth() {
    double gain =
        wire.temperatureFactor(Metal.COPPER, 70) / wire.temperatureFactor(Metal.COPPER, 20);
    assertEquals(1.1965, gain, 0.0002);
  }

  @Test
  void absurdInput_getsASentence() {
    Lead lead = new Lead("plus", new Lead.Awg(4), 2, 1);
    assertSentence("amps must be", () -> wire.dropVolts(lead, Double.NaN, 20));
    assertSentence(
        "the temperature of copper must lie above -234.5 °C, got -234.5",
        () -> wire.ohms(lead, -234.5));
    assertSentence("the temperature of copper must", () -> wire.ohms(lead, -300));
    assertSentence(
        "the temperature of copper must", () -> wire.ohms(lead, Double.POSITIVE_INFINITY));
    assertSentence("the temperature of copper must", () -> wire.ohms(lead, Double.NaN));
    assertSentence("metres must be", () -> new Lead("plus", new Lead.Awg(4), 0, 1));
  }

  private static Lead of105(Lead lead) {
    return lead.insulatedFor(105);
  }

  private static void assertSentence(String start, org.junit.jupiter.api.function.Executable call) {
    String message = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(message.startsWith(start), message);
  }
}
