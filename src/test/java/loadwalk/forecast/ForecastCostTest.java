package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.model.Amplifiers;
import loadwalk.forecast.standard.StandardForecaster;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Prints what forecasts cost; asserts no time, because machines differ. */
@Tag("long")
class ForecastCostTest {
  private static final List<Target> STEPS =
      List.of(
          Amplifiers.IDLE,
          Amplifiers.STEREO_4,
          Amplifiers.STEREO_2,
          Amplifiers.STEREO_1,
          Amplifiers.BRIDGED_4,
          Amplifiers.BRIDGED_2,
          Amplifiers.BRIDGED_1,
          Amplifiers.BRIDGED_HALF,
          Amplifiers.BRIDGED_HALF,
          Amplifiers.BRIDGED_1,
          Amplifiers.STEREO_4);

  @Test
  void walksOfElevenSteps_areTimed() {
    StandardForecaster forecaster = Stock.forecaster();
    walks(forecaster, 2000, 1);
    int count = 10_000;
    long start = System.nanoTime();
    int forecasts = walks(forecaster, count, 2);
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf("%d walks of %d steps: %.1f s on one core%n", count, STEPS.size(), seconds);
    assertTrue(forecasts == count * STEPS.size());
  }

  @Test
  void entryJudgedAndAllForecastsRenewed_areTimed() {
    StandardForecaster forecaster = Stock.forecaster();
    int entries = 0;
    long start = 0;
    for (int round = 0; round < 600; round++) {
      if (round == 300) {
        start = System.nanoTime();
        entries = 0;
      }
      List<Observation> known = new ArrayList<>();
      for (Target step : STEPS) {
        Evidence before = Amplifiers.evidence(Amplifiers.rated(50 + round), known);
        forecaster.judge(before, step, Amplifiers.readings(step));
        known = new ArrayList<>(known);
        known.add(new Observation(step, Amplifiers.readings(step)));
        Evidence after = Amplifiers.evidence(Amplifiers.rated(50 + round), known);
        STEPS.forEach(target -> forecaster.forecast(after, target));
        entries++;
      }
    }
    double millis = (System.nanoTime() - start) / 1e6 / entries;
    System.out.printf("an entry judged and all %d forecasts renewed: %.2f ms%n", 11, millis);
    assertTrue(entries > 0);
  }

  private static int walks(StandardForecaster forecaster, int count, int salt) {
    int forecasts = 0;
    for (int walk = 0; walk < count; walk++) {
      double watts = 40 + 20.0 * walk / count + salt;
      List<Observation> known = new ArrayList<>();
      for (Target step : STEPS) {
        Evidence evidence = Amplifiers.evidence(Amplifiers.rated(watts), known);
        Map<ReadingId, Double> readings = Amplifiers.readings(step);
        forecaster.forecast(evidence, step);
        forecaster.judge(evidence, step, readings);
        known = new ArrayList<>(known);
        known.add(new Observation(step, readings));
        forecasts++;
      }
    }
    return forecasts;
  }
}
