package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.forecast.Forecaster;
import loadwalk.plan.StockRules;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Measures the forecast on simulated amplifiers that its model does not know. */
class ForecastExperimentTest {
  private static final long SEED = Long.getLong("experiment.seed", 20260714);
  private static final int SHORT = 150;
  private static final int COUNT = Integer.getInteger("experiment.count", 5000);
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

  @Test
  void forecast_onASmallShare_staysNearItsNumbers() {
    for (Population population : POPULATIONS) {
      Results results = run("forecast", StockRules.RULES, population, SHORT, true);
      String what = ResultTable.of(results, SEED, SHORT);
      assertTrue(results.total(results.doubted).percent() >= 90, what);
      assertTrue(results.honestDoubted.percent() <= 3, what);
      assertTrue(results.allInside().percent() >= 88, what);
      assertTrue(results.medianHalfWidthPercent() <= 10, what);
      assertTrue(results.clearThoughExceeding.percent() <= 1, what);
      assertTrue(results.clear.hits() > 0, what);
    }
  }

  @Tag("long")
  @Test
  void spreadsheet_onFiveThousand_printsItsTable() {
    printTables("spreadsheet", new SpreadsheetForecaster());
  }

  @Tag("long")
  @Test
  void forecast_onFiveThousand_printsItsTable() {
    printTables("forecast", StockRules.RULES);
  }

  private static void printTables(String name, Forecaster forecaster) {
    for (Population population : POPULATIONS) {
      for (boolean withAmps : new boolean[] {true, false}) {
        Results results = run(name, forecaster, population, COUNT, withAmps);
        System.out.println(ResultTable.of(results, SEED, COUNT));
        assertTrue(results.honestDoubted.tries() > COUNT, "nothing was counted");
      }
    }
  }

  private static Results run(
      String name, Forecaster forecaster, Population population, int count, boolean withAmps) {
    return new ForecastExperiment(population, SEED, count).run(name, forecaster, withAmps);
  }
}
