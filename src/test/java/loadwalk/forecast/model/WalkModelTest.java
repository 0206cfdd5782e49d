package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import org.junit.jupiter.api.Test;

/** What the amplifier's plate and the bench alone say to the forecast. */
class WalkModelTest {
  private static final double ENDLESS = Double.POSITIVE_INFINITY;
  private static final OptionalDouble NONE = OptionalDouble.empty();

  /** Supplies that gave more than 110 % of their rating are not what they say. */
  @Test
  void deliverableAmps_areTheSuppliesTogether_untilTheyGaveMore() {
    assertEquals(90, deliverable(new Supply(13.8, 50), new Supply(13.8, 40)));
    assertEquals(ENDLESS, deliverable());
    assertEquals(13, deliverable(new Supply(13.8, 13)), "14 A are 108 %");
    assertEquals(ENDLESS, deliverable(new Supply(13.8, 12)), "14 A are 117 %");
  }

  private static double deliverable(Supply... supplies) {
    Bench bench = new Bench("b", List.of(supplies), List.of(), NONE, List.of(), List.of(), 0.9);
    Map<ReadingId, Double> readings =
        Map.of(ReadingId.OUTPUT_VOLTS, 14.9, ReadingId.SUPPLY_AMPS, 14.0);
    Observation read = new Observation(Amplifiers.STEREO_4, readings);
    return new WalkModel(
            new Evidence(Amplifiers.rated(50), bench, Amplifiers.CONDITIONS, List.of(read)))
        .deliverableAmps();
  }

  /** The current of a load measured without the supply volts comes again, however these sag. */
  @Test
  void currentReadWithoutSupplyVolts_comesAgain() {
    for (boolean later : new boolean[] {false, true}) {
      List<Observation> walk = new ArrayList<>();
      double[][] read = {{4, 15, 14}, {2, 14.6, 27}, {1, 13.9, 52}};
      for (double[] r : read) {
        walk.add(
            new Observation(
                Target.loaded("stereo-" + r[0], Mode.STEREO, r[0]),
                Map.of(ReadingId.OUTPUT_VOLTS, r[1], ReadingId.SUPPLY_AMPS, r[2])));
      }
      if (later) {
        walk.add(new Observation(Amplifiers.IDLE, Map.of(ReadingId.SUPPLY_VOLTS, 13.6)));
      }
      WalkModel model = new WalkModel(Amplifiers.evidence(Amplifiers.rated(50), walk));
      for (double[] r : read) {
        Target again = Target.loaded("again", Mode.STEREO, r[0]);
        double told = model.bands(again).bands().get(ReadingId.SUPPLY_AMPS).middle();
        assertEquals(1, told / r[2], 0.015, r[0] + " ohms");
      }
    }
  }

  /** A rating at 14.4 V holds at 13.8 V where the rails are regulated, else it follows. */
  @Test
  void regulatedRails_keepTheRatedVolts() {
    double rated = Math.log(Math.sqrt(200));
    double shift = Math.log(14.4 / 13.8);
    double tail = 0.003;
    assertEquals(rated - 0.03 * shift * (1 - tail), logVolts(Optional.of(true)), 1e-9);
    assertEquals(rated - 0.97 * shift * (1 - tail), logVolts(Optional.of(false)), 1e-9);
    assertEquals(rated - 0.65 * shift * (1 - tail), logVolts(Optional.empty()), 1e-9);
  }

  private static double logVolts(Optional<Boolean> regulated) {
    Rating rating = new Rating(Mode.STEREO, 4, 50, OptionalDouble.of(14.4), NONE);
    return model(List.of(rating), NONE, NONE, regulated).output().predict(4, false, 0).mean();
  }

  /** Below the least load a limit is more likely, so the volts are told lower. */
  @Test
  void leastLoad_isTheOneStated_orElseTheLeastRated_orTwoOhms() {
    double stated = atOneOhm(OptionalDouble.of(1), NONE);
    assertEquals(stated, atOneOhm(NONE, OptionalDouble.of(2)), 1e-12, "half of it a channel");
    assertEquals(stated, atOneOhm(OptionalDouble.of(4), OptionalDouble.of(2)), 1e-12);
    assertEquals(atOneOhm(OptionalDouble.of(4), NONE), atOneOhm(NONE, NONE), 1e-12, "as rated");
    assertTrue(stated > atOneOhm(OptionalDouble.of(2), NONE));
    assertTrue(atOneOhm(OptionalDouble.of(2), NONE) > atOneOhm(NONE, NONE));
  }

  private static double atOneOhm(OptionalDouble stereo, OptionalDouble bridged) {
    Rating rating = new Rating(Mode.STEREO, 4, 50, NONE, NONE);
    WalkModel model = model(List.of(rating), stereo, bridged, Optional.empty());
    return model.output().predict(1, false, 0).mean();
  }

  @Test
  void leastLoad_ofAnAmplifierWithoutRatings_isTwoOhms() {
    Observation read = new Observation(Amplifiers.STEREO_4, Map.of(ReadingId.OUTPUT_VOLTS, 14.9));
    double told = measured(NONE, read).output().predict(1, false, 0).mean();
    assertEquals(
        measured(OptionalDouble.of(2), read).output().predict(1, false, 0).mean(), told, 1e-12);
  }

  private static WalkModel measured(OptionalDouble least, Observation read) {
    Amplifier amplifier = Amplifiers.with(List.of(), least, NONE, List.of(), Optional.empty());
    return new WalkModel(Amplifiers.evidence(amplifier, List.of(read)));
  }

  /** 50 W a channel at 60 % from 13.8 V are 12.1 A, at which a supply usually sags by 0.15 V. */
  @Test
  void supply_isExpectedToSuitTheAmplifier() {
    double usual = 2 * 50 / (0.6 * 13.8);
    WalkModel model = new WalkModel(Amplifiers.evidence(Amplifiers.rated(50), List.of()));
    assertEquals(13.8 - 0.15, model.sag().volts(usual), 1e-6);
    WalkModel small = new WalkModel(Amplifiers.evidence(Amplifiers.rated(5), List.of()));
    assertEquals(13.8 - 0.15, small.sag().volts(3), 1e-9, "no less than 3 A");
  }

  /** Where nobody reads the amperes, those that the outputs tell carry the sag to heavier loads. */
  @Test
  void supply_isTold_withoutAmperes_byTheOutputs() {
    double read = sag(true, Optional.empty());
    assertEquals(read, sag(false, Optional.empty()), 0.1);
    double fresh =
        new WalkModel(Amplifiers.evidence(Amplifiers.rated(50), List.of())).sag().volts(50);
    assertTrue(read < fresh - 0.3, read + " and " + fresh);
  }

  @Test
  void supply_isNotTold_byStepsWithoutOutput() {
    Map<ReadingId, Double> supplyAlone = Map.of(ReadingId.SUPPLY_VOLTS, 12.9);
    double fresh = sag(false, Optional.empty());
    Observation none = new Observation(Amplifiers.STEREO_1, supplyAlone);
    assertEquals(fresh, sag(false, Optional.of(none)), 1e-12);
    Target half = new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5);
    Map<ReadingId, Double> part = Map.of(ReadingId.SUPPLY_VOLTS, 12.9, ReadingId.OUTPUT_VOLTS, 9.0);
    assertEquals(fresh, sag(false, Optional.of(new Observation(half, part))), 1e-12);
  }

  /** Returns the supply volts told at 50 A after three loads that sag by 20 mΩ. */
  private static double sag(boolean withAmps, Optional<Observation> more) {
    List<Observation> walk = new ArrayList<>();
    for (Target step :
        List.of(Amplifiers.IDLE, Amplifiers.STEREO_4, Amplifiers.STEREO_2, Amplifiers.STEREO_1)) {
      Map<ReadingId, Double> readings = Amplifiers.readings(step);
      readings.put(ReadingId.SUPPLY_VOLTS, 13.8 - 0.02 * readings.get(ReadingId.SUPPLY_AMPS));
      if (!withAmps) {
        readings.remove(ReadingId.SUPPLY_AMPS);
      }
      walk.add(new Observation(step, readings));
    }
    more.ifPresent(walk::add);
    return new WalkModel(Amplifiers.evidence(Amplifiers.rated(50), walk)).sag().volts(50);
  }

  private static WalkModel model(
      List<Rating> ratings,
      OptionalDouble stereo,
      OptionalDouble bridged,
      Optional<Boolean> regulated) {
    return new WalkModel(
        Amplifiers.evidence(
            Amplifiers.with(ratings, stereo, bridged, List.of(), regulated), List.of()));
  }
}
