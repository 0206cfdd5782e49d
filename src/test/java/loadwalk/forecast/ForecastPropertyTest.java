package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.model.Amplifiers;
import loadwalk.forecast.model.MeterFloor;
import loadwalk.forecast.standard.StandardForecaster;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Test;

/** Bounds that hold for every voltage source behind a resistance, and sameness of answers. */
class ForecastPropertyTest {
  private static final long SEED = 1618;
  private static final int ROUNDS = Integer.getInteger("forecast.rounds", 60);

  @Test
  void halvingTheLoad_neverRaisesTheVolts_andAtMostDoublesTheWatts() {
    StandardForecaster forecaster = Stock.forecaster();
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < ROUNDS; round++) {
      Evidence evidence = drawn(random);
      for (Mode mode : Mode.values()) {
        for (double ohms = 4; ohms > 0.6; ohms /= 2) {
          Forecast whole = forecaster.forecast(evidence, Target.loaded("a", mode, ohms));
          Forecast half = forecaster.forecast(evidence, Target.loaded("b", mode, ohms / 2));
          String what = "seed " + SEED + ", round " + round + ", " + mode + " " + ohms;
          double wide = middle(whole, ReadingId.OUTPUT_VOLTS);
          assertTrue(middle(half, ReadingId.OUTPUT_VOLTS) <= 1.01 * wide, what);
          double watts = middle(whole, ReadingId.OUTPUT_WATTS);
          assertTrue(middle(half, ReadingId.OUTPUT_WATTS) <= 2.03 * watts, what);
        }
      }
    }
  }

  @Test
  void bridged_isTwiceTheStereoVoltsIntoHalfTheLoad() {
    StandardForecaster forecaster = Stock.forecaster();
    SplittableRandom random = new SplittableRandom(SEED + 1);
    for (int round = 0; round < ROUNDS; round++) {
      Evidence evidence = drawn(random);
      Forecast stereo = forecaster.forecast(evidence, Amplifiers.STEREO_1);
      Forecast bridged = forecaster.forecast(evidence, Amplifiers.BRIDGED_2);
      double twice = 2 * middle(stereo, ReadingId.OUTPUT_VOLTS);
      String what = "seed " + (SEED + 1) + ", round " + round;
      assertEquals(twice, middle(bridged, ReadingId.OUTPUT_VOLTS), 0.01 * twice, what);
    }
  }

  @Test
  void middle_putsLessOutThanIn() {
    StandardForecaster forecaster = Stock.forecaster();
    SplittableRandom random = new SplittableRandom(SEED + 2);
    for (int round = 0; round < ROUNDS; round++) {
      Evidence evidence = drawn(random);
      Forecast forecast = forecaster.forecast(evidence, Amplifiers.BRIDGED_1);
      double output = forecast.demand().totalWatts().orElseThrow().middle();
      double input =
          middle(forecast, ReadingId.SUPPLY_AMPS) * middle(forecast, ReadingId.SUPPLY_VOLTS);
      assertTrue(output < input, "seed " + (SEED + 2) + ", round " + round);
    }
  }

  @Test
  void bands_areNeverNarrowerThanTheMeters() {
    StandardForecaster forecaster = Stock.forecaster();
    SplittableRandom random = new SplittableRandom(SEED + 3);
    for (int round = 0; round < ROUNDS; round++) {
      Evidence evidence = drawn(random);
      Forecast forecast = forecaster.forecast(evidence, Amplifiers.STEREO_4);
      forecast
          .readings()
          .forEach(
              (id, band) -> {
                double half = MeterFloor.halfWidth(Bench.unknown(), id, band.middle());
                assertTrue(band.high() >= band.middle() + half - 1e-9, id + " " + band);
                assertTrue(band.low() <= Math.max(0, band.middle() - half) + 1e-9, id + " " + band);
              });
    }
  }

  @Test
  void sameEvidence_givesTheSameAnswer_whateverWasAskedBefore() {
    SplittableRandom random = new SplittableRandom(SEED + 4);
    StandardForecaster used = Stock.forecaster();
    for (int round = 0; round < ROUNDS; round++) {
      Evidence evidence = drawn(random);
      Map<ReadingId, Double> entries = Map.of(ReadingId.OUTPUT_VOLTS, 40 * random.nextDouble());
      StandardForecaster fresh = Stock.forecaster();
      assertEquals(
          fresh.judge(evidence, Amplifiers.BRIDGED_4, entries),
          used.judge(evidence, Amplifiers.BRIDGED_4, entries));
      assertEquals(
          fresh.forecast(evidence, Amplifiers.BRIDGED_4),
          used.forecast(evidence, Amplifiers.BRIDGED_4));
    }
  }

  private static double middle(Forecast forecast, ReadingId id) {
    return forecast.band(id).orElseThrow().middle();
  }

  private static Evidence drawn(SplittableRandom random) {
    double volts = 5 + 50 * random.nextDouble();
    double source = 0.2 * random.nextDouble();
    double efficiency = 0.45 + 0.3 * random.nextDouble();
    List<Observation> walk = new ArrayList<>();
    walk.add(new Observation(Amplifiers.IDLE, Map.of(ReadingId.SUPPLY_AMPS, 1.2)));
    int loads = random.nextInt(4);
    for (double ohms = 4; loads > 0; ohms /= 2, loads--) {
      double out = volts * ohms / (ohms + source) * (1 + 0.006 * random.nextGaussian());
      double amps = 1.2 + 2 * out * out / ohms / (efficiency * 13.8);
      walk.add(
          new Observation(
              Target.loaded("stereo-" + ohms, Mode.STEREO, ohms),
              Map.of(ReadingId.OUTPUT_VOLTS, out, ReadingId.SUPPLY_AMPS, amps)));
    }
    return Amplifiers.evidence(Amplifiers.rated(volts * volts / 4), walk);
  }
}
