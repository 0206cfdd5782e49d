package loadwalk.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.BiConsumer;
import loadwalk.bench.Mode;
import org.junit.jupiter.api.Test;

/** What holds for every practice amplifier, whatever limits it. */
class CircuitPropertyTest {
  private static final int SEEDS = 40;
  private static final double[] LOADS = {16, 8, 4, 2, 1, 0.5, 0.25};
  private static final double[] FRACTIONS = {0, 0.1, 0.5, 1};

  @Test
  void energy_isConserved_andEveryHeatIsPositive() {
    forEachPoint(
        (p, what) -> {
          double out = p.outputWatts() + p.heatWatts();
          assertEquals(inputWatts(p), out, 1e-9 * (1 + inputWatts(p)), what);
          assertTrue(p.stageHeatWatts() >= -1e-9, what);
          assertTrue(p.converterHeatWatts() >= -1e-9, what);
          assertTrue(p.outputWatts() <= inputWatts(p), what);
        });
  }

  @Test
  void supply_neverGivesMoreThanItsLimit_norVoltsAboveItsLine() {
    SourceLine source = PracticeBench.ofSeed(1).source();
    forEachPoint(
        (p, what) -> {
          assertTrue(p.supplyAmps() <= source.amps() * (1 + 1e-9), what);
          double line = source.volts() - source.ohms() * p.supplyAmps();
          assertTrue(p.supplyVolts() <= line + 1e-6, what);
          if (p.limitedBy() != OperatingPoint.Limit.SUPPLY) {
            assertEquals(line, p.supplyVolts(), 1e-6, what);
          }
        });
  }

  @Test
  void pushPull_neverBeatsClassB_ofWhatTheRailsDeliver() {
    // A hard-clipped sine at 1 % THD has rms 0.7237 and fundamental 1.0234 of the clip level
    // (thd-clipped-sine table), so the bound of pi/4 for a pure sine holds within its harmonics.
    for (long seed = 1; seed <= SEEDS; seed++) {
      PracticeRig rig = PracticeRig.ofSeed(seed);
      if (!rig.amplifier().stage().outputClass().pushPull()) {
        continue;
      }
      for (double ohms : LOADS) {
        for (double fraction : FRACTIONS) {
          OperatingPoint p = rig.point(Mode.STEREO, ohms, fraction);
          double rails = p.outputWatts() + p.stageHeatWatts();
          double bound = fraction < 1 ? Math.PI / 4 : 1.03 * Math.PI / 4;
          assertTrue(p.outputWatts() <= bound * rails + 1e-9, "seed " + seed + ", " + ohms);
        }
      }
    }
  }

  @Test
  void halvingTheLoad_neverRaisesVolts_andAtMostDoublesWatts() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      PracticeRig rig = PracticeRig.ofSeed(seed);
      for (Mode mode : Mode.values()) {
        for (double ohms : LOADS) {
          OperatingPoint whole = ideal(rig, mode, ohms);
          OperatingPoint half = ideal(rig, mode, ohms / 2);
          String what = "seed " + seed + ", " + mode.word() + " " + ohms;
          assertTrue(half.outputVolts() <= whole.outputVolts() * (1 + 1e-9), what);
          assertTrue(half.outputWatts() <= 2 * whole.outputWatts() * (1 + 1e-9), what);
        }
      }
    }
  }

  @Test
  void bridged_isTwiceStereoAtHalfTheLoad_forEqualChannels() {
    // V_bridged(R) = 2 V_stereo(R/2); P_bridged(R) = 2 P_stereo per channel(R/2): class-b,
    // bridging.
    for (long seed = 1; seed <= SEEDS; seed++) {
      PracticeRig rig = withEqualChannels(PracticeRig.ofSeed(seed));
      for (double ohms : LOADS) {
        OperatingPoint bridged = ideal(rig, Mode.BRIDGED, ohms);
        OperatingPoint stereo = ideal(rig, Mode.STEREO, ohms / 2);
        String what = "seed " + seed + ", bridged " + ohms;
        assertEquals(2 * stereo.outputVolts(), bridged.outputVolts(), 1e-9, what);
        assertEquals(stereo.outputWatts(), bridged.outputWatts(), 1e-6, what);
        assertEquals(stereo.supplyAmps(), bridged.supplyAmps(), 1e-6, what);
      }
    }
  }

  private static OperatingPoint ideal(PracticeRig rig, Mode mode, double ohms) {
    Circuit circuit =
        new Circuit(rig.amplifier(), rig.bench().source(), mode, ohms, rig.sinkCelsius());
    return circuit.at(rig.amplifier().stage().clipper().atThd(1));
  }

  private static PracticeRig withEqualChannels(PracticeRig rig) {
    PracticeAmplifier.Stage s = rig.amplifier().stage();
    PracticeAmplifier.Stage equal =
        new PracticeAmplifier.Stage(
            s.outputClass(),
            s.saturationVolts(),
            s.ohms(),
            s.ohmsPerKelvin(),
            s.peakAmps(),
            s.efficiency(),
            1,
            s.clipper());
    PracticeAmplifier a = rig.amplifier();
    return PracticeRig.cold(
        new PracticeAmplifier(a.printed(), a.rails(), equal, a.sink()), rig.bench());
  }

  private static void forEachPoint(BiConsumer<OperatingPoint, String> check) {
    for (long seed = 1; seed <= SEEDS; seed++) {
      PracticeRig rig = PracticeRig.ofSeed(seed);
      for (Mode mode : Mode.values()) {
        for (double ohms : LOADS) {
          for (double fraction : FRACTIONS) {
            String what = "seed " + seed + ", " + mode.word() + " " + ohms + ", part " + fraction;
            check.accept(rig.point(mode, ohms, fraction), what);
          }
        }
      }
    }
  }

  /** Returns the power drawn at the terminals, watts. */
  private static double inputWatts(OperatingPoint point) {
    return point.supplyVolts() * point.supplyAmps();
  }
}
