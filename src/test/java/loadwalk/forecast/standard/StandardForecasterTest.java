package loadwalk.forecast.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.Amplifiers;
import org.junit.jupiter.api.Test;

class StandardForecasterTest {
  private static final Amplifier AMPLIFIER =
      new Amplifier(
          "Halvorsen & Pike",
          "HP-250",
          Optional.empty(),
          OptionalInt.empty(),
          Optional.of("AB"),
          OptionalInt.of(2),
          List.of(new Rating(Mode.STEREO, 4, 50, OptionalDouble.empty(), OptionalDouble.empty())),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          List.of(),
          Optional.empty());

  private static final Target STEREO_4 = Target.loaded("stereo-4", Mode.STEREO, 4);
  private static final Target BRIDGED_4 = Target.loaded("bridged-4", Mode.BRIDGED, 4);

  private final StandardForecaster forecaster = Stock.forecaster();

  @Test
  void forecast_fromARatingAlone_spansThreeDecibelsEitherWay() {
    Band volts = band(evidence(List.of()), STEREO_4, ReadingId.OUTPUT_VOLTS);
    double rated = Math.sqrt(50 * 4);
    assertTrue(volts.low() < rated * 0.75 && volts.low() > rated * 0.6, volts.toString());
    assertTrue(volts.high() > rated * 1.33 && volts.high() < rated * 1.6, volts.toString());
  }

  @Test
  void forecast_bridgedWithItsStereoEqualMeasured_isTwiceTheStereoVolts() {
    Observation stereo =
        new Observation(
            Target.loaded("stereo-2", Mode.STEREO, 2), Map.of(ReadingId.OUTPUT_VOLTS, 13.0));
    Band volts = band(evidence(List.of(stereo)), BRIDGED_4, ReadingId.OUTPUT_VOLTS);
    assertEquals(26, volts.middle(), 0.3);
    assertTrue((volts.high() - volts.low()) / 2 / volts.middle() < 0.06, volts.toString());
  }

  @Test
  void judge_peakVoltsWithTheTrueAmps_namesPeakForRms() {
    List<Doubt> doubts =
        forecaster.judge(
            evidence(List.of()),
            STEREO_4,
            Map.of(ReadingId.OUTPUT_VOLTS, 14.0 * Math.sqrt(2), ReadingId.SUPPLY_AMPS, 13.5));
    assertEquals(1, doubts.size());
    assertEquals(ReadingId.OUTPUT_VOLTS, doubts.get(0).reading());
    assertEquals(Slip.PEAK_FOR_RMS, doubts.get(0).slip());
  }

  @Test
  void judge_readingsThatAgree_raisesNoDoubt() {
    List<Doubt> doubts =
        forecaster.judge(
            evidence(List.of()),
            STEREO_4,
            Map.of(ReadingId.OUTPUT_VOLTS, 14.0, ReadingId.SUPPLY_AMPS, 13.5));
    assertEquals(List.of(), doubts);
  }

  /** Two walks of which nothing is read yet, by one forecaster, are of two amplifiers. */
  @Test
  void forecast_ofAnotherAmplifierWithAsFewReadings_isItsOwn() {
    double small = firstVolts(50);
    double large = firstVolts(450);
    assertEquals(3 * small, large, 0.1 * large, "nine times the watts are three times the volts");
  }

  private double firstVolts(double watts) {
    Evidence evidence = Amplifiers.evidence(Amplifiers.rated(watts), List.of());
    return forecaster
        .forecast(evidence, STEREO_4)
        .band(ReadingId.OUTPUT_VOLTS)
        .orElseThrow()
        .middle();
  }

  /** A load measured cold tells the step that it is of nothing but its cautions. */
  @Test
  void forecast_withTheStepsOwnColdLoad_isTheSame() {
    Observation cold = new Observation(STEREO_4, Map.of(ReadingId.LOAD_OHMS, 3.9));
    Observation before =
        new Observation(
            Target.loaded("stereo-2", Mode.STEREO, 2), Map.of(ReadingId.OUTPUT_VOLTS, 13.0));
    Forecast without = forecaster.forecast(evidence(List.of(before)), STEREO_4);
    Forecast with = forecaster.forecast(evidence(List.of(before, cold)), STEREO_4);
    assertEquals(without.readings(), with.readings());
    Observation volts = new Observation(STEREO_4, Map.of(ReadingId.OUTPUT_VOLTS, 17.0));
    assertNotEquals(
        band(evidence(List.of()), STEREO_4, ReadingId.OUTPUT_VOLTS),
        band(evidence(List.of(volts)), STEREO_4, ReadingId.OUTPUT_VOLTS));
  }

  private Band band(Evidence evidence, Target target, ReadingId id) {
    return forecaster.forecast(evidence, target).band(id).orElseThrow();
  }

  private static Evidence evidence(List<Observation> observations) {
    return new Evidence(
        AMPLIFIER, Bench.unknown(), new Evidence.Conditions(40, 1, 13.8), observations);
  }
}
