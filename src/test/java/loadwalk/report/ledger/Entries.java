package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import loadwalk.bench.Mode;
import loadwalk.journal.Soundness;
import loadwalk.report.page.Walks;
import loadwalk.result.RatingComparison;

/** Makes ledger entries for tests. */
final class Entries {
  static final LedgerEntry.Done FULL =
      new LedgerEntry.Done("full-walk", "ab".repeat(32), 40, 1, 13.8);
  static final LedgerEntry.Done RATED =
      new LedgerEntry.Done("rated-conditions", "cd".repeat(32), 1000, 1, 14.4);

  static final BenchRepeats REPEATS = new BenchRepeats("North bench", List.of());

  private static final String[] MAKERS = {"Brightmoor", "Tessaly", "Oakline Audio", "Verrin"};

  private Entries() {}

  static LedgerEntry entry(String walk, String amplifier, LedgerEntry.Done done, double... watts) {
    List<LedgerEntry.Load> loads = new ArrayList<>();
    double ohms = 4;
    for (double w : watts) {
      loads.add(load(done, Mode.STEREO, ohms, w));
      ohms /= 2;
    }
    return entry(walk, amplifier, done, loads);
  }

  static LedgerEntry entry(
      String walk, String amplifier, LedgerEntry.Done done, List<LedgerEntry.Load> loads) {
    return new LedgerEntry(
        walk,
        amplifier,
        false,
        true,
        0,
        Walks.START,
        done,
        OptionalDouble.of(60),
        Optional.of(false),
        loads,
        REPEATS,
        Soundness.WHOLE);
  }

  /** A result read as the sequence of its walk asks. */
  static LedgerEntry.Load load(LedgerEntry.Done done, Mode mode, double ohms, double watts) {
    return LoadMaker.load(mode, ohms, watts)
        .asked(done.toneHertz())
        .tone(done.toneHertz())
        .limit(done.limitThdPercent())
        .supply(done.supplyVolts() - 0.3)
        .rated(watts / 50, RatingComparison.Verdict.MEETS)
        .efficiency(0.6)
        .made();
  }

  /** As many invented walks as asked for, of seven loads each, the same for the same seed. */
  static List<LedgerEntry> many(int count, long seed) {
    Random random = new Random(seed);
    List<LedgerEntry> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<LedgerEntry.Load> loads = new ArrayList<>();
      LedgerEntry.Done done = random.nextInt(10) == 0 ? RATED : FULL;
      double volts = 10 + 20 * random.nextDouble();
      for (double ohms = 4; ohms >= 1; ohms /= 2) {
        loads.add(load(done, Mode.STEREO, ohms, volts * volts / (ohms + random.nextDouble())));
      }
      for (double ohms = 4; ohms >= 0.5; ohms /= 2) {
        loads.add(load(done, Mode.BRIDGED, ohms, 4 * volts * volts / (ohms + 2)));
      }
      String name = MAKERS[random.nextInt(MAKERS.length)] + " T-" + (100 + random.nextInt(900));
      all.add(
          new LedgerEntry(
              "2026-03-14-walk-" + i,
              name,
              false,
              true,
              0,
              Walks.START + i * 60_000L,
              done,
              OptionalDouble.of(20 + 10 * random.nextInt(10)),
              Optional.empty(),
              loads,
              REPEATS,
              Soundness.WHOLE));
    }
    return all;
  }
}
