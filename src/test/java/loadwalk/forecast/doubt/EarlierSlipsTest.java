package loadwalk.forecast.doubt;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_4;
import static loadwalk.forecast.model.Amplifiers.STEREO_1;
import static loadwalk.forecast.model.Amplifiers.STEREO_2;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.Amplifiers;
import loadwalk.forecast.model.WalkModel;
import loadwalk.forecast.standard.StandardForecaster;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Test;

/** Slips that raise no doubt where they are made and that a later, right reading shows. */
class EarlierSlipsTest {
  private final StandardForecaster forecaster = Stock.forecaster();

  @Test
  void peakAtTheFirstReading_passesThere_andIsNamedByThoseAfterIt() {
    double peak = Amplifiers.rounded(Math.sqrt(2) * volts(STEREO_4), 100);
    assertEquals(List.of(), judge(List.of(), STEREO_4, peak));
    List<Observation> known = List.of(read(STEREO_4, peak), read(STEREO_2, volts(STEREO_2)));
    List<Doubt> doubts = judge(known, STEREO_1, volts(STEREO_1));
    assertEquals(1, doubts.size(), doubts.toString());
    Doubt doubt = doubts.get(0);
    assertEquals(ReadingId.OUTPUT_VOLTS, doubt.reading());
    assertEquals(Slip.PEAK_FOR_RMS, doubt.slip());
    assertEquals(Optional.of("stereo-4"), doubt.earlierStep());
    assertEquals("peak volts instead of rms, in stereo-4", doubt.slipWords());
    assertTrue(doubt.text().contains("There, 14.9 V would fit."), doubt.text());
    assertEquals(
        "Measure stereo-4 again. Check that the meter or scope shows rms, not peak.",
        doubt.lookAt());
  }

  /** Supply volts with a lost decimal point do not hide the slip of the earlier step. */
  @Test
  void peakAtTheFirstReading_isNamed_thoughTheSupplyVoltsAreDoubted() {
    double peak = Amplifiers.rounded(Math.sqrt(2) * volts(STEREO_4), 100);
    List<Observation> known = List.of(read(STEREO_4, peak), read(STEREO_2, volts(STEREO_2)));
    Map<ReadingId, Double> entries =
        Map.of(ReadingId.OUTPUT_VOLTS, volts(STEREO_1), ReadingId.SUPPLY_VOLTS, 1.36);
    List<Doubt> doubts = forecaster.judge(evidence(known), STEREO_1, entries);
    assertEquals(2, doubts.size(), doubts.toString());
    assertEquals(Optional.of("stereo-4"), doubts.get(0).earlierStep());
    assertEquals(Slip.PEAK_FOR_RMS, doubts.get(0).slip());
    assertEquals(ReadingId.SUPPLY_VOLTS, doubts.get(1).reading());
  }

  @Test
  void loadOfTheStepBeforeLeftConnected_isFound() {
    List<Observation> known = new ArrayList<>(Amplifiers.before(STEREO_1));
    known.set(2, new Observation(STEREO_2, Amplifiers.readings(STEREO_2, 2)));
    EarlierSlips.Found found = search(known);
    assertEquals("stereo-2", found.target().stepId());
    assertEquals(Slip.LOAD_DOUBLE, found.slip());
    assertTrue(Double.isNaN(found.meant()));
  }

  /** Returns what honest entries at 1 Ω show of the steps before, however little it may be. */
  private static EarlierSlips.Found search(List<Observation> known) {
    Observation atHand = new Observation(STEREO_1, Amplifiers.readings(STEREO_1));
    WalkModel model = new WalkModel(evidence(known));
    return new EarlierSlips(model, atHand).likeliest(-10, 50).orElseThrow();
  }

  @Test
  void loadWiredHalf_inAnEarlierStep_isFound() {
    List<Observation> known = new ArrayList<>(Amplifiers.before(STEREO_1));
    known.set(2, new Observation(STEREO_2, Amplifiers.readings(STEREO_2, 0.5)));
    List<Doubt> doubts = forecaster.judge(evidence(known), STEREO_1, Amplifiers.readings(STEREO_1));
    assertEquals(Optional.of("stereo-2"), doubts.get(0).earlierStep(), doubts.toString());
    assertEquals(Slip.LOAD_HALF, doubts.get(0).slip());
  }

  @Test
  void ampsTenTimesOff_inAnEarlierStep_areFound() {
    List<Observation> known = new ArrayList<>(Amplifiers.before(STEREO_1));
    Map<ReadingId, Double> off = Amplifiers.readings(STEREO_2);
    off.put(ReadingId.SUPPLY_AMPS, off.get(ReadingId.SUPPLY_AMPS) / 10);
    known.set(2, new Observation(STEREO_2, off));
    EarlierSlips.Found found = search(known);
    assertEquals("stereo-2", found.target().stepId());
    assertEquals(ReadingId.SUPPLY_AMPS, found.reading());
    assertEquals(Slip.SUPPLY_AMPS_TEN_TIMES, found.slip());
    double meant = Amplifiers.readings(STEREO_2).get(ReadingId.SUPPLY_AMPS);
    assertEquals(meant, found.meant(), 1e-9 * meant);
  }

  /** With supply amps an earlier step is blamed where the entry at hand is doubted. */
  @Test
  void loadOfTheFirstStep_isNamedByEntriesWithAmps() {
    assertEquals(List.of(), afterFirst(1));
    List<Doubt> doubts = afterFirst(0.5);
    assertEquals(1, doubts.size(), doubts.toString());
    assertEquals(Optional.of("stereo-4"), doubts.get(0).earlierStep());
    assertEquals(Slip.LOAD_HALF, doubts.get(0).slip());
  }

  /** Judges honest entries at 2 Ω after a first step with its load off by a factor. */
  private List<Doubt> afterFirst(double factor) {
    List<Observation> known = new ArrayList<>(Amplifiers.before(STEREO_4));
    known.add(new Observation(STEREO_4, Amplifiers.readings(STEREO_4, factor)));
    Evidence evidence = Amplifiers.evidence(Amplifiers.rated(50), known);
    return forecaster.judge(evidence, STEREO_2, Amplifiers.readings(STEREO_2));
  }

  @Test
  void honestWalk_blamesNoEarlierStep() {
    List<Observation> known = new ArrayList<>();
    for (Target step : List.of(STEREO_4, STEREO_2, STEREO_1, BRIDGED_4)) {
      assertEquals(List.of(), judge(known, step, volts(step)), step.stepId());
      known.add(read(step, volts(step)));
    }
  }

  @Test
  void whatNoSlipExplains_doesNotBlameTheEntryAlone() {
    List<Observation> known = new ArrayList<>();
    for (Target step : List.of(STEREO_4, STEREO_2, STEREO_1)) {
      known.add(read(step, volts(step)));
    }
    List<Doubt> doubts = judge(known, BRIDGED_4, 33.3);
    assertEquals(Slip.UNNAMED, doubts.get(0).slip(), doubts.toString());
    assertEquals(Optional.empty(), doubts.get(0).earlierStep());
    assertTrue(doubts.get(0).text().contains("fits, here or earlier"), doubts.toString());
    assertTrue(doubts.get(0).lookAt().contains("measure the steps before"), doubts.toString());
  }

  private static double volts(Target target) {
    return Amplifiers.readings(target).get(ReadingId.OUTPUT_VOLTS);
  }

  private static Observation read(Target target, double volts) {
    return new Observation(target, Map.of(ReadingId.OUTPUT_VOLTS, volts));
  }

  private static Evidence evidence(List<Observation> known) {
    return Amplifiers.evidence(Amplifiers.rated(80), known);
  }

  private List<Doubt> judge(List<Observation> known, Target target, double volts) {
    return forecaster.judge(evidence(known), target, Map.of(ReadingId.OUTPUT_VOLTS, volts));
  }
}
