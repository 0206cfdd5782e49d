package loadwalk.app;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.bench.Target;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Observation;
import loadwalk.forecast.StandardForecaster;
import loadwalk.forecast.StepCautions;
import loadwalk.plan.BenchPlanner;
import loadwalk.plan.WiringLoadBank;
import loadwalk.report.Page;
import loadwalk.report.PlanPage;
import loadwalk.sequence.Sequence;

/**
 * What forecasts and plans rest on, so that a brief and a plan say the same of one step.
 *
 * @param tables wire, fuse and resistor data, the operator's own before the stock ones
 * @param forecaster what briefs ask
 * @param planner what plans ask
 */
record Planning(Tables tables, Forecaster forecaster, BenchPlanner planner) {

  /** Makes forecaster and planner from one set of tables and one way to wire loads. */
  static Planning of(Tables tables) {
    WiringLoadBank bank = new WiringLoadBank(tables);
    StepCautions cautions = new StepCautions(tables, bank);
    Forecaster forecaster = new StandardForecaster(cautions);
    return new Planning(tables, forecaster, new BenchPlanner(forecaster, cautions, tables, bank));
  }

  /** Returns a forecaster that asks for the planning with its first question. */
  static Forecaster forecasting(Supplier<Planning> planning) {
    return new Forecaster() {
      @Override
      public Forecast forecast(Evidence evidence, Target target) {
        return planning.get().forecaster().forecast(evidence, target);
      }

      @Override
      public List<Doubt> judge(Evidence evidence, Target target, Map<ReadingId, Double> entries) {
        return planning.get().forecaster().judge(evidence, target, entries);
      }

      @Override
      public List<Doubt> judgeSoFar(
          Evidence evidence, Target target, Map<ReadingId, Double> entries) {
        return planning.get().forecaster().judgeSoFar(evidence, target, entries);
      }
    };
  }

  /** Returns the plan of a bench as a page. */
  Page page(Sequence sequence, Amplifier amplifier, Bench bench, List<Observation> measured) {
    return PlanPage.of(planner.plan(sequence, amplifier, bench, measured), tables);
  }
}
