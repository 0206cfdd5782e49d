package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.forecast.Forecaster;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Measures the forecast on simulated amplifiers that its model does not know. */
class ForecastExperimentTest {
  private static final long SEED = 20260714;
  private static final int SHORT = 150;
  private static final int LONG = 5000;
  private static final List<Population> POPULATIONS =
      List.of(new CircuitPopulation(), new WaveformPopulation());

  @Test
  void spreadsheet_onASmallShare_isCountedWhole() {
    for (Population population : POPULATIONS) {
      Results results = run("spreadsheet", new SpreadsheetForecaster(), population, SHORT, true);
      String what = population.name() + ", seed " + SEED;
      assertEquals(3 * results.run.hits() + 2L * SHORT, results.honestDoubted.tries(), what);
      assertTrue(results.run.percent() > 60, what);
      long made = results.doubted.values().stream().mapToLong(Tally::tries).sum();
      long left = results.leftOut.values().stream().mapToLong(n -> n).sum();
      assertEquals(12L * SHORT, made + left, what);
      assertTrue(results.total(results.doubted).percent() > 50, what);
      assertTrue(results.clearThoughExceeding.tries() > SHORT / 2, what);
    }
  }

  @Tag("long")
  @Test
  void spreadsheet_onFiveThousand_printsItsTable() {
    for (Population population : POPULATIONS) {
      for (boolean withAmps : new boolean[] {true, false}) {
        Results results =
            run("spreadsheet", new SpreadsheetForecaster(), population, LONG, withAmps);
        System.out.println(ResultTable.of(results, SEED, LONG));
        assertTrue(results.honestDoubted.tries() > LONG, "nothing was counted");
      }
    }
  }

  private static Results run(
      String name, Forecaster forecaster, Population population, int count, boolean withAmps) {
    return new ForecastExperiment(population, SEED, count).run(name, forecaster, withAmps);
  }
}
