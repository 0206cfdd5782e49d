package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks insulation, metal and short use of leads against published columns and an integration. */
class LeadMakeTest {
  private static final double ROOM = 30;

  private final Wire wire = new Wire(Tables.stock());

  @Test
  void ampacity_isTheColumnOfItsInsulation() {
    int compared = 0;
    for (Csv.Row row : ReferenceTable.rows("ampacity-33cfr183-table5.csv")) {
      Lead lead = new Lead("plus", Lead.Awg.of(row.text("awg")), 1, 1);
      for (int celsius : new int[] {60, 75, 80, 90, 105, 125, 200}) {
        double published = row.number("at_" + celsius + "C");
        assertEquals(published, wire.ampacity(lead.insulatedFor(celsius)), 1e-9, row.where());
        compared++;
      }
      assertEquals(row.number("at_75C"), wire.ampacity(lead), 1e-9, "not said: 75 °C");
    }
    assertEquals(105, compared);
  }

  /** 70 °C lies between the columns of 60 and 75 °C; above 200 °C nothing more is allowed. */
  @Test
  void ampacity_betweenColumns_liesBetweenThem_andBeyondThemIsCautious() {
    Lead four = new Lead("plus", new Lead.Awg(4), 1, 1);
    double pvc = wire.ampacity(four.insulatedFor(70));
    assertTrue(pvc > 105 && pvc < 125, "at 70 °C: " + pvc);
    assertEquals(180, wire.ampacity(four.insulatedFor(260)), 1e-9);
    assertEquals(105 * Math.sqrt(20 / 30.0), wire.ampacity(four.insulatedFor(50)), 1e-9);
    double metric = wire.ampacity(new Lead("plus", new Lead.Mm2(25), 1, 1).insulatedFor(75));
    assertTrue(metric > 0.78 * 170 && metric < 0.81 * 170, "25 mm² at 75 °C: " + metric);
  }

  /**
   * NEC Table 310.16, 75 °C, copper and the column of aluminium or copper-clad aluminium (from
   * memory, very sure). The column is for the worse of the two, so copper-clad may lie a little
   * above it.
   */
  @ParameterizedTest
  @CsvSource({
    "8, 50, 40",
    "6, 65, 50",
    "4, 85, 65",
    "2, 115, 90",
    "1/0, 150, 120",
    "2/0, 175, 135",
    "3/0, 200, 155",
    "4/0, 230, 180"
  })
  void copperCladAluminium_carriesWhatTheCodeAllowsIt(String awg, double copper, double clad) {
    Lead lead = new Lead("plus", Lead.Awg.of(awg), 1, 1).insulatedFor(75);
    double ratio = wire.ampacity(lead.of(Metal.CCA)) / wire.ampacity(lead);
    assertEquals(clad / copper, ratio, 0.04 * ratio);
  }

  /** 62.9 % of the conductivity of copper (data sheet to ASTM B566), so 59 % more drop. */
  @Test
  void copperCladAluminium_dropsByItsResistivity() {
    Lead lead = new Lead("plus", new Lead.Awg(4), 2, 1);
    double ratio = wire.dropVolts(lead.of(Metal.CCA), 100, 20) / wire.dropVolts(lead, 100, 20);
    assertEquals(1 / 0.629, ratio, 0.001);
    double gain = wire.temperatureFactor(Metal.CCA, 75);
    assertEquals(1 + 0.00403 * 55, gain, 0.001, "aluminium by IEC 60028");
  }

  /**
   * Integrates C dT/dt = I² R(T) − h (T − 30) in small steps for a minute, with R rising with
   * temperature and h such that the run settles at its rating at its ampacity. The run starts as a
   * step at half this heat left it.
   */
  private static double celsiusAfter(Made made, double amps, double seconds) {
    double area = made.lead.gauge().areaMm2();
    double hot = made.rated;
    double most = made.ampacity;
    double perKelvin = most * most * ohms(made.lead, hot) / (hot - ROOM);
    double celsius = ROOM + amps * amps / (most * most) / 2 * (hot - ROOM);
    double step = 0.001;
    double joules = (made.lead.metal() == Metal.COPPER ? 3.45 : 2.52) * area;
    for (double t = 0; t < seconds; t += step) {
      double watts = amps * amps * ohms(made.lead, celsius) - perKelvin * (celsius - ROOM);
      celsius += step * watts / joules;
    }
    return celsius;
  }

  private record Made(Lead lead, double rated, double ampacity) {}

  private static double ohms(Lead lead, double celsius) {
    boolean copper = lead.metal() == Metal.COPPER;
    double at20 = (copper ? 0.017241 : 0.017241 / 0.629) / lead.gauge().areaMm2();
    return at20 * (copper ? (234.5 + celsius) / 254.5 : (228 + celsius) / 248);
  }

  @Test
  void mostAmps_ofAReading_leavesTheInsulationWithinItsRating() {
    Hold minute = new Hold(60);
    double hottest = 0;
    int free = 0;
    for (int number = 18; number >= -3; number--) {
      for (Metal metal : Metal.values()) {
        for (double rated : new double[] {60, 75, 105, 200}) {
          Lead lead = new Lead("plus", new Lead.Awg(number), 1, 1).of(metal).insulatedFor(rated);
          double ampacity = wire.ampacity(lead);
          double amps = wire.mostAmps(lead, minute);
          double reached = celsiusAfter(new Made(lead, rated, ampacity), amps, 60);
          double part = (reached - ROOM) / (rated - ROOM);
          hottest = Math.max(hottest, part);
          assertTrue(part <= 1.0005, lead + " reaches " + reached);
          assertTrue(amps >= ampacity && amps <= 1.25 * ampacity * (1 + 1e-12), lead.toString());
          if (amps < 1.2499 * ampacity) {
            free++;
            assertTrue(part > 0.88, lead + " is held back for nothing: " + reached);
          }
        }
      }
    }
    assertTrue(free > 20, "runs whose own heat is the limit: " + free);
    assertTrue(hottest > 0.97, "the hottest reaches " + hottest);
  }

  @Test
  void mostAmps_fallsToTheAmpacityAsTheHoldGrows() {
    Lead lead = new Lead("plus", new Lead.Awg(10), 1, 1);
    double before = Double.POSITIVE_INFINITY;
    for (double seconds : new double[] {1, 30, 60, 120, 300, 3600}) {
      double amps = wire.mostAmps(lead, new Hold(seconds));
      assertTrue(amps <= before, seconds + " s");
      before = amps;
    }
    assertEquals(wire.ampacity(lead), before, 1e-9);
    assertEquals(wire.ampacity(lead), wire.mostAmps(lead, Hold.CONTINUOUS));
  }

  @Test
  void whatIsNotSaid_isTold_andNothingElse() {
    Lead plain = new Lead("plus", new Lead.Awg(4), 1, 1);
    Lead other = new Lead("minus", new Lead.Awg(4), 1, 1);
    assertEquals(
        List.of(
            "Insulation of lead plus, minus: not said, taken as good for 75 °C. 105 °C would carry"
                + " a quarter more."),
        wire.taken(bench(plain, other)));
    assertEquals(List.of(), wire.taken(bench(plain.insulatedFor(75))));
    assertEquals(List.of(), wire.taken(Bench.unknown()));
  }

  private static Bench bench(Lead... leads) {
    return new Bench(
        "b", List.of(), List.of(leads), OptionalDouble.empty(), List.of(), List.of(), 1);
  }
}
