package loadwalk.forecast;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_2;
import static loadwalk.forecast.model.Amplifiers.BRIDGED_4;
import static loadwalk.forecast.model.Amplifiers.STEREO_1;
import static loadwalk.forecast.model.Amplifiers.STEREO_2;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.model.Amplifiers;
import loadwalk.forecast.standard.StandardForecaster;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Test;

/** One worked case for every slip that a doubt can name. */
class SlipCasesTest {
  private static final Set<ReadingId> VOLTS = EnumSet.of(ReadingId.OUTPUT_VOLTS);
  private static final Set<ReadingId> AMPS = EnumSet.of(ReadingId.SUPPLY_AMPS);

  private final StandardForecaster forecaster = Stock.forecaster();

  @Test
  void honestEntries_ofEveryStep_raiseNoDoubt() {
    for (Target target : List.of(STEREO_4, STEREO_2, STEREO_1, BRIDGED_4, BRIDGED_2)) {
      assertEquals(List.of(), judge(target, Amplifiers.readings(target)), target.stepId());
    }
  }

  @Test
  void decimalPoint() {
    expect(Slip.DECIMAL_POINT, VOLTS, judge(STEREO_2, times(STEREO_2, 0.1)));
    expect(Slip.DECIMAL_POINT, VOLTS, judge(STEREO_2, times(STEREO_2, 10)));
  }

  @Test
  void peakForRms() {
    expect(Slip.PEAK_FOR_RMS, VOLTS, judge(STEREO_2, times(STEREO_2, Math.sqrt(2))));
  }

  @Test
  void peakToPeakForRms() {
    expect(Slip.PEAK_TO_PEAK_FOR_RMS, VOLTS, judge(STEREO_4, times(STEREO_4, 2 * Math.sqrt(2))));
  }

  @Test
  void bothChannelsForOne() {
    expect(Slip.BOTH_CHANNELS_FOR_ONE, VOLTS, judge(STEREO_2, times(STEREO_2, 2)));
  }

  @Test
  void bothChannelsForOne_inWatts() {
    Map<ReadingId, Double> entries = inWatts(STEREO_2, 2);
    expect(
        Slip.BOTH_CHANNELS_FOR_ONE, EnumSet.of(ReadingId.OUTPUT_WATTS), judge(STEREO_2, entries));
  }

  @Test
  void otherChannelAlone_isJudgedByTheForecast() {
    double volts = Amplifiers.readings(STEREO_2).get(ReadingId.OUTPUT_VOLTS);
    Set<ReadingId> other = EnumSet.of(ReadingId.OTHER_OUTPUT_VOLTS);
    expect(Slip.DECIMAL_POINT, other, judge(STEREO_2, otherAlone(10 * volts)));
    expect(Slip.PEAK_TO_PEAK_FOR_RMS, other, judge(STEREO_2, otherAlone(2.83 * volts)));
    assertEquals(List.of(), judge(STEREO_2, otherAlone(1.01 * volts)));
  }

  @Test
  void oneChannelForBoth() {
    expect(Slip.ONE_CHANNEL_FOR_BOTH, VOLTS, judge(STEREO_2, times(STEREO_2, 0.5)));
  }

  /** The amplifier is still wired in stereo: volts and amperes are those of the stereo step. */
  @Test
  void stereoWiringInABridgedStep() {
    Set<ReadingId> both = EnumSet.of(ReadingId.OUTPUT_VOLTS, ReadingId.SUPPLY_AMPS);
    Map<ReadingId, Double> stereo = readAgain(Amplifiers.readings(STEREO_2));
    expect(Slip.STEREO_READING_IN_BRIDGED, both, judge(BRIDGED_2, stereo));
  }

  @Test
  void stereoReadingInABridgedStep() {
    expect(Slip.STEREO_READING_IN_BRIDGED, VOLTS, judge(BRIDGED_2, times(BRIDGED_2, 0.5)));
  }

  @Test
  void loadWiredDouble_isToldByTheAmps() {
    Set<ReadingId> both = EnumSet.of(ReadingId.OUTPUT_VOLTS, ReadingId.SUPPLY_AMPS);
    expect(Slip.LOAD_DOUBLE, both, judge(STEREO_2, readAgain(Amplifiers.readings(STEREO_2, 2))));
  }

  @Test
  void loadWiredHalf_isToldByTheAmps() {
    Set<ReadingId> both = EnumSet.of(ReadingId.OUTPUT_VOLTS, ReadingId.SUPPLY_AMPS);
    expect(Slip.LOAD_HALF, both, judge(BRIDGED_4, Amplifiers.readings(BRIDGED_4, 0.5)));
  }

  @Test
  void supplyAmpsTenTimes() {
    Map<ReadingId, Double> entries = new EnumMap<>(Amplifiers.readings(STEREO_2));
    entries.computeIfPresent(ReadingId.SUPPLY_AMPS, (id, amps) -> amps / 10);
    expect(Slip.SUPPLY_AMPS_TEN_TIMES, AMPS, judge(STEREO_2, entries));
  }

  @Test
  void digitsSwapped() {
    Map<ReadingId, Double> entries = new EnumMap<>(Amplifiers.readings(BRIDGED_2));
    assertEquals(27.82, entries.get(ReadingId.OUTPUT_VOLTS));
    entries.put(ReadingId.OUTPUT_VOLTS, 72.82);
    expect(Slip.DIGITS_SWAPPED, VOLTS, judge(BRIDGED_2, entries));
  }

  @Test
  void copiedFromTheStepBefore() {
    Map<ReadingId, Double> entries = new EnumMap<>(Amplifiers.readings(BRIDGED_4));
    entries.put(ReadingId.OUTPUT_VOLTS, Amplifiers.readings(STEREO_1).get(ReadingId.OUTPUT_VOLTS));
    expect(Slip.COPIED_FROM_BEFORE, VOLTS, judge(BRIDGED_4, entries));
  }

  @Test
  void outputAboveInput() {
    Map<ReadingId, Double> entries = new EnumMap<>(Amplifiers.readings(STEREO_2));
    entries.computeIfPresent(ReadingId.OUTPUT_VOLTS, (id, volts) -> 1.66 * volts);
    expect(Slip.OUTPUT_ABOVE_INPUT, VOLTS, judge(STEREO_2, entries));
  }

  /** More out than in is said from what meters cannot explain on, whatever slip is named. */
  @Test
  void outputAboveInput_isSaidFromAFewPercentOn() {
    assertFalse(atFirst(1.02).text().contains("More comes out than goes in"));
    assertTrue(atFirst(1.08).text().contains("More comes out than goes in"));
  }

  /** Returns the doubt of a first step whose output is a multiple of its input. */
  private Doubt atFirst(double outputOverInput) {
    double volts = 14.93;
    double amps = 2 * volts * volts / 4 / (outputOverInput * 13.7);
    Map<ReadingId, Double> entries =
        Map.of(
            ReadingId.OUTPUT_VOLTS,
            volts,
            ReadingId.SUPPLY_VOLTS,
            13.7,
            ReadingId.SUPPLY_AMPS,
            Amplifiers.rounded(amps, 100));
    return judge(STEREO_4, entries).get(0);
  }

  @Test
  void whatNoSlipExplains_isUnnamed_andSaysByHowMuch() {
    Map<ReadingId, Double> entries = new EnumMap<>(Amplifiers.readings(BRIDGED_4));
    entries.put(ReadingId.OUTPUT_VOLTS, 33.3);
    List<Doubt> doubts = judge(BRIDGED_4, entries);
    expect(Slip.UNNAMED, VOLTS, doubts);
    assertTrue(doubts.get(0).text().contains("14 % above"), doubts.get(0).text());
  }

  @Test
  void loadMeasuredDouble_whenCold_isDoubted() {
    List<Doubt> doubts = judge(STEREO_2, Map.of(ReadingId.LOAD_OHMS, 4.02));
    expect(Slip.LOAD_DOUBLE, EnumSet.of(ReadingId.LOAD_OHMS), doubts);
    assertEquals(List.of(), judge(STEREO_2, Map.of(ReadingId.LOAD_OHMS, 2.05)));
  }

  @Test
  void everyDoubt_saysWhatToLookAtInOneSentence() {
    for (double factor : new double[] {0.1, 0.5, 1.2, Math.sqrt(2), 2, 3.4, 10}) {
      for (Doubt doubt : judge(STEREO_2, times(STEREO_2, factor))) {
        assertTrue(doubt.lookAt().endsWith("."), doubt.lookAt());
        assertEquals(1, doubt.lookAt().chars().filter(c -> c == '.').count(), doubt.lookAt());
        assertFalse(doubt.text().contains("NaN"), doubt.text());
        assertTrue(doubt.text().contains("Judged by"), doubt.text());
      }
    }
  }

  private static void expect(Slip slip, Set<ReadingId> readings, List<Doubt> doubts) {
    Set<ReadingId> doubted = EnumSet.noneOf(ReadingId.class);
    doubts.forEach(doubt -> doubted.add(doubt.reading()));
    assertEquals(readings, doubted, doubts.toString());
    doubts.forEach(doubt -> assertEquals(slip, doubt.slip(), doubts.toString()));
  }

  private List<Doubt> judge(Target target, Map<ReadingId, Double> entries) {
    Evidence evidence = Amplifiers.evidence(Amplifiers.rated(50), Amplifiers.before(target));
    return forecaster.judge(evidence, target, entries);
  }

  private static Map<ReadingId, Double> times(Target target, double factor) {
    Map<ReadingId, Double> entries = new EnumMap<>(Amplifiers.readings(target));
    entries.computeIfPresent(
        ReadingId.OUTPUT_VOLTS, (id, volts) -> Amplifiers.rounded(factor * volts, 100));
    return entries;
  }

  private static Map<ReadingId, Double> otherAlone(double volts) {
    return Map.of(ReadingId.OTHER_OUTPUT_VOLTS, Amplifiers.rounded(volts, 100));
  }

  /** Returns the readings with other last digits, as another look at the meters gives. */
  private static Map<ReadingId, Double> readAgain(Map<ReadingId, Double> readings) {
    Map<ReadingId, Double> entries = new EnumMap<>(readings);
    entries.computeIfPresent(ReadingId.OUTPUT_VOLTS, (id, volts) -> volts + 0.07);
    entries.computeIfPresent(ReadingId.SUPPLY_AMPS, (id, amps) -> amps - 0.2);
    return entries;
  }

  private static Map<ReadingId, Double> inWatts(Target target, double factor) {
    Map<ReadingId, Double> entries = new EnumMap<>(Amplifiers.readings(target));
    double volts = entries.remove(ReadingId.OUTPUT_VOLTS);
    entries.put(
        ReadingId.OUTPUT_WATTS, Amplifiers.rounded(factor * volts * volts / target.ohms(), 10));
    return entries;
  }
}
