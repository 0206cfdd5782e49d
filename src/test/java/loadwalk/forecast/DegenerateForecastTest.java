package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.model.Amplifiers;
import loadwalk.forecast.standard.StandardForecaster;
import loadwalk.forecast.standard.Stock;
import org.junit.jupiter.api.Test;

/** Input that a real bench gives now and then: no exception, no NaN, a wide band and a sentence. */
class DegenerateForecastTest {
  private static final long SEED = 271828;
  private static final Amplifier RATED = Amplifiers.rated(50);
  private static final List<Target> TARGETS =
      List.of(
          Amplifiers.IDLE,
          Amplifiers.STEREO_4,
          Amplifiers.STEREO_1,
          Amplifiers.BRIDGED_HALF,
          new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5),
          new Target("open-load", Target.Kind.OPEN_LOAD, Mode.BRIDGED, 1, 1),
          new Target("open-load", Target.Kind.OPEN_LOAD, Mode.STEREO, Double.NaN, 1));

  private final StandardForecaster forecaster = Stock.forecaster();

  @Test
  void nothingKnown_givesAWideBandAndASentence() {
    Evidence evidence = Amplifiers.evidence(Amplifier.named("Brightmoor", "B1"), List.of());
    Band volts = volts(evidence, Amplifiers.STEREO_4);
    assertTrue(volts.high() > 8 * volts.low(), volts.toString());
    assertTrue(
        forecaster.forecast(evidence, Amplifiers.STEREO_4).basis().contains("wide"),
        forecaster.forecast(evidence, Amplifiers.STEREO_4).basis());
    everythingIsSound(evidence);
  }

  @Test
  void oneReading_isEnough() {
    everythingIsSound(walk(RATED, loaded(4, 14.9, 13.6)));
  }

  @Test
  void equalLoads_areAveraged() {
    Evidence evidence =
        walk(RATED, loaded(4, 14.9, 13.6), loaded(4, 14.95, 13.5), loaded(4, 14.85, 13.7));
    assertEquals(14.9, volts(evidence, Amplifiers.STEREO_4).middle(), 0.05);
    everythingIsSound(evidence);
  }

  @Test
  void identicalVolts_intoEveryLoad_areTaken() {
    Evidence evidence = walk(RATED, loaded(4, 15, 13), loaded(2, 15, 25), loaded(1, 15, 48));
    assertEquals(30, volts(evidence, Amplifiers.BRIDGED_4).middle(), 0.5);
    everythingIsSound(evidence);
  }

  @Test
  void zeroAmps_andZeroVolts_areTaken() {
    everythingIsSound(walk(RATED, loaded(4, 14.9, 0), loaded(2, 0, 0)));
  }

  @Test
  void loadsThatGoUp_giveAWideBand() {
    Evidence evidence = walk(RATED, loaded(1, 13.9, 45), loaded(2, 14.6, 24));
    Band volts = volts(evidence, Amplifiers.STEREO_4);
    assertTrue(volts.holds(14.9), volts.toString());
    assertTrue(volts.high() > 1.1 * volts.low(), volts.toString());
    everythingIsSound(evidence);
  }

  @Test
  void idleAboveTheLoadedCurrent_isSurvived() {
    List<Observation> walk = new ArrayList<>();
    walk.add(new Observation(Amplifiers.IDLE, Map.of(ReadingId.SUPPLY_AMPS, 19.0)));
    walk.add(loaded(4, 14.9, 13.6));
    everythingIsSound(Amplifiers.evidence(RATED, walk));
  }

  @Test
  void ratingsAHundredTimesOff_areLeftOutWhereFusesTell_andOverruledByReadings() {
    for (double watts : new double[] {0.5, 5000, 1e7, 1e-6}) {
      Rating absurd =
          new Rating(Mode.STEREO, 4, watts, OptionalDouble.empty(), OptionalDouble.empty());
      Amplifier amplifier = Amplifiers.with(List.of(absurd), List.of(15.0));
      Evidence evidence = Amplifiers.evidence(amplifier, List.of());
      Band before = volts(evidence, Amplifiers.STEREO_4);
      assertTrue(before.holds(14.9), watts + " W: " + before);
      String basis = forecaster.forecast(evidence, Amplifiers.STEREO_4).basis();
      assertTrue(basis.contains("cannot be"), basis);
      everythingIsSound(evidence);
      Evidence measured = walk(amplifier, loaded(4, 14.9, 13.6));
      assertEquals(14.9, volts(measured, Amplifiers.STEREO_4).middle(), 0.1);
    }
  }

  @Test
  void readingsThatContradictEachOther_widenTheBand_andTheBasisSaysSo() {
    Evidence evidence =
        walk(RATED, loaded(4, 14, 13), loaded(4, 19, 13), loaded(2, 12, 20), loaded(2, 17.5, 24));
    Forecast forecast = forecaster.forecast(evidence, Amplifiers.STEREO_2);
    Band volts = forecast.band(ReadingId.OUTPUT_VOLTS).orElseThrow();
    assertTrue(volts.high() > 1.2 * volts.low(), volts.toString());
    assertTrue(forecast.basis().contains("scatter"), forecast.basis());
  }

  @Test
  void anyReadings_giveSoundForecastsAndDoubts() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 60; round++) {
      List<Observation> walk = new ArrayList<>();
      int steps = random.nextInt(25);
      for (int step = 0; step < steps; step++) {
        double ohms = Math.pow(10, 4 * random.nextDouble() - 2);
        walk.add(loaded(ohms, wild(random), wild(random)));
      }
      everythingIsSound(Amplifiers.evidence(RATED, walk));
    }
  }

  private static double wild(SplittableRandom random) {
    return switch (random.nextInt(8)) {
      case 0 -> 0;
      case 1 -> -random.nextDouble();
      case 2 -> 1e9 * random.nextDouble();
      case 3 -> 1e-9;
      default -> Math.exp(6 * random.nextDouble());
    };
  }

  private void everythingIsSound(Evidence evidence) {
    for (Target target : TARGETS) {
      Forecast forecast = forecaster.forecast(evidence, target);
      assertTrue(forecast.basis().endsWith("."), forecast.basis());
      assertFalse(forecast.toString().contains("NaN"), forecast.toString());
      for (double value : new double[] {-1, 0, 1e-12, 0.7, 14.9, 1e12}) {
        for (ReadingId id : ReadingId.values()) {
          List<Doubt> doubts = forecaster.judge(evidence, target, Map.of(id, value));
          doubts.forEach(d -> assertFalse(d.toString().contains("NaN"), d.toString()));
        }
        forecaster.judge(
            evidence, target, Map.of(ReadingId.OUTPUT_VOLTS, value, ReadingId.SUPPLY_AMPS, value));
      }
    }
  }

  private Band volts(Evidence evidence, Target target) {
    return forecaster.forecast(evidence, target).band(ReadingId.OUTPUT_VOLTS).orElseThrow();
  }

  private static Evidence walk(Amplifier amplifier, Observation... observations) {
    return Amplifiers.evidence(amplifier, List.of(observations));
  }

  private static Observation loaded(double ohms, double volts, double amps) {
    return new Observation(
        Target.loaded("stereo-" + ohms, Mode.STEREO, ohms),
        Map.of(ReadingId.OUTPUT_VOLTS, volts, ReadingId.SUPPLY_AMPS, amps));
  }
}
