package loadwalk.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
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
      Results results =
          run("spreadsheet", new SpreadsheetForecaster(), population, SHORT, Arrangement.AMPS);
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
    Forecaster spreadsheet = new SpreadsheetForecaster();
    for (Population population : POPULATIONS) {
      for (Arrangement arrangement : List.of(Arrangement.AMPS, Arrangement.VOLTS)) {
        Results results = run("spreadsheet", spreadsheet, population, COUNT, arrangement);
        System.out.println(ResultTable.of(results, SEED, COUNT));
        assertTrue(results.honestDoubted.tries() > COUNT, "nothing was counted");
        assertTrue(results.clearThoughExceeding.percent() > 5, "it clears what asks too much");
        assertEquals(0, results.total(results.named).percent(), 1, "it names next to nothing");
      }
    }
  }

  @Tag("long")
  @Test
  void forecast_onFiveThousand_keepsToItsKnownShares() throws IOException {
    KnownShares known = KnownShares.read();
    List<String> wrong = new ArrayList<>();
    for (Population population : POPULATIONS) {
      for (Arrangement arrangement : Arrangement.values()) {
        Results results = run("forecast", StockRules.RULES, population, COUNT, arrangement);
        System.out.println(ResultTable.of(results, SEED, COUNT));
        Share.of(results).values().forEach(System.out::println);
        wrong.addAll(known.against(results));
      }
    }
    assertEquals("", String.join("\n", wrong), "seed " + SEED);
  }

  private static Results run(
      String name,
      Forecaster forecaster,
      Population population,
      int count,
      Arrangement arrangement) {
    return new ForecastExperiment(population, SEED, count).run(name, forecaster, arrangement);
  }
}
