package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks load resistors against published figures and an integration of their heat. */
class ResistorDeratingTest {
  private static final ResistorDerating DERATING = new ResistorDerating(Tables.stock());
  private static final long SEED = 20_261;

  /** A heatsink that stays as cold as the air. */
  private static final Mount COLD = Mount.heatsink(1e-6);

  private static LoadResistor resistor(double watts, Mount mount) {
    return new LoadResistor("r", 4, 5, watts, 1, OptionalDouble.empty()).on(mount);
  }

  private static LoadResistor inAir(double watts) {
    return resistor(watts, Mount.of(Mount.Kind.FREE_AIR));
  }

  private static double forEver(LoadResistor resistor) {
    return DERATING.mostWatts(resistor, Hold.CONTINUOUS);
  }

  /**
   * MIL-PRF-39009: full rating with the case at 25 °C, none at 250 °C, a straight line between. A
   * heatsink that the published watts bring to the published temperature bears just those watts.
   */
  @ParameterizedTest
  @CsvSource({"50, 88.9", "70, 80.0", "100, 66.7", "125, 55.6", "150, 44.4", "200, 22.2"})
  void derating_byTheHeatsinksTemperature_isThePublishedOne(double celsius, double percent) {
    for (double rated : new double[] {10, 50, 100, 300}) {
      double watts = percent / 100 * rated;
      double kelvinPerWatt = (celsius - 25) / watts;
      double inFreeAir = 225 / FREE_AIR.applyAsDouble(rated) - 225 / rated;
      if (kelvinPerWatt < inFreeAir) {
        LoadResistor onSink = resistor(rated, Mount.heatsink(kelvinPerWatt));
        assertEquals(watts, forEver(onSink), 0.001 * rated, "rated " + rated);
      }
    }
  }

  private static final DoubleUnaryOperator FREE_AIR =
      rated -> rated == 10 ? 5.5 : rated == 50 ? 20 : rated == 100 ? 50 : 75;

  /** Catalogue pairs, from memory, moderately sure: heatsink watts to free-air watts. */
  @ParameterizedTest
  @CsvSource({"10, 5.5", "25, 12.5", "50, 20", "100, 50", "150, 50", "200, 50", "300, 75"})
  void freeAir_isThatOfTheCatalogues_alsoWhereNoMountIsSaid(double rated, double bears) {
    assertEquals(bears, forEver(inAir(rated)), 1e-9);
    LoadResistor unsaid = new LoadResistor("r", 4, 5, rated, 1, OptionalDouble.empty());
    assertEquals(bears, forEver(unsaid), 1e-9);
  }

  /** Catalogue figure, from memory, not sure: 5 times the rating for 5 s, on its heatsink. */
  @Test
  void burst_atFiveTimes_lastsFiveSeconds() {
    LoadResistor cold = resistor(100, COLD);
    assertEquals(5, DERATING.burstSeconds(500, cold), 1e-3);
    assertEquals(500, DERATING.mostWatts(cold, new Hold(5)), 0.1);
    assertEquals(500, DERATING.mostWatts(cold, new Hold(1)), "nothing is known above");
    assertEquals(0, DERATING.burstSeconds(501, cold));
    assertEquals(Double.POSITIVE_INFINITY, DERATING.burstSeconds(99.9, cold));
    assertEquals(5, DERATING.largestMultiple());
  }

  /** A body of 700 g is still cool after a minute; after a quarter of an hour it is not. */
  @Test
  void largeBodyInFreeAir_bearsNearlyItsRatingForAReading() {
    double minute = DERATING.mostWatts(inAir(300), new Hold(60));
    assertTrue(minute > 0.85 * 300 && minute < 1.05 * 300, "" + minute);
    double quarter = DERATING.mostWatts(inAir(300), new Hold(900));
    assertTrue(quarter > 75 && quarter < 150, "" + quarter);
  }

  /**
   * Two heat capacities in a row, integrated in small steps (midpoint rule) from the figures of the
   * tables as written here: 225 K at the rating; 5 times for 5 s, so 22.4 s; catalogue free-air
   * watts and grams; 897 J/(kg K).
   */
  @ParameterizedTest
  @CsvSource({
    "10, 4, 22.409, 40", "10, 4, 22.409, 400", "50, 32, 6.75, 60", "100, 115, 2.25, 60",
    "100, 115, 2.25, 900", "150, 175, 3, 60", "200, 475, 3.375, 60", "300, 700, 2.25, 10",
    "300, 700, 2.25, 60", "300, 700, 2.25, 900", "300, 700, 2.25, 5000", "300, 700, 0.5, 60",
    "300, 700, 0.05, 60", "100, 115, 0.5, 900"
  })
  void mostWatts_heatTheElementJustToItsLimit(
      double rated, double grams, double toAir, double seconds) {
    double inAir = 225 / forEver(inAir(rated)) - 225 / rated;
    boolean free = Math.abs(toAir - inAir) < 0.01 * inAir || toAir > inAir;
    LoadResistor resistor = free ? inAir(rated) : resistor(rated, Mount.heatsink(toAir));
    double watts = DERATING.mostWatts(resistor, new Hold(seconds));
    double rise = integrated(watts, rated, grams / 1000 * 897, free ? inAir : toAir, seconds);
    assertEquals(225, rise, 0.05, "watts " + watts);
    assertEquals(seconds, DERATING.burstSeconds(watts, resistor), 1e-3 * seconds);
  }

  private static double integrated(
      double watts, double rated, double bodyJoules, double toAir, double seconds) {
    double toCase = 225 / rated;
    double elementJoules = 5 / -Math.log(0.8) / toCase;
    double element = 0;
    double body = 0;
    int steps = 200_000;
    double dt = seconds / steps;
    for (int i = 0; i < steps; i++) {
      double halfElement = element + dt / 2 * (watts - (element - body) / toCase) / elementJoules;
      double halfBody = body + dt / 2 * ((element - body) / toCase - body / toAir) / bodyJoules;
      element += dt * (watts - (halfElement - halfBody) / toCase) / elementJoules;
      body += dt * ((halfElement - halfBody) / toCase - halfBody / toAir) / bodyJoules;
    }
    return element;
  }

  /** Longer, hotter mounts and smaller bodies bear less; the time falls as the watts rise. */
  @Test
  void bearing_isMonotone_andTimeAndWattsAreInverse() {
    Random random = new Random(SEED);
    for (int trial = 0; trial < 2000; trial++) {
      double rated = 5 * Math.pow(400, random.nextDouble());
      LoadResistor resistor = resistor(rated, anyMount(random));
      double seconds = 5 * Math.pow(2000, random.nextDouble());
      String told = "seed " + SEED + ", trial " + trial + ": " + resistor + " " + seconds;
      double bears = DERATING.mostWatts(resistor, new Hold(seconds));
      assertTrue(bears >= DERATING.mostWatts(resistor, new Hold(1.1 * seconds)), told);
      assertTrue(bears >= forEver(resistor), told);
      assertTrue(forEver(resistor) >= forEver(inAir(rated)) * (1 - 1e-9), told);
      assertTrue(forEver(resistor) <= rated * (1 + 1e-9), told);
      double back = DERATING.burstSeconds(bears * (1 + 1e-9), resistor);
      boolean known = bears < 5 * rated && bears > forEver(resistor) * (1 + 1e-6);
      assertTrue(!known || Math.abs(back / seconds - 1) < 0.01, told + " " + back);
    }
  }

  private static Mount anyMount(Random random) {
    Mount.Kind kind = Mount.Kind.values()[random.nextInt(Mount.Kind.values().length)];
    return kind == Mount.Kind.HEATSINK
        ? Mount.heatsink(0.01 * Math.pow(1000, random.nextDouble()))
        : Mount.of(kind);
  }

  /** From just above the continuous watts the time falls in small steps, from longer than hours. */
  @Test
  void time_hasNoCliff() {
    for (Mount.Kind kind : Mount.Kind.values()) {
      Mount mount = kind == Mount.Kind.HEATSINK ? Mount.heatsink(0.3) : Mount.of(kind);
      LoadResistor resistor = resistor(100, mount);
      double most = forEver(resistor);
      assertEquals(Double.POSITIVE_INFINITY, DERATING.burstSeconds(most * (1 - 1e-12), resistor));
      double before = DERATING.burstSeconds(most * 1.0005, resistor);
      assertTrue(before > 200, kind + " " + before);
      for (double watts = most * 1.0005; watts < 500; watts *= 1.0005) {
        double after = DERATING.burstSeconds(watts, resistor);
        assertTrue(after <= before && after > 0.85 * before, kind + " at " + watts + " W");
        before = after;
      }
    }
  }

  @Test
  void assumption_isTheOneOfTheTables() {
    assertEquals(
        "burst times are estimates from cold: the element bears 5 times its rating for 5 s, and"
            + " the body warms as it is mounted",
        DERATING.burstAssumption());
    String rows =
        "key,value,unit,source,how\n"
            + "resistor-burst-multiple,10,1,x,read\nresistor-burst-seconds,2.5,s,x,read";
    ResistorDerating own = new ResistorDerating(Tables.stock().with("limits.csv", rows));
    assertTrue(own.burstAssumption().contains("10 times its rating for 2.5 s"));
    assertEquals(2.5, own.burstSeconds(1000, resistor(100, COLD)), 1e-3);
  }

  @Test
  void absurdInput_getsASentence() {
    LoadResistor any = inAir(100);
    assertThrows(IllegalArgumentException.class, () -> DERATING.burstSeconds(-1, any));
    assertThrows(IllegalArgumentException.class, () -> DERATING.burstSeconds(Double.NaN, any));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Mount(Mount.Kind.HEATSINK, OptionalDouble.empty()));
    assertThrows(
        IllegalArgumentException.class, () -> new Mount(Mount.Kind.FAN, OptionalDouble.of(1)));
  }
}
