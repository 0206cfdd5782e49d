package loadwalk.plan;

import static loadwalk.plan.PlanExample.sequence;

import java.util.List;
import java.util.OptionalDouble;
import loadwalk.KeptText;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.plan.PlanExample.Told;
import loadwalk.sequence.Measure;
import org.junit.jupiter.api.Test;

/** The plan in JSON, whole: what other programs read. */
class PlanJsonSnapshotTest {
  /**
   * The example worked by hand in EVIDENCE.md, but with a run of 25 mm², whose 0.780 mΩ/m stand in
   * a table: 2 m · 0.780 mΩ/m · 284.5/254.5 = 1.7439 mΩ, at 40 A 69.8 mV and 2.79 W.
   */
  @Test
  void handWorkedExample_isTheKeptFile() {
    compare(
        "plan-hand-worked",
        PlanExample.plan(PlanExample.STEREO_4, PlanExample.AMPLIFIER, metric()));
  }

  /** A fuse beyond its table, a load for a burst, one that must be bought, one of nothing known. */
  @Test
  void lackingAndUnknown_areTheKeptFile() {
    Bench bench =
        PlanExample.bench(
            List.of(),
            List.of(),
            OptionalDouble.of(10),
            new LoadResistor("8 ohm", 8, 5, 25, 2, OptionalDouble.empty()));
    BenchPlan plan =
        PlanExample.plan(
            sequence(
                new Measure(Mode.BRIDGED, 4, false),
                new Measure(Mode.STEREO, 4, false),
                new Measure(Mode.STEREO, 0.5, false)),
            BareAmplifier.rated(),
            bench,
            target ->
                switch (target.stepId()) {
                  case "bridged-4" -> Told.amps(10, 11, 70).watts(100);
                  case "stereo-4" -> Told.amps(0.1, 0.2, 0.5).watts(100);
                  default -> Told.NOTHING;
                });
    compare("plan-lacking", plan);
  }

  private static Bench metric() {
    Bench bench = PlanExample.BENCH;
    return new Bench(
        bench.name(),
        bench.supplies(),
        List.of(new Lead("plus", new Lead.Mm2(25), 2, 1).insulatedFor(105)),
        bench.fuseAmps(),
        bench.loads(),
        bench.meters(),
        bench.usableFraction());
  }

  private static void compare(String name, BenchPlan plan) {
    KeptText.same(
        KeptText.place("snapshots", name + ".json"), PlanJson.text(plan, PlanExample.TABLES));
  }
}
