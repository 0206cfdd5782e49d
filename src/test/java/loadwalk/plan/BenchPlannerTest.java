package loadwalk.plan;

import static loadwalk.plan.PlanExample.AMPLIFIER;
import static loadwalk.plan.PlanExample.BANK;
import static loadwalk.plan.PlanExample.BENCH;
import static loadwalk.plan.PlanExample.CAUTIONS;
import static loadwalk.plan.PlanExample.FORETELLS;
import static loadwalk.plan.PlanExample.STEREO_4;
import static loadwalk.plan.PlanExample.TABLES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loadwalk.bench.Battery;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.Supply;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Verdict;
import loadwalk.forecast.standard.StandardForecaster;
import loadwalk.json.JsonText;
import loadwalk.plan.wiring.WiringAnswer;
import loadwalk.sequence.Idle;
import loadwalk.sequence.Measure;
import loadwalk.sequence.Note;
import loadwalk.sequence.OpenLoad;
import loadwalk.sequence.Recheck;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.WarmUp;
import org.junit.jupiter.api.Test;

/** Reproduces the example worked by hand in EVIDENCE.md, and checks the forms of a plan. */
class BenchPlannerTest {
  private static BenchPlan plan(Sequence sequence, Bench bench) {
    return PlanExample.plan(sequence, AMPLIFIER, bench);
  }

  /**
   * By hand. A run: 2 m · 0.815153 mΩ/m · 284.5/254.5 = 1.82248 mΩ; at 40 A 72.9 mV and 2.92 W, at
   * 81 A 147.6 mV and 11.96 W. Terminals: 13.8 − 2 · 0.0729 = 13.654 V, at worst 13.505 V.
   * Supplies: 40 · 50/80 = 25 A and 15 A; at worst each at its limit. Fuses of 60 A, 81/60 = 1.35:
   * the amplifier's 30 A blades open in 0.75 s to 10 min (ISO 8820-3 type C at 135 %), the bench's
   * 29 mm blade in 1 to 30 min. Usable 0.9 · 80 = 72 A.
   *
   * <p>The verdict: the chance is 5 % that 40 · (81/40)^(1.645/1.960) = 72.3 A are passed. That is
   * less than the 1.25 · 60 = 75 A that fuses bear for a reading, than the 80 A of the supplies,
   * and than 4/3 · 60 = 80 A: no halt, though no ammeter is entered. 81 A are above 60 A: heed.
   * Stop where the blades never open, 1.1 · 60 = 66 A and 1.0 · 60 = 60 A.
   *
   * <p>Loads of 144 W at worst: two 8 Ω in parallel take 72 W each. One bears 225 K / 72 W = 3.125
   * K/W. In free air, at 50 W for ever, it comes to 225/50 = 4.5 K/W, half of it, 225/100 = 2.25
   * K/W, from element to case. The element follows its case in 5 s / ln(1/0.8) = 22.4 s, the case
   * holds 0.115 kg · 897 = 103.2 J/K. So the rates are 0.04463, 0.00431 and 0.00431 per second,
   * together those of two exponentials, 0.04935 and 0.00390: 4.5 − 1.823 · e^(−0.04935 t) − 2.677 ·
   * e^(−0.00390 t) = 3.125 K/W at t = 171 s, longer than a reading of 60 s.
   */
  @Test
  void handWorkedExample_isReproduced() {
    StepPlan step = plan(STEREO_4, BENCH).steps().get(0);
    StepPlan.LeadLoss plus = step.leads().get(0);
    assertEquals(0.0728992, plus.volts().middle(), 1e-6);
    assertEquals(2.91597, plus.watts().middle(), 1e-4);
    assertEquals(0.1476209, plus.volts().high(), 1e-6);
    assertEquals(11.95729, plus.watts().high(), 1e-4);
    assertEquals(13.654202, step.terminalVolts().orElseThrow().middle(), 1e-5);
    assertEquals(13.504758, step.terminalVolts().orElseThrow().low(), 1e-5);
    assertEquals(new StepPlan.SupplyShare(1, 50, 25, 50), step.shares().get(0));
    assertEquals(new StepPlan.SupplyShare(2, 30, 15, 30), step.shares().get(1));
    assertEquals("0.75 s to 10 min", step.fuses().get(0).worst().text());
    assertEquals("60 s to 30 min", step.fuses().get(1).worst().text());
    assertEquals("may never open", step.fuses().get(1).expected().text());
    assertEquals("amplifier-fuse", step.givesFirst().orElseThrow().code());
    assertEquals(-35, step.givesFirst().orElseThrow().marginPercent(), 1e-9);
    assertEquals(Verdict.HEED, step.forecast().verdict());
    assertEquals(List.of(66.0, 60.0), stops(step, "amplifier-fuse", "bench-fuse"));
    WiringAnswer.Found wiring = (WiringAnswer.Found) step.wiring().orElseThrow();
    assertEquals("8 ohm-a || 8 ohm-b", wiring.loads().get(0).formula());
    assertEquals("8 ohm-c || 8 ohm-d", wiring.loads().get(1).formula());
    assertEquals(72, wiring.loads().get(0).hottest(144, LoadResistor::watts).watts(), 1e-9);
    assertEquals(171, step.wired(TABLES).orElseThrow().burstSeconds(), 0.5);
  }

  /** Returns the amperes at which to stop for each of some parts, by the code of its caution. */
  private static List<Double> stops(StepPlan step, String... codes) {
    return Stream.of(codes)
        .map(
            code ->
                step.stresses().stream()
                    .filter(stress -> stress.code().equals(code))
                    .findFirst()
                    .orElseThrow()
                    .bears()
                    .stop())
        .toList();
  }

  @Test
  void cautionsOfThePlan_areTheBriefs() {
    StepPlan step = plan(STEREO_4, BENCH).steps().get(0);
    Evidence evidence =
        new Evidence(AMPLIFIER, BENCH, new Evidence.Conditions(1000, 1, 13.8), List.of());
    Forecast brief = FORETELLS.forecast(evidence, step.target());
    assertEquals(brief.cautions(), step.forecast().cautions());
  }

  @Test
  void noBench_saysWhatItWouldNeed() {
    List<String> needs = plan(STEREO_4, Bench.unknown()).needs();
    assertEquals(
        List.of(
            "Supplies of 90 A in all at 13.8 V: 81 A at worst, and 90 % of the sum counts as"
                + " usable.",
            "A 100 A fuse (blade, 29 mm (ISO 8820-3 type E)) at the source, good for 75 A"
                + " continuous. The leads must carry more than the fuse.",
            "Supply leads of AWG 6 or thicker with insulation for 105 °C, 1 m each way: good for"
                + " 120 A continuous, 0.235 V lost at worst.",
            "For stereo 4 Ω, 144 W each at worst: buy 4 resistors of 2 Ω, 100 W."),
        needs);
  }

  @Test
  void json_isReadBackAndCarriesItsFormat() {
    String json = PlanJson.text(plan(STEREO_4, BENCH), TABLES);
    assertTrue(JsonText.strict("plan").read(json).found().isPresent());
    assertTrue(json.contains("\"format\" : \"loadwalk-plan/1\""), json);
    assertTrue(json.contains("\"code\" : \"amplifier-fuse\""), json);
  }

  /** 12.7 V behind 5 mΩ and 60 Ah: what is told beside the step is what a hand reckons. */
  @Test
  void battery_isToldWithItsVoltsAndItsTime() {
    Battery battery = new Battery(12.7, new Battery.Milliohms(5), OptionalDouble.of(60));
    Bench bench =
        new Bench(
            "b",
            List.of(Supply.of(battery)),
            List.of(),
            OptionalDouble.empty(),
            List.of(),
            List.of(),
            1);
    BenchPlan plan = plan(STEREO_4, bench);
    StepPlan step = plan.steps().get(0);
    double amps = step.amps().orElseThrow().middle();
    assertEquals(12.7 - 0.005 * amps, step.terminalVolts().orElseThrow().middle(), 1e-9);
    double seconds = 20 * 3600 * Math.pow(3 / amps, 1.2);
    String json = PlanJson.text(plan, TABLES);
    String told = "\"batterySeconds\" : ";
    String number = json.substring(json.indexOf(told) + told.length()).split("[,\\s]", 2)[0];
    assertEquals(seconds, Double.parseDouble(number), 1e-3 * seconds);
  }

  @Test
  void fullWalk_isPlannedStepByStepByTheRealForecast() {
    Sequence walk =
        new Sequence(
            "walk",
            "A walk",
            40,
            1,
            13.8,
            List.of(
                new WarmUp(15, 0.5, 0.5),
                new Idle(),
                new Measure(Mode.STEREO, 4, false),
                new Measure(Mode.BRIDGED, 2, false),
                new OpenLoad(),
                new Recheck(List.of(Recheck.HEAVIEST), 10),
                new Note("done")),
            "0");
    BenchPlan plan =
        new BenchPlanner(new StandardForecaster(CAUTIONS), CAUTIONS, TABLES, BANK)
            .plan(walk, AMPLIFIER, BENCH, List.of());
    assertEquals(
        List.of("warm-up", "idle", "stereo-4", "bridged-2", "open-load", "warm-up#2", "recheck"),
        plan.steps().stream().map(step -> step.target().stepId()).toList());
    assertEquals(2, plan.steps().get(6).target().ohms(), "the heaviest step is bridged 2 Ω");
    assertEquals(Verdict.HALT, plan.verdict(), "2 Ω bridged is below the least load of 4 Ω");
  }

  @Test
  void stockTooLarge_isASentenceInThePlan() {
    Bench bench =
        new Bench(
            "b",
            BENCH.supplies(),
            BENCH.leads(),
            BENCH.fuseAmps(),
            List.of(new LoadResistor("8 ohm", 8, 5, 100, 1000, OptionalDouble.empty())),
            List.of(),
            0.9);
    StepPlan step = plan(STEREO_4, bench).steps().get(0);
    WiringAnswer.None none = (WiringAnswer.None) step.wiring().orElseThrow();
    assertTrue(none.sentence().contains("1000 resistors"), none.sentence());
  }
}
