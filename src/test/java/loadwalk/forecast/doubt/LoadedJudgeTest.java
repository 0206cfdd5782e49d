package loadwalk.forecast.doubt;

import static loadwalk.forecast.model.Amplifiers.BRIDGED_1;
import static loadwalk.forecast.model.Amplifiers.BRIDGED_2;
import static loadwalk.forecast.model.Amplifiers.BRIDGED_4;
import static loadwalk.forecast.model.Amplifiers.STEREO_1;
import static loadwalk.forecast.model.Amplifiers.STEREO_2;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.Amplifiers;
import loadwalk.forecast.model.WalkModel;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Test;

/** Output and supply current judged together: densities that sum to one, and what they decide. */
class LoadedJudgeTest {
  private static final ReadingId VOLTS = ReadingId.OUTPUT_VOLTS;
  private static final ReadingId WATTS = ReadingId.OUTPUT_WATTS;
  private static final ReadingId AMPS = ReadingId.SUPPLY_AMPS;
  private static final double SUPPLY = 13.7;
  private static final double NOT_READ = Double.NaN;
  private static final double ALWAYS = -1e6;

  private static LoadedJudge judge(Target target, double supplyVolts) {
    WalkModel model =
        new WalkModel(Amplifiers.evidence(Amplifiers.rated(50), Amplifiers.before(target)));
    return new LoadedJudge(model, target, target.ohms(), supplyVolts);
  }

  private static double volts(Target target) {
    return Amplifiers.readings(target).get(VOLTS);
  }

  private static double amps(Target target) {
    return Amplifiers.readings(target).get(AMPS);
  }

  private static double sum(DoubleUnaryOperator logDensity, double from, double to) {
    double sum = 0;
    double step = 0.0005;
    for (double log = Math.log(from); log < Math.log(to); log += step) {
      sum += step * Math.exp(logDensity.applyAsDouble(Math.exp(log)));
    }
    return sum;
  }

  /**
   * A density of ln of an entry sums to one: of the volts, the amps, and the amps at given volts.
   */
  @Test
  void densities_sumToOne() {
    for (Target target : List.of(STEREO_2, BRIDGED_2)) {
      LoadedJudge judge = judge(target, SUPPLY);
      assertEquals(1, sum(v -> judge.honest(VOLTS, v, null), 1, 200), 1e-3);
      assertEquals(1, sum(a -> judge.honest(VOLTS, null, a), 1.45, 900), 2e-3);
      double v = volts(target);
      double alone = judge.honest(VOLTS, v, null);
      assertEquals(1, sum(a -> judge.honest(VOLTS, v, a) - alone, 1.45, 900), 2e-3);
    }
  }

  /** P = V²/R: watts say the same as the volts they come from. */
  @Test
  void watts_areJudgedAsTheirVolts() {
    LoadedJudge judge = judge(STEREO_2, SUPPLY);
    double v = volts(STEREO_2);
    assertEquals(judge.honest(VOLTS, v, 28.0), judge.honest(WATTS, v * v / 2, 28.0), 1e-9);
  }

  /** How far ln of the density lies below its height, found here by trying every entry. */
  @Test
  void surprise_isTheFallFromTheHeight() {
    for (Target target : List.of(STEREO_2, BRIDGED_2)) {
      LoadedJudge judge = judge(target, SUPPLY);
      double v = volts(target);
      double a = amps(target);
      double most = highest(x -> judge.honest(VOLTS, x, null), v);
      double mostAmps = highest(x -> judge.honest(VOLTS, null, x), a);
      double mostBoth = highest(x -> judge.honest(VOLTS, v, x), a) - judge.honest(VOLTS, v, null);
      for (double factor : new double[] {0.8, 1, 1.15}) {
        double alone = judge.surprise(VOLTS, factor * v, null);
        assertEquals(most - judge.honest(VOLTS, factor * v, null), alone, 0.1);
        double current = judge.surprise(VOLTS, null, factor * a);
        assertEquals(mostAmps - judge.honest(VOLTS, null, factor * a), current, 0.15);
        double both = judge.surprise(VOLTS, v, factor * a) - judge.surprise(VOLTS, v, null);
        double given = judge.honest(VOLTS, v, factor * a) - judge.honest(VOLTS, v, null);
        assertEquals(mostBoth - given, both, 0.15);
      }
      assertEquals(0, judge.surprise(VOLTS, null, null));
    }
  }

  private static double highest(DoubleUnaryOperator logDensity, double about) {
    double most = Double.NEGATIVE_INFINITY;
    for (double log = -1; log < 1; log += 0.001) {
      most = Math.max(most, logDensity.applyAsDouble(about * Math.exp(log)));
    }
    return most;
  }

  @Test
  void oneReadingOff_isFoundByTheOther() {
    double v = volts(BRIDGED_2);
    double a = amps(BRIDGED_2);
    assertFinding(Set.of(VOLTS), Slip.UNNAMED, BRIDGED_2, 1.13 * v, a);
    assertFinding(Set.of(AMPS), Slip.UNNAMED, BRIDGED_2, v, 0.57 * a);
    assertFinding(Set.of(AMPS), Slip.SUPPLY_AMPS_TEN_TIMES, BRIDGED_2, v, a / 10);
    assertFinding(Set.of(VOLTS), Slip.PEAK_FOR_RMS, BRIDGED_2, 1.414 * v, a);
  }

  @Test
  void bothOff_inWaysThatNoLoadExplains_areBothDoubted() {
    double output = 1.23 * volts(BRIDGED_2);
    assertFinding(
        Set.of(VOLTS, AMPS), Slip.OUTPUT_ABOVE_INPUT, BRIDGED_2, output, 0.37 * amps(BRIDGED_2));
  }

  /** Both readings of the step before, to the last digit, where others are expected. */
  @Test
  void bothCopied_areNamedSo() {
    double v = volts(STEREO_4);
    double a = amps(STEREO_4);
    Hypotheses.Finding copied =
        find(STEREO_2, v, a, new LoadedJudge.Before(v, a, false, 2, 1), ALWAYS);
    assertEquals(Slip.COPIED_FROM_BEFORE, copied.slip());
    assertEquals(Set.of(VOLTS, AMPS), copied.faulty());
    for (LoadedJudge.Before other :
        List.of(
            new LoadedJudge.Before(v, null, false, 2, 1),
            new LoadedJudge.Before(null, a, false, 2, 1),
            new LoadedJudge.Before(v + 0.1, a, false, 2, 1),
            new LoadedJudge.Before(v, a + 0.1, false, 2, 1))) {
      Hypotheses.Finding finding = find(STEREO_2, v, a, other, ALWAYS);
      boolean both = finding.faulty().size() == 2 && finding.slip() == Slip.COPIED_FROM_BEFORE;
      assertTrue(!both, other.toString());
      assertTrue(finding.logOdds() < copied.logOdds(), other.toString());
    }
  }

  /** The finer both are typed, the less chance gives them again: by 10 for each decimal. */
  @Test
  void bothCopied_isTheLikelier_theMoreDigitsComeAgain() {
    double v = volts(STEREO_4);
    double a = amps(STEREO_4);
    double coarse =
        find(STEREO_2, v, a, new LoadedJudge.Before(v, a, false, 2, 1), ALWAYS).logOdds();
    double fine = find(STEREO_2, v, a, new LoadedJudge.Before(v, a, false, 3, 2), ALWAYS).logOdds();
    assertEquals(2 * Math.log(10), fine - coarse, 0.05);
  }

  /** More out than in, by no known slip: named as that up to four times, beyond not. */
  @Test
  void outputAboveInput_isNamed_whereItMayBe() {
    LoadedJudge judge = judge(STEREO_2, SUPPLY);
    double v = volts(STEREO_2);
    double a = amps(STEREO_2);
    double ratio = judge.outputOverInput(Map.of(VOLTS, v, AMPS, a));
    assertEquals(2 * v * v / 2 / (SUPPLY * a), ratio, 1e-9);
    double above = Math.sqrt(1.7 / ratio);
    assertFinding(Set.of(VOLTS), Slip.OUTPUT_ABOVE_INPUT, STEREO_2, above * v, a);
    LoadedJudge.Before none = new LoadedJudge.Before(null, null, false, 2, 1);
    Slip below = find(STEREO_2, Math.sqrt(0.98 / ratio) * v, a, none, ALWAYS).slip();
    assertTrue(below != Slip.OUTPUT_ABOVE_INPUT, below.toString());
    double far = Math.sqrt(6.5 / ratio);
    assertEquals(Slip.UNNAMED, find(STEREO_2, far * v, a, none, ALWAYS).slip());
  }

  @Test
  void outputOverInput_isOfAllLoads_atTheSupplyEnteredOrExpected() {
    LoadedJudge bridged = judge(BRIDGED_2, SUPPLY);
    assertEquals(
        20.0 * 20 / 2 / (SUPPLY * 30), bridged.outputOverInput(Map.of(VOLTS, 20.0, AMPS, 30.0)));
    LoadedJudge expected = judge(BRIDGED_2, NOT_READ);
    double supply = 20.0 * 20 / 2 / 30 / expected.outputOverInput(Map.of(VOLTS, 20.0, AMPS, 30.0));
    assertTrue(supply > 13 && supply < 13.8, supply + " V");
    for (Map<ReadingId, Double> unknown :
        List.of(
            Map.of(VOLTS, 20.0),
            Map.of(AMPS, 30.0),
            Map.of(VOLTS, 0.0, AMPS, 30.0),
            Map.of(VOLTS, 20.0, AMPS, 0.0))) {
      assertTrue(Double.isNaN(bridged.outputOverInput(unknown)), unknown.toString());
    }
  }

  /** In a bridged step a reading of one channel, or one that is the stereo reading of the load. */
  @Test
  void stereoReadingOfTheSameLoad_isRecognisedInABridgedStep() {
    double stereo = volts(STEREO_4);
    assertFinding(
        Set.of(VOLTS), Slip.STEREO_READING_IN_BRIDGED, BRIDGED_4, stereo, amps(BRIDGED_4));
    assertFinding(
        Set.of(VOLTS),
        Slip.STEREO_READING_IN_BRIDGED,
        BRIDGED_4,
        volts(BRIDGED_4) / 2,
        amps(BRIDGED_4));
  }

  /**
   * Into a heavy load the stereo volts are more than half of the bridged: no factor, a forecast.
   */
  @Test
  void stereoReadingOfAHeavyLoad_isToldByItsForecast() {
    double stereo = volts(STEREO_1);
    assertTrue(2 * stereo > 1.08 * volts(BRIDGED_1), "twice the stereo volts would be too much");
    assertFinding(
        Set.of(VOLTS), Slip.STEREO_READING_IN_BRIDGED, BRIDGED_1, stereo, amps(BRIDGED_1));
  }

  private static void assertFinding(
      Set<ReadingId> faulty, Slip slip, Target target, double output, double amps) {
    Map<ReadingId, Double> entries =
        Map.of(
            VOLTS,
            Amplifiers.rounded(output, 100),
            ReadingId.SUPPLY_VOLTS,
            SUPPLY,
            AMPS,
            Amplifiers.rounded(amps, 10));
    Evidence evidence = Amplifiers.evidence(Amplifiers.rated(50), Amplifiers.before(target));
    List<Doubt> doubts = Stock.forecaster().judge(evidence, target, entries);
    assertEquals(
        faulty, doubts.stream().map(Doubt::reading).collect(Collectors.toSet()), doubts.toString());
    doubts.forEach(doubt -> assertEquals(slip, doubt.slip(), doubts.toString()));
  }

  private static Hypotheses.Finding find(
      Target target, double output, double amps, LoadedJudge.Before before, double needed) {
    double volts = Amplifiers.rounded(output, 100);
    double current = Amplifiers.rounded(amps, 10);
    return judge(target, SUPPLY).weigh(VOLTS, volts, current, before).find(needed);
  }
}
