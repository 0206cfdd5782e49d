package loadwalk.experiment;

import java.util.List;
import loadwalk.bench.Tables;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.caution.StepCautions;
import loadwalk.forecast.standard.StandardForecaster;

/**
 * Walks full-walk on trial benches and counts what the briefs said beside what was true.
 *
 * @param seed the seed of the draw
 * @param count how many benches of each population
 * @param sane whether the benches are sane
 */
record CautionExperiment(long seed, int count, boolean sane) {
  private static final List<Population> POPULATIONS =
      List.of(new CircuitPopulation(), new WaveformPopulation());

  /** The program's forecaster, as {@code plan.Rules} puts it together, on loads wired one way. */
  private static final Forecaster FORECASTER =
      new StandardForecaster(new StepCautions(Tables.stock(), new WiredLoads()));

  CautionCounts run() {
    CautionCounts counts = new CautionCounts();
    for (Population population : POPULATIONS) {
      TrialDraw draw = new TrialDraw(population, seed, sane);
      for (int number = 0; number < count; number++) {
        TrialBench bench = draw.bench(number);
        counts.add(bench, CautionWalk.of(bench, FORECASTER));
      }
    }
    return counts;
  }
}
