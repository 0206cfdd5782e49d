package loadwalk.plan;

import static loadwalk.plan.PlanExample.bench;
import static loadwalk.plan.PlanExample.sequence;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Amplifier;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.forecast.Band;
import loadwalk.plan.PlanExample.Told;
import loadwalk.plan.wiring.WiringAnswer;
import loadwalk.sequence.Idle;
import loadwalk.sequence.Measure;
import loadwalk.sequence.OpenLoad;
import loadwalk.sequence.Step;
import loadwalk.sequence.WarmUp;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one step asks of supplies, leads, fuses and loads, by hand. */
class StepPlanTest {
  private static final OptionalDouble NO_FUSE = OptionalDouble.empty();
  private static final Measure STEREO_4 = new Measure(Mode.STEREO, 4, false);
  private static final List<Lead> TEN_MILLIOHMS =
      List.of(new Lead("plus", new Lead.Awg(10), 2.729758, 1).insulatedFor(105));

  private static LoadResistor eight(double watts, int count) {
    return new LoadResistor("8 ohm", 8, 5, watts, count, OptionalDouble.empty());
  }

  private static StepPlan plan(Step step, Amplifier amplifier, Bench bench, Told told) {
    return PlanExample.plan(sequence(step), amplifier, bench, any -> told).steps().get(0);
  }

  private static StepPlan plan(Bench bench, Told told) {
    return plan(STEREO_4, BareAmplifier.rated(), bench, told);
  }

  /** The share is in proportion to the rating; at worst one supply gives all it can, alone. */
  @ParameterizedTest
  @CsvSource({"40, 81, 50, 50, 30", "8, 20, 50, 20, 20", "16, 40, 50, 40, 30"})
  void supplies_shareTheCurrent(
      double middle, double high, double rated, double firstAtWorst, double secondAtWorst) {
    Bench bench = bench(List.of(new Supply(13.8, rated), new Supply(13.8, 30)), List.of(), NO_FUSE);
    List<StepPlan.SupplyShare> shares = plan(bench, Told.amps(0, middle, high)).shares();
    assertEquals(
        List.of(
            new StepPlan.SupplyShare(1, 50, middle * 50 / 80, firstAtWorst),
            new StepPlan.SupplyShare(2, 30, middle * 30 / 80, secondAtWorst)),
        shares);
  }

  /** 10 mΩ at 30, 40 and 81 A: 0.3, 0.4, 0.81 V and 9, 16, 65.61 W; the best set supply counts. */
  @Test
  void leadsTakeVoltsAndWatts_andTheTerminalsKeepTheRest() {
    List<Supply> supplies = List.of(new Supply(13, 50), new Supply(14, 50));
    StepPlan step = plan(bench(supplies, TEN_MILLIOHMS, NO_FUSE), Told.amps(30, 40, 81));
    StepPlan.LeadLoss lead = step.leads().get(0);
    assertEquals("plus", lead.label());
    assertBand(0.3, 0.4, 0.81, lead.volts());
    assertBand(9, 16, 65.61, lead.watts());
    assertBand(13.19, 13.6, 13.7, step.terminalVolts().orElseThrow());
  }

  @Test
  void withoutLeads_theTerminalsGetWhatTheSupplyIsSetTo() {
    StepPlan bare =
        plan(bench(List.of(new Supply(13.8, 50)), List.of(), NO_FUSE), Told.worstAmps(40));
    assertBand(13.8, 13.8, 13.8, bare.terminalVolts().orElseThrow());
    assertEquals(List.of(), bare.leads());
    StepPlan none = plan(bench(List.of(), TEN_MILLIOHMS, NO_FUSE), Told.worstAmps(40));
    assertEquals(Optional.empty(), none.terminalVolts());
    assertEquals(List.of(), none.shares());
    assertEquals(1, none.leads().size());
  }

  /**
   * The amplifier's two fuses of 30 A carry 60 A together and are blades of 19 mm: at 81 A, 135 %.
   * The bench's of 150 A is a bolt-in fuse: at 202.5 A, 135 %.
   */
  @Test
  void fuses_openByTheirOwnKindAndCurrent() {
    Amplifier amplifier = BareAmplifier.limited(NO_FUSE, NO_FUSE, List.of(30.0, 30.0));
    List<Supply> supplies = List.of(new Supply(13.8, 500));
    StepPlan own =
        plan(STEREO_4, amplifier, bench(supplies, List.of(), NO_FUSE), Told.amps(0, 60, 81));
    assertEquals(
        List.of("amplifier, blade, 19 mm (ISO 8820-3 type C): may never open; 0.75 s to 10 min"),
        fuses(own));
    Bench fused = bench(supplies, List.of(), OptionalDouble.of(150));
    assertEquals(
        List.of("bench, bolt-in, 30 mm (ISO 8820-5 SF30): 2 min to 30 min; 1 s to 15 s"),
        fuses(plan(fused, Told.amps(0, 202.5, 300))));
    assertEquals(
        List.of("bench, bolt-in, 30 mm (ISO 8820-5 SF30): may never open; may never open"),
        fuses(plan(fused, Told.amps(-2, -1, -0.5))),
        "a band that lies below nothing asks nothing of a fuse");
    assertEquals(List.of(), fuses(plan(fused, Told.NOTHING)));
  }

  private static List<String> fuses(StepPlan step) {
    return step.fuses().stream()
        .map(
            fuse ->
                "%s, %s: %s; %s"
                    .formatted(
                        fuse.label(), fuse.type(), fuse.expected().text(), fuse.worst().text()))
        .toList();
  }

  /** Only a step with a load connected wires one, and for the watts at worst. */
  @Test
  void load_isWiredForTheWorstWatts_whereOneIsConnected() {
    Bench bench = bench(List.of(), List.of(), NO_FUSE, eight(100, 8));
    Told told = Told.worstAmps(40).watts(144);
    BenchPlan plan =
        PlanExample.plan(
            sequence(new WarmUp(15, 0.5, 0.5), new Idle(), STEREO_4, new OpenLoad()),
            BareAmplifier.rated(),
            bench,
            any -> told);
    assertEquals(
        List.of("warm-up wired", "idle bare", "stereo-4 wired", "open-load wired"),
        plan.steps().stream()
            .map(s -> s.target().stepId() + (s.wiring().isPresent() ? " wired" : " bare"))
            .toList());
    StepPlan measured = plan.steps().get(2);
    WiringAnswer.Found found = measured.wiring().orElseThrow().wired().orElseThrow();
    assertEquals(2, found.loads().get(0).parts().size());
    assertEquals(144, measured.wired(PlanExample.TABLES).orElseThrow().watts(), 1e-9);
    assertEquals(Optional.empty(), measured.unwired());
  }

  /** Two of 100 W in free air bear 196 W for a reading: 200 W at worst ask for more. */
  @ParameterizedTest
  @CsvSource({"190, 2", "199, 3"})
  void load_growsWhenTwoResistorsAreTooFew(double worst, int resistors) {
    List<LoadResistor> stock =
        List.of(eight(100, 2), new LoadResistor("12 ohm", 12, 5, 100, 3, OptionalDouble.empty()));
    Bench bench = bench(List.of(), List.of(), NO_FUSE, stock.toArray(LoadResistor[]::new));
    StepPlan step =
        plan(
            new Measure(Mode.BRIDGED, 4, false),
            BareAmplifier.rated(),
            bench,
            Told.worstAmps(40).watts(worst));
    WiringAnswer.Found found = step.wiring().orElseThrow().wired().orElseThrow();
    assertEquals(resistors, found.loads().get(0).parts().size());
  }

  @Test
  void loadOfUnknownWatts_isWiredForItsOhms() {
    Bench bench = bench(List.of(), List.of(), NO_FUSE, eight(100, 8));
    StepPlan step = plan(bench, Told.worstAmps(40));
    assertEquals(0, step.wired(PlanExample.TABLES).orElseThrow().watts());
    assertEquals(
        Optional.empty(),
        plan(
                STEREO_4,
                BareAmplifier.rated(),
                bench(List.of(), List.of(), NO_FUSE),
                Told.worstAmps(40))
            .wired(PlanExample.TABLES));
  }

  /** The output is the unloaded volts where nothing is connected, and the part that gives first. */
  @Test
  void output_isTheUnloadedOneWhereItIsForetold() {
    Band open = new Band(20, 22, 25);
    Told told = new Told(Map.of(ReadingId.OPEN_VOLTS, open), Optional.empty());
    StepPlan step =
        PlanExample.plan(
                sequence(STEREO_4, new OpenLoad()),
                BareAmplifier.rated(),
                Bench.unknown(),
                any -> told)
            .steps()
            .get(1);
    assertEquals(Optional.of(open), step.output());
    assertEquals(Optional.empty(), step.amps());
    assertEquals(Optional.empty(), step.givesFirst());
    StepPlan loaded = plan(PlanExample.BENCH, Told.amps(30, 40, 81));
    assertEquals(24, loaded.output().orElseThrow().high());
    assertEquals(81, loaded.amps().orElseThrow().high());
    assertTrue(
        loaded.stresses().stream()
            .allMatch(s -> s.share() <= loaded.givesFirst().orElseThrow().share()));
  }

  private static void assertBand(double low, double middle, double high, Band band) {
    assertEquals(low, band.low(), 1e-5);
    assertEquals(middle, band.middle(), 1e-5);
    assertEquals(high, band.high(), 1e-5);
  }
}
