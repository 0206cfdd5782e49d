package loadwalk.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import org.junit.jupiter.api.Test;

class PracticeRigTest {
  @Test
  void sameSeedAndMoment_readTheSame_anotherMomentDoesNot() {
    for (long seed = 1; seed <= 20; seed++) {
      PracticeRig one = PracticeRig.ofSeed(seed).warm(900, 0.5);
      PracticeRig two = PracticeRig.ofSeed(seed).warm(900, 0.5);
      assertEquals(
          one.read(Mode.STEREO, 4, Target.Kind.LOADED),
          two.read(Mode.STEREO, 4, Target.Kind.LOADED),
          "" + seed);
      PracticeRig later = one.warm(60, 0);
      assertNotEquals(
          one.read(Mode.STEREO, 4, Target.Kind.LOADED),
          later.read(Mode.STEREO, 4, Target.Kind.LOADED));
    }
  }

  @Test
  void eachKind_readsWhatItsStepAsksFor() {
    PracticeRig rig = PracticeRig.ofSeed(1);
    assertEquals(
        EnumSet.of(ReadingId.SINK_CELSIUS), rig.read(Mode.STEREO, 4, Target.Kind.WARM_UP).keySet());
    assertEquals(
        EnumSet.of(
            ReadingId.SUPPLY_AMPS,
            ReadingId.SUPPLY_VOLTS,
            ReadingId.SINK_CELSIUS,
            ReadingId.AMBIENT_CELSIUS),
        rig.read(Mode.STEREO, 4, Target.Kind.IDLE).keySet());
    Set<ReadingId> loaded = rig.read(Mode.STEREO, 4, Target.Kind.LOADED).keySet();
    assertTrue(loaded.contains(ReadingId.OTHER_OUTPUT_VOLTS));
    assertTrue(loaded.contains(ReadingId.LOAD_OHMS));
    assertTrue(loaded.contains(ReadingId.OTHER_LOAD_OHMS));
    assertFalse(
        rig.read(Mode.BRIDGED, 4, Target.Kind.LOADED).containsKey(ReadingId.OTHER_LOAD_OHMS));
    assertEquals(
        EnumSet.of(ReadingId.OUTPUT_VOLTS, ReadingId.OPEN_VOLTS),
        rig.read(Mode.BRIDGED, 4, Target.Kind.OPEN_LOAD).keySet());
  }

  @Test
  void meters_scatterAboutTheTruth_asTheirBenchSays() {
    PracticeRig rig = PracticeRig.ofSeed(1);
    double truth = rig.point(Mode.STEREO, 4, 1).outputVolts();
    int draws = 4000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < draws; i++) {
      PracticeRig moment = rig.at(rig.sinkCelsius(), 10 * i);
      double off =
          moment.read(Mode.STEREO, 4, Target.Kind.LOADED).get(ReadingId.OUTPUT_VOLTS) / truth - 1;
      sum += off;
      squares += off * off;
    }
    double mean = sum / draws;
    double deviation = Math.sqrt(squares / draws - mean * mean);
    assertEquals(0.002, deviation, 0.0002, "scatter, seed 1");
    assertTrue(Math.abs(mean) < 0.0025 + 4 * 0.002 / Math.sqrt(draws), "gain error " + mean);
  }

  @Test
  void sink_rises63PercentInOneTimeConstant() {
    PracticeRig cold = PracticeRig.ofSeed(1);
    PracticeAmplifier.Sink sink = cold.amplifier().sink();
    double heat = cold.point(Mode.STEREO, 4, 0.5).heatWatts();
    PracticeRig warm = cold.warm(sink.timeConstantSeconds(), 0.5);
    double rise = (warm.sinkCelsius() - cold.sinkCelsius()) / (sink.kelvinPerWatt() * heat);
    assertEquals(1 - Math.exp(-1), rise, 1e-9);
    assertEquals(sink.timeConstantSeconds(), warm.elapsedSeconds());
  }

  @Test
  void warmUp_inStepsOfASecond_isCloseToOneStep() {
    PracticeRig once = PracticeRig.ofSeed(1).warm(300, 0.5);
    PracticeRig steps = PracticeRig.ofSeed(1);
    for (int i = 0; i < 300; i++) {
      steps = steps.warm(1, 0.5);
    }
    assertEquals(once.sinkCelsius(), steps.sinkCelsius(), 1);
  }

  @Test
  void friendlyAmplifier_isAboutTwiceSixtyWatts_andStaysWithinItsBench() {
    PracticeRig rig = PracticeRig.ofSeed(1).warm(900, 0.5);
    assertEquals(120, rig.point(Mode.STEREO, 4, 1).outputWatts(), 12);
    OperatingPoint heaviest = rig.point(Mode.BRIDGED, 0.5, 1);
    Bench bench = rig.bench().described();
    assertTrue(heaviest.supplyAmps() < 0.8 * bench.usableAmps().orElseThrow());
    assertTrue(heaviest.supplyAmps() < 0.75 * bench.fuseAmps().orElseThrow());
    assertTrue(heaviest.supplyAmps() < rig.amplifier().printed().fuseAmps().orElseThrow());
    assertEquals(OperatingPoint.Limit.RAILS, heaviest.limitedBy());
  }

  @Test
  void collapsingAmplifier_losesPowerBelowTwoOhms() {
    PracticeRig rig = PracticeRig.ofSeed(2).warm(900, 0.5);
    OperatingPoint twoOhms = rig.point(Mode.STEREO, 2, 1);
    OperatingPoint oneOhm = rig.point(Mode.STEREO, 1, 1);
    assertEquals(OperatingPoint.Limit.CONVERTER, oneOhm.limitedBy());
    assertTrue(oneOhm.outputWatts() < twoOhms.outputWatts());
  }

  @Test
  void currentLimitedAmplifier_holdsItsAmpsIntoTheLowestLoads() {
    PracticeRig rig = PracticeRig.ofSeed(3).warm(900, 0.5);
    double one = rig.point(Mode.BRIDGED, 1, 1).outputVolts();
    double half = rig.point(Mode.BRIDGED, 0.5, 1).outputVolts();
    assertEquals(2, one / half, 0.05);
  }
}
