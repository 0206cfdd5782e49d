package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Slip;
import org.junit.jupiter.api.Test;

/** Holds the simulated populations to physics, and the slips to what they are said to be. */
class PopulationTest {
  private static final long SEED = 77;
  private static final int COUNT = 300;
  private static final List<Population> POPULATIONS =
      List.of(new CircuitPopulation(), new WaveformPopulation());

  @Test
  void sameSeedAndNumber_drawTheSame() {
    for (Population population : POPULATIONS) {
      assertEquals(population.specimen(SEED, 3), population.specimen(SEED, 3));
      assertNotEquals(population.specimen(SEED, 3), population.specimen(SEED, 4));
      assertNotEquals(population.specimen(SEED, 3), population.specimen(SEED + 1, 3));
    }
  }

  @Test
  void output_staysBelowInput_atEveryStep() {
    forEach(
        specimen -> {
          for (int step = 1; step < Ladder.STEPS.size(); step++) {
            Entries entries = new Entries(specimen, Arrangement.AMPS);
            Truth truth = entries.truth(step, Ladder.STEPS.get(step).ohms());
            String what = specimen.name() + " " + Ladder.STEPS.get(step).stepId() + " " + truth;
            if (!entries.canRun(step)) {
              continue;
            }
            assertTrue(truth.outputWatts() > 0, what);
            assertTrue(truth.outputWatts() < truth.supplyVolts() * truth.supplyAmps(), what);
            assertTrue(truth.supplyVolts() > 9.9 && truth.supplyVolts() < 14.2, what);
          }
        });
  }

  @Test
  void halvingTheLoad_neverRaisesVolts() {
    forEach(
        specimen -> {
          for (Mode mode : Mode.values()) {
            for (double ohms : new double[] {4, 2, 1}) {
              double whole = specimen.device().at(mode, ohms, 50).outputVolts();
              double half = specimen.device().at(mode, ohms / 2, 50).outputVolts();
              assertTrue(half <= whole * (1 + 1e-6), specimen.name() + " " + mode + " " + ohms);
            }
          }
        });
  }

  @Test
  void ratings_areOffByUpToThreeDecibels_eitherWay() {
    int under = 0;
    int over = 0;
    for (int number = 0; number < COUNT; number++) {
      Specimen specimen = new CircuitPopulation().specimen(SEED, number);
      Rating rating = specimen.amplifier().ratings().get(0);
      double volts = specimen.device().unlimited().at(Mode.STEREO, 4, 50).outputVolts();
      boolean regulated = specimen.amplifier().regulated().orElse(true);
      double there = regulated ? 1 : rating.supplyVolts().orElse(13.8) / 13.8;
      double decibels = 10 * Math.log10(rating.watts() / (volts * volts / 4 * there * there));
      double mostSupplyDecibels = 20 * Math.log10(13.8 / 12);
      assertTrue(
          Math.abs(decibels) < 3.2 + mostSupplyDecibels, specimen.name() + " " + decibels + " dB");
      under += decibels < -1.5 ? 1 : 0;
      over += decibels > 1.5 ? 1 : 0;
    }
    assertTrue(under > COUNT / 8, under + " underrated");
    assertTrue(over > COUNT / 8, over + " overrated");
  }

  @Test
  void scatterAndGain_areWhatTheMetersAreSaidToHave() {
    double squares = 0;
    int readings = 0;
    for (int number = 0; number < COUNT; number++) {
      Entries entries =
          new Entries(new CircuitPopulation().specimen(SEED, number), Arrangement.AMPS);
      for (int step = 1; step < Ladder.STEPS.size(); step++) {
        double ohms = Ladder.STEPS.get(step).ohms();
        double shown = entries.loaded(step, ohms, false).get(ReadingId.OUTPUT_VOLTS);
        double off = shown / entries.truth(step, ohms).outputVolts() - 1;
        squares += off * off;
        readings++;
      }
    }
    // 0.6 % scatter and 0.3 % gain together, and a little rounding.
    assertEquals(Math.hypot(0.006, 0.003), Math.sqrt(squares / readings), 0.0006, "seed " + SEED);
  }

  @Test
  void everySlip_isMadeSomewhere_andChangesAnEntry() {
    Set<Slip> made = new HashSet<>();
    forEach(
        specimen -> {
          Entries entries = new Entries(specimen, Arrangement.AMPS);
          for (Slip slip : Slip.values()) {
            for (int step : SlipMaker.stepsFor(slip, Arrangement.AMPS)) {
              if (!entries.canRun(step)) {
                continue;
              }
              Map<ReadingId, Double> before = entries.honest(step - 1);
              if (new SlipMaker(entries).make(slip, step, before)
                  instanceof SlipMaker.Made outcome) {
                made.add(slip);
                Target target = Ladder.STEPS.get(step);
                Map<ReadingId, Double> honest = entries.loaded(step, target.ohms(), false);
                assertNotEquals(honest, outcome.entries(), specimen.name() + " " + slip);
              }
            }
          }
        });
    for (Slip slip : Slip.values()) {
      assertEquals(SlipMaker.makes(slip), made.contains(slip), slip + " of " + made);
    }
  }

  @Test
  void wrongLoad_changesVoltsAndAmpsTogether() {
    Entries entries = new Entries(new CircuitPopulation().specimen(SEED, 1), Arrangement.AMPS);
    Map<ReadingId, Double> right = entries.loaded(1, 4, false);
    Map<ReadingId, Double> twice = entries.loaded(1, 8, false);
    assertTrue(twice.get(ReadingId.OUTPUT_VOLTS) >= right.get(ReadingId.OUTPUT_VOLTS));
    assertTrue(twice.get(ReadingId.SUPPLY_AMPS) < 0.8 * right.get(ReadingId.SUPPLY_AMPS));
  }

  private interface Check {
    void of(Specimen specimen);
  }

  private static void forEach(Check check) {
    for (Population population : POPULATIONS) {
      for (int number = 0; number < COUNT; number++) {
        check.of(population.specimen(SEED, number));
      }
    }
  }
}
