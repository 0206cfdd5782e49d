package loadwalk.report.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Amplifier;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.GivesFirst;
import loadwalk.forecast.Verdict;
import loadwalk.forecast.caution.Bears;
import loadwalk.forecast.caution.Stress;
import loadwalk.plan.BenchPlan;
import loadwalk.plan.PlanExample;
import loadwalk.plan.StepPlan;
import loadwalk.plan.wiring.WiringAnswer;
import loadwalk.quantity.Unit;
import loadwalk.report.Documents;
import loadwalk.report.page.MarkdownPage;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import org.junit.jupiter.api.Test;

/** Whole plans: one made by the planner for its wiring, one made by hand with every sentence. */
class PlanSnapshotTest {
  private static final StepPlan WIRED =
      PlanExample.plan(PlanExample.STEREO_4, PlanExample.AMPLIFIER, PlanExample.BENCH)
          .steps()
          .get(0);

  private static final GivesFirst FIRST =
      new GivesFirst(
          "fuse",
          "the bench fuse carries",
          ReadingId.SUPPLY_AMPS,
          24,
          30,
          List.of(
              new GivesFirst.Stop(ReadingId.SUPPLY_AMPS, 27),
              new GivesFirst.Stop(ReadingId.SINK_CELSIUS, 75)));

  private static BenchPlan plan() {
    List<StepPlan> steps =
        List.of(stereo(), open(), stereo(), wired("stereo-8"), wired("bare"), bridged());
    List<BenchPlan.Asked> asked =
        steps.stream()
            .map(s -> new BenchPlan.Asked(s.target().stepId(), "Do " + s.target().stepId() + "."))
            .toList();
    Evidence.Conditions conditions = new Evidence.Conditions(40, 0.25, 13.75);
    Evidence evidence =
        new Evidence(Amplifier.named("Tessaly", "T 2"), PlanExample.BENCH, conditions, List.of());
    return new BenchPlan(
        "by-hand", evidence, asked, steps, List.of("A fuse of 60 A.", "Four resistors of 8 Ω."));
  }

  private static StepPlan stereo() {
    return new StepPlan(
        Target.loaded("stereo-2", Mode.STEREO, 2),
        new Forecast(
            "stereo-2",
            0.95,
            Map.of(
                ReadingId.OUTPUT_VOLTS, new Band(14.1, 15.04, 16.06),
                ReadingId.SUPPLY_AMPS, new Band(21, 23.96, 27.04)),
            demand(Optional.of(new Band(100, 113.4, 128.6)), Optional.of(new Band(90, 101, 120.4))),
            List.of(
                new Caution("a", Verdict.HALT, "It is too much.", 2),
                new Caution("b", Verdict.HEED, "It is hot.", 1),
                new Caution("c", Verdict.CLEAR, "It is long.", 0)),
            Verdict.HALT,
            Optional.of(FIRST),
            "as told"),
        List.of(
            new StepPlan.SupplyShare(1, 50, 15.04, 27.04),
            new StepPlan.SupplyShare(2, 30, 8.96, 27)),
        List.of(
            new StepPlan.LeadLoss("plus", new Band(0, 0.051, 0.062), new Band(0, 1.22, 1.68)),
            new StepPlan.LeadLoss("minus", new Band(0, 0.052, 0.063), new Band(0, 1.23, 1.69))),
        Optional.of(new Band(13.35, 13.44, 13.55)),
        List.of(
            fuse("bench", FuseCurve.Span.BELOW_TABLE),
            fuse("amplifier", FuseCurve.Span.INSIDE_TABLE)),
        Optional.empty(),
        List.of(
            new Stress(
                "fuse",
                "bench fuse",
                "the bench fuse carries",
                new Band(20, 24, 27.04),
                Bears.always(30),
                Unit.AMPERE),
            new Stress(
                "load",
                "8 ohm-a",
                "the load resistors bear",
                new Band(20, 24, 27.04),
                Bears.always(100),
                Unit.WATT)));
  }

  private static StepPlan.FuseTime fuse(String label, FuseCurve.Span worst) {
    return new StepPlan.FuseTime(
        label,
        "blade",
        new FuseCurve.Opening(
            Double.POSITIVE_INFINITY, OptionalDouble.empty(), FuseCurve.Span.BELOW_TABLE),
        new FuseCurve.Opening(0.75, OptionalDouble.of(600), worst));
  }

  /** One supply, nothing known of amperes, watts and what gives first; no wiring to be had. */
  private static StepPlan open() {
    return new StepPlan(
        Target.loaded("open-load", Mode.STEREO, 4),
        new Forecast(
            "open-load",
            0.95,
            Map.of(
                ReadingId.OUTPUT_VOLTS, new Band(14.1, 15.04, 16.06),
                ReadingId.OPEN_VOLTS, new Band(15, 16, 17)),
            demand(Optional.empty(), Optional.empty()),
            List.of(),
            Verdict.CLEAR,
            "as told"),
        List.of(new StepPlan.SupplyShare(1, 50, 15.04, 27.04)),
        List.of(),
        Optional.empty(),
        List.of(),
        Optional.of(new WiringAnswer.None("Eight more of 4 Ω would do.", Optional.empty())),
        List.of());
  }

  /** A step that is clear, into the load that the planner wired; {@code bare} has no wiring. */
  private static StepPlan wired(String id) {
    return new StepPlan(
        Target.loaded(id, Mode.STEREO, 8),
        new Forecast(
            id,
            0.95,
            Map.of(),
            demand(Optional.of(new Band(1, 2, 3)), Optional.empty()),
            List.of(),
            Verdict.CLEAR,
            "as told"),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        id.equals("bare") ? Optional.empty() : WIRED.wiring(),
        List.of());
  }

  /** A step whose wiring may not be the one of the fewest resistors. */
  private static StepPlan bridged() {
    WiringAnswer.Found found = WIRED.wiring().flatMap(WiringAnswer::wired).orElseThrow();
    StepPlan clear = wired("bridged-4");
    return new StepPlan(
        Target.loaded("bridged-4", Mode.BRIDGED, 4),
        clear.forecast(),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        Optional.of(new WiringAnswer.Found(found.loads().subList(0, 1), found.request(), false)),
        List.of());
  }

  private static Forecast.Demand demand(Optional<Band> load, Optional<Band> heat) {
    return new Forecast.Demand(load, Optional.empty(), heat, Optional.empty());
  }

  @Test
  void planByHand_isAsKept() {
    Page page = PlanPage.of(plan(), PlanExample.TABLES);
    Documents.same("plan.txt", TextPage.lines(page, 100, false));
    Documents.same("plan.md", MarkdownPage.text(page));
  }
}
