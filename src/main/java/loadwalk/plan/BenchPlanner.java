package loadwalk.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.Hold;
import loadwalk.bench.Source;
import loadwalk.bench.Supply;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Observation;
import loadwalk.forecast.ToldOnce;
import loadwalk.forecast.caution.StepCautions;
import loadwalk.plan.wiring.WiringAnswer;
import loadwalk.plan.wiring.WiringLoadBank;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.StepContext;

/**
 * Plans the use of a bench for a sequence.
 *
 * <p>Worked by hand in src/test/EVIDENCE.md and again in a test: a lead's drop is I·R and its heat
 * I²·R (Ohm, Joule), a supply's share is in proportion to its rating, and a fuse's time comes from
 * its table at current over rating.
 */
final class BenchPlanner {
  private final Forecaster forecaster;
  private final StepCautions cautions;
  private final Tables tables;
  private final Wire wire;
  private final WiringLoadBank bank;

  /**
   * Prepares a planner.
   *
   * @param forecaster gives the readings and cautions; it should use the same cautions as {@code
   *     cautions}
   * @param cautions gives the stress on each part
   * @param tables wire, fuse and resistor data
   * @param bank wires the loads
   */
  public BenchPlanner(
      Forecaster forecaster, StepCautions cautions, Tables tables, WiringLoadBank bank) {
    this.forecaster = forecaster;
    this.cautions = cautions;
    this.tables = tables;
    this.bank = bank;
    wire = new Wire(tables);
  }

  /**
   * Plans every step of a sequence.
   *
   * @param sequence the sequence
   * @param amplifier the amplifier with its ratings
   * @param bench the bench, or {@link Bench#unknown()} if there is none yet
   * @param observations what has been measured so far, oldest first
   */
  BenchPlan plan(
      Sequence sequence, Amplifier amplifier, Bench bench, List<Observation> observations) {
    Evidence.Conditions conditions =
        new Evidence.Conditions(
            sequence.toneHertz(), sequence.limitThdPercent(), sequence.supplyVolts());
    Evidence evidence = new Evidence(amplifier, bench, conditions, observations);
    List<BenchPlan.Asked> asked = new ArrayList<>();
    List<StepPlan> steps = new ArrayList<>();
    List<PlannedStep> walked = PlannedStep.of(sequence);
    for (PlannedStep planned : walked) {
      // Before the walk the heaviest step is taken to be the heaviest of the sequence.
      StepContext context = planned.in(sequence, walked, any -> true);
      asked.add(new BenchPlan.Asked(planned.id(), planned.instruction(context)));
      planned.target(context).ifPresent(target -> steps.add(step(evidence, target, briefs(steps))));
    }
    List<String> needs = new Needs(tables, evidence, steps).sentences();
    return new BenchPlan(sequence.name(), evidence, asked, steps, needs);
  }

  private static List<Forecast> briefs(List<StepPlan> before) {
    return before.stream().map(StepPlan::forecast).toList();
  }

  private StepPlan step(Evidence evidence, Target target, List<Forecast> before) {
    Forecast forecast = ToldOnce.after(before, forecaster.forecast(evidence, target));
    Bench bench = evidence.bench();
    Optional<Band> amps = forecast.band(loadwalk.bench.ReadingId.SUPPLY_AMPS);
    return new StepPlan(
        target,
        forecast,
        amps.map(a -> shares(bench, a)).orElse(List.of()),
        amps.map(a -> losses(evidence, a)).orElse(List.of()),
        amps.flatMap(a -> terminalVolts(bench, a)),
        amps.map(a -> fuses(evidence, a)).orElse(List.of()),
        wiring(bench, target, forecast),
        cautions.stresses(evidence, target, forecast.readings(), forecast.demand()));
  }

  private static List<StepPlan.SupplyShare> shares(Bench bench, Band amps) {
    double sum = bench.supplies().stream().mapToDouble(Supply::amps).sum();
    List<StepPlan.SupplyShare> shares = new ArrayList<>();
    for (int i = 0; i < bench.supplies().size(); i++) {
      double rated = bench.supplies().get(i).amps();
      shares.add(
          new StepPlan.SupplyShare(
              i + 1, rated, amps.middle() * rated / sum, Math.min(rated, amps.high())));
    }
    return shares;
  }

  /** The leads never lose more than the source has: no more flows than through a short. */
  private List<StepPlan.LeadLoss> losses(Evidence evidence, Band amps) {
    Bench bench = evidence.bench();
    double most = shortAmps(evidence);
    return bench.leads().stream()
        .map(
            lead -> {
              double ohms = wire.ohms(lead, wire.workingCelsius());
              double low = Math.min(most, amps.low());
              double middle = Math.min(most, amps.middle());
              double high = Math.min(most, amps.high());
              Band volts = new Band(low * ohms, middle * ohms, high * ohms);
              Band watts =
                  new Band(squared(low) * ohms, squared(middle) * ohms, squared(high) * ohms);
              return new StepPlan.LeadLoss(lead.label(), volts, watts);
            })
        .toList();
  }

  /** Returns the current through the leads with nothing behind them, amperes (Ohm). */
  private double shortAmps(Evidence evidence) {
    Source source =
        evidence.bench().source().orElse(new Source(evidence.conditions().supplyVolts(), 0));
    return source.volts() / (source.ohms() + wire.ohms(evidence.bench()).orElse(0));
  }

  private Optional<Band> terminalVolts(Bench bench, Band amps) {
    double ohms = wire.ohms(bench).orElse(0);
    return bench
        .source()
        .map(
            source ->
                new Band(
                    source.voltsBehind(ohms, amps.high()),
                    source.voltsBehind(ohms, amps.middle()),
                    source.voltsBehind(ohms, amps.low())));
  }

  private List<StepPlan.FuseTime> fuses(Evidence evidence, Band amps) {
    List<StepPlan.FuseTime> times = new ArrayList<>();
    evidence
        .amplifier()
        .fuseAmps()
        .ifPresent(
            sum -> {
              double single = evidence.amplifier().fuses().get(0);
              times.add(time("amplifier", tables.fuseFor(single), sum, amps));
            });
    evidence
        .bench()
        .fuseAmps()
        .ifPresent(rating -> times.add(time("bench", tables.fuseFor(rating), rating, amps)));
    return times;
  }

  private static StepPlan.FuseTime time(String label, FuseCurve curve, double rating, Band amps) {
    return new StepPlan.FuseTime(
        label,
        curve.type(),
        curve.opening(Math.max(0, amps.middle()) / rating),
        curve.opening(Math.max(0, amps.high()) / rating));
  }

  private Optional<WiringAnswer> wiring(Bench bench, Target target, Forecast forecast) {
    if (!target.kind().drives()) {
      return Optional.empty();
    }
    double watts = forecast.demand().loadWatts().map(Band::high).orElse(0.0);
    try {
      return Optional.of(
          bank.wiring(
              bench.loads(),
              target.mode(),
              target.ohms(),
              Math.max(0, watts),
              Hold.of(target.kind(), tables)));
    } catch (IllegalArgumentException e) {
      return Optional.of(new WiringAnswer.None(e.getMessage(), Optional.empty()));
    }
  }

  private static double squared(double amps) {
    return amps * amps;
  }
}
