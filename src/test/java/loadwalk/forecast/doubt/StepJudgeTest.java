package loadwalk.forecast.doubt;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_2;
import static loadwalk.forecast.model.Amplifiers.BRIDGED_4;
import static loadwalk.forecast.model.Amplifiers.IDLE;
import static loadwalk.forecast.model.Amplifiers.STEREO_2;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.Amplifiers;
import loadwalk.forecast.standard.StandardForecaster;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Test;

/** Entries that are judged alone or by another entry of their step, and what waits for what. */
class StepJudgeTest {
  private static final ReadingId VOLTS = ReadingId.OUTPUT_VOLTS;
  private static final ReadingId AMPS = ReadingId.SUPPLY_AMPS;

  private final StandardForecaster forecaster = Stock.forecaster();
  private final List<Observation> walk = new ArrayList<>(Amplifiers.before(STEREO_2));

  private List<Doubt> judge(Target target, Map<ReadingId, Double> entries) {
    return forecaster.judge(Amplifiers.evidence(Amplifiers.rated(50), walk), target, entries);
  }

  private void assertDoubt(Slip slip, Target target, ReadingId id, double value) {
    List<Doubt> doubts = judge(target, Map.of(id, value));
    assertEquals(1, doubts.size(), id + " " + value + ": " + doubts);
    assertEquals(id, doubts.get(0).reading());
    assertEquals(slip, doubts.get(0).slip(), doubts.toString());
  }

  private void assertHonest(Target target, ReadingId id, double value) {
    assertEquals(List.of(), judge(target, Map.of(id, value)));
  }

  @Test
  void idleAgain_isJudgedByTheIdleBefore() {
    assertHonest(IDLE, AMPS, 1.45);
    assertHonest(IDLE, AMPS, 1.75);
    assertDoubt(Slip.SUPPLY_AMPS_TEN_TIMES, IDLE, AMPS, 14);
    assertDoubt(Slip.SUPPLY_AMPS_TEN_TIMES, IDLE, AMPS, 0.14);
    assertDoubt(Slip.UNNAMED, IDLE, AMPS, 3.3);
    walk.clear();
    assertHonest(IDLE, AMPS, 0.6);
    assertHonest(IDLE, AMPS, 3);
  }

  @Test
  void supplyVolts_areJudgedByTheSag_whichMayBeDeep() {
    assertHonest(STEREO_2, ReadingId.SUPPLY_VOLTS, 13.6);
    assertHonest(STEREO_2, ReadingId.SUPPLY_VOLTS, 14.5);
    assertHonest(STEREO_2, ReadingId.SUPPLY_VOLTS, 13.1);
    assertHonest(STEREO_2, ReadingId.SUPPLY_VOLTS, 11.2);
    assertDoubt(Slip.UNNAMED, STEREO_2, ReadingId.SUPPLY_VOLTS, 8.4);
    assertDoubt(Slip.DECIMAL_POINT, STEREO_2, ReadingId.SUPPLY_VOLTS, 1.36);
    assertDoubt(Slip.DECIMAL_POINT, STEREO_2, ReadingId.SUPPLY_VOLTS, 136);
    assertDoubt(Slip.DIGITS_SWAPPED, STEREO_2, ReadingId.SUPPLY_VOLTS, 31.6);
    assertDoubt(Slip.UNNAMED, STEREO_2, ReadingId.SUPPLY_VOLTS, 20.4);
  }

  /** A supply asked for more than its rating may sag to where nothing else would explain it. */
  @Test
  void supplyVolts_ofASupplyThatMayGiveWay_areDoubtedLess() {
    assertTrue(doubtedVolts(20) < doubtedVolts(200));
    assertEquals(doubtedVolts(200), doubtedVolts(1000));
  }

  private int doubtedVolts(double supplyAmps) {
    Bench bench =
        new Bench(
            "b",
            List.of(new Supply(13.8, supplyAmps)),
            List.of(),
            OptionalDouble.empty(),
            List.of(),
            List.of(),
            0.9);
    Evidence evidence = new Evidence(Amplifiers.rated(50), bench, Amplifiers.CONDITIONS, walk);
    int doubted = 0;
    for (double volts = 7; volts < 12; volts += 0.05) {
      Map<ReadingId, Double> entry = Map.of(ReadingId.SUPPLY_VOLTS, Amplifiers.rounded(volts, 100));
      doubted += forecaster.judge(evidence, STEREO_2, entry).size();
    }
    return doubted;
  }

  /**
   * Volts that follow a supply that is low are honest where it was read, and not where it was not.
   */
  @Test
  void supplyVoltsEntered_bearOnTheOutput_unlessTheyAreDoubted() {
    walk.clear();
    walk.addAll(Amplifiers.before(BRIDGED_2));
    double volts = Amplifiers.readings(BRIDGED_2).get(VOLTS);
    Map<ReadingId, Double> low =
        Map.of(VOLTS, Amplifiers.rounded(0.88 * volts, 100), ReadingId.SUPPLY_VOLTS, 12.0);
    assertEquals(List.of(), judge(BRIDGED_2, low));
    Map<ReadingId, Double> unread = Map.of(VOLTS, Amplifiers.rounded(0.88 * volts, 100));
    assertEquals(List.of(VOLTS), readings(judge(BRIDGED_2, unread)));
    Map<ReadingId, Double> slipped = Map.of(VOLTS, volts, ReadingId.SUPPLY_VOLTS, 1.36);
    assertEquals(List.of(ReadingId.SUPPLY_VOLTS), readings(judge(BRIDGED_2, slipped)));
  }

  /** A decimal point lost in the supply volts neither accuses a right output nor clears a wrong. */
  @Test
  void supplyVoltsThatAreDoubted_areNotUsed() {
    walk.clear();
    walk.addAll(Amplifiers.before(BRIDGED_2));
    Map<ReadingId, Double> entries = new EnumMap<>(Amplifiers.readings(BRIDGED_2));
    entries.put(ReadingId.SUPPLY_VOLTS, 1.36);
    assertEquals(List.of(ReadingId.SUPPLY_VOLTS), readings(judge(BRIDGED_2, entries)));
    entries.remove(AMPS);
    entries.computeIfPresent(VOLTS, (id, volts) -> Amplifiers.rounded(volts / 10, 100));
    assertEquals(List.of(VOLTS, ReadingId.SUPPLY_VOLTS), readings(judge(BRIDGED_2, entries)));
  }

  @Test
  void ampsAlone_areJudgedByTheForecast_andBothByBoth() {
    double amps = Amplifiers.readings(STEREO_2).get(AMPS);
    List<Doubt> alone = judge(STEREO_2, Map.of(AMPS, 10 * amps));
    assertEquals(Slip.SUPPLY_AMPS_TEN_TIMES, alone.get(0).slip());
    double volts = Amplifiers.readings(STEREO_2).get(VOLTS);
    List<Doubt> both = judge(STEREO_2, Map.of(VOLTS, volts, AMPS, 10 * amps));
    assertTrue(both.get(0).text().contains("the forecast and the supply amps together"));
    List<Doubt> one = judge(STEREO_2, Map.of(VOLTS, Amplifiers.rounded(10 * volts, 10)));
    assertTrue(one.get(0).text().endsWith("Judged by the forecast."), one.get(0).text());
  }

  @Test
  void heatsink_andOpenVolts_areJudgedByWhatWasReadBefore() {
    walk.add(new Observation(STEREO_4, Map.of(ReadingId.SINK_CELSIUS, 48.0)));
    assertHonest(STEREO_2, ReadingId.SINK_CELSIUS, 50);
    assertDoubt(Slip.DECIMAL_POINT, STEREO_2, ReadingId.SINK_CELSIUS, 5);
    Target open = new Target("open-load", Target.Kind.OPEN_LOAD, Mode.STEREO, 4, 1);
    assertHonest(open, ReadingId.OPEN_VOLTS, 15.3);
    assertDoubt(Slip.DECIMAL_POINT, open, ReadingId.OPEN_VOLTS, 153);
  }

  @Test
  void frequency_isJudgedByTheToneAsked() {
    assertDoubt(Slip.LOAD_DOUBLE, STEREO_2, ReadingId.OTHER_LOAD_OHMS, 4.02);
    assertHonest(STEREO_2, ReadingId.OTHER_LOAD_OHMS, 2.02);
    assertHonest(STEREO_2, ReadingId.FREQUENCY_HERTZ, 40.2);
    assertDoubt(Slip.DECIMAL_POINT, STEREO_2, ReadingId.FREQUENCY_HERTZ, 4);
    assertDoubt(Slip.TONE_OFF, STEREO_2, ReadingId.FREQUENCY_HERTZ, 60);
    assertDoubt(Slip.TONE_OFF, STEREO_2, ReadingId.FREQUENCY_HERTZ, 1000);
    assertHonest(STEREO_2, ReadingId.FREQUENCY_HERTZ, 42);
    assertDoubt(Slip.TONE_OFF, STEREO_2, ReadingId.FREQUENCY_HERTZ, 42.1);
    Evidence silent =
        new Evidence(
            Amplifiers.rated(50), Bench.unknown(), new Evidence.Conditions(0, 1, 13.8), walk);
    assertEquals(
        List.of(), forecaster.judge(silent, STEREO_2, Map.of(ReadingId.FREQUENCY_HERTZ, 400.0)));
  }

  @Test
  void coldLoad_outsideItsTolerance_isDoubted() {
    assertHonest(STEREO_2, ReadingId.LOAD_OHMS, 2.1);
    assertDoubt(Slip.LOAD_DOUBLE, STEREO_2, ReadingId.LOAD_OHMS, 4);
    assertDoubt(Slip.LOAD_HALF, STEREO_2, ReadingId.LOAD_OHMS, 1);
    assertDoubt(Slip.DECIMAL_POINT, STEREO_2, ReadingId.LOAD_OHMS, 0.2);
    assertHonest(IDLE, ReadingId.LOAD_OHMS, 3);
  }

  @Test
  void otherChannel_isJudgedByThisOne_unlessThatIsDoubted() {
    double volts = Amplifiers.readings(STEREO_2).get(VOLTS);
    List<Doubt> off =
        judge(STEREO_2, Map.of(VOLTS, volts, ReadingId.OTHER_OUTPUT_VOLTS, volts / 10));
    assertEquals(List.of(ReadingId.OTHER_OUTPUT_VOLTS), readings(off));
    assertTrue(off.get(0).text().endsWith("Judged by the other entry of this step."));
    assertEquals(
        List.of(),
        judge(STEREO_2, Map.of(VOLTS, volts, ReadingId.OTHER_OUTPUT_VOLTS, 1.03 * volts)));
    List<Doubt> wrong =
        judge(STEREO_2, Map.of(VOLTS, volts * 10, ReadingId.OTHER_OUTPUT_VOLTS, volts));
    assertEquals(List.of(VOLTS), readings(wrong), "the other one agrees with the forecast");
  }

  /** P = V²/R: watts and volts typed for one output must agree. */
  @Test
  void wattsBesideVolts_areJudgedByThem() {
    double volts = Amplifiers.readings(STEREO_2).get(VOLTS);
    double watts = volts * volts / 2;
    assertEquals(List.of(), judge(STEREO_2, Map.of(VOLTS, volts, ReadingId.OUTPUT_WATTS, watts)));
    List<Doubt> both = judge(STEREO_2, Map.of(VOLTS, volts, ReadingId.OUTPUT_WATTS, 2 * watts));
    assertEquals(List.of(ReadingId.OUTPUT_WATTS), readings(both));
    assertEquals(Slip.BOTH_CHANNELS_FOR_ONE, both.get(0).slip());
    List<Doubt> alone = judge(STEREO_2, Map.of(ReadingId.OUTPUT_WATTS, 10 * watts));
    assertEquals(List.of(ReadingId.OUTPUT_WATTS), readings(alone));
  }

  /** Where amps are read in a walk, an output a little off waits for them; a gross one does not. */
  @Test
  void outputALittleOff_waitsForTheAmps() {
    double volts = Amplifiers.readings(STEREO_2).get(VOLTS);
    int waiting = 0;
    for (double factor = 1.04; factor < 1.3; factor += 0.02) {
      Map<ReadingId, Double> entry = Map.of(VOLTS, Amplifiers.rounded(factor * volts, 100));
      boolean now = !soFar(entry).isEmpty();
      boolean atEnd = !judge(STEREO_2, entry).isEmpty();
      assertTrue(atEnd || !now, "what is doubted so far is doubted at the end: " + factor);
      waiting += atEnd && !now ? 1 : 0;
    }
    assertTrue(waiting > 0);
    assertEquals(List.of(), soFar(Map.of(VOLTS, Amplifiers.rounded(1.16 * volts, 100))));
    assertEquals(1, soFar(Map.of(VOLTS, Amplifiers.rounded(1.2 * volts, 100))).size());
    assertEquals(1, soFar(Map.of(VOLTS, Amplifiers.rounded(10 * volts, 10))).size());
    walk.replaceAll(o -> new Observation(o.target(), withoutAmps(o)));
    for (double factor = 1.04; factor < 1.3; factor += 0.02) {
      Map<ReadingId, Double> entry = Map.of(VOLTS, Amplifiers.rounded(factor * volts, 100));
      assertEquals(judge(STEREO_2, entry), soFar(entry), "no amps will come: " + factor);
    }
  }

  private List<Doubt> soFar(Map<ReadingId, Double> entries) {
    return forecaster.judgeSoFar(
        Amplifiers.evidence(Amplifiers.rated(50), walk), STEREO_2, entries);
  }

  private static Map<ReadingId, Double> withoutAmps(Observation observation) {
    Map<ReadingId, Double> readings = new EnumMap<>(ReadingId.class);
    readings.putAll(observation.readings());
    readings.remove(AMPS);
    return readings;
  }

  @Test
  void whatIsNoNumber_isNotJudged() {
    for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertHonest(STEREO_2, VOLTS, value);
      assertHonest(STEREO_2, ReadingId.LOAD_OHMS, value);
    }
  }

  /** Both volts are of the pair of terminals a bridged load hangs on. */
  @Test
  void bridgedOutput_isJudgedAcrossTheWholeLoad() {
    walk.clear();
    walk.addAll(Amplifiers.before(BRIDGED_4));
    assertEquals(List.of(), judge(BRIDGED_4, Amplifiers.readings(BRIDGED_4)));
    double volts = Amplifiers.readings(BRIDGED_4).get(VOLTS);
    assertHonest(BRIDGED_4, ReadingId.OTHER_OUTPUT_VOLTS, volts);
    List<Doubt> half = judge(BRIDGED_4, Map.of(ReadingId.OTHER_OUTPUT_VOLTS, volts / 2));
    assertEquals(1, half.size());
  }

  private static List<ReadingId> readings(List<Doubt> doubts) {
    return doubts.stream().map(Doubt::reading).toList();
  }
}
