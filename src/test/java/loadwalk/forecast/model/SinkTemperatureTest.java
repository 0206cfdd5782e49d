package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Warmth;
import org.junit.jupiter.api.Test;

/** Common practice, no source: how far a heatsink goes from one step to the next. */
class SinkTemperatureTest {
  private static final Target WARM_UP =
      new Target("warm-up", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5);
  private static final List<Observation> TWICE =
      List.of(at(Amplifiers.IDLE, 30), at(Amplifiers.STEREO_4, 48));

  @Test
  void band_isAroundTheReadingTakenLast() {
    Band band = band(TWICE, Amplifiers.STEREO_2).orElseThrow();
    assertEquals(49, band.middle());
    assertTrue(band.holds(40) && band.holds(62), "8 K less, 14 K more");
    assertFalse(band.holds(38) || band.holds(64));
  }

  @Test
  void band_reachesFurtherUp_inAWarmUp() {
    Band warm = band(TWICE, WARM_UP).orElseThrow();
    assertTrue(warm.holds(40) && warm.holds(88));
    assertFalse(warm.holds(38) || warm.holds(93));
  }

  @Test
  void band_ofASecondWarmUp_isAroundWhereTheFirstSettled() {
    Band warm = band(TWICE, WARM_UP, new Warmth(OptionalDouble.of(54.7), 0.4, false)).orElseThrow();
    assertEquals(54.7, warm.middle());
    assertTrue(warm.holds(40) && warm.holds(62), "from the last reading to the end");
    assertFalse(warm.holds(38) || warm.holds(64), "and not three rises beyond");
  }

  @Test
  void band_afterARest_reachesDownToTheAir() {
    Warmth cooled = new Warmth(OptionalDouble.of(54.7), 0.4, true);
    assertTrue(band(TWICE, Amplifiers.STEREO_2, cooled).orElseThrow().holds(12), "air unread");
    List<Observation> inAir = new ArrayList<>(TWICE);
    inAir.add(new Observation(Amplifiers.IDLE, Map.of(ReadingId.AMBIENT_CELSIUS, 24.0)));
    Band rested = band(inAir, Amplifiers.STEREO_2, cooled).orElseThrow();
    assertTrue(rested.holds(22) && !rested.holds(20), "no colder than the air");
    assertTrue(band(inAir, WARM_UP, cooled).orElseThrow().holds(22));
  }

  @Test
  void band_withoutAReading_isNotTold() {
    Observation other = new Observation(Amplifiers.IDLE, Map.of(ReadingId.SUPPLY_AMPS, 1.9));
    assertTrue(band(List.of(), Amplifiers.STEREO_2).isEmpty());
    assertTrue(band(List.of(other), Amplifiers.STEREO_2).isEmpty());
    List<Observation> olderOnly = List.of(at(Amplifiers.IDLE, 30), other);
    assertEquals(31, band(olderOnly, Amplifiers.STEREO_2).orElseThrow().middle());
  }

  private static Optional<Band> band(List<Observation> walk, Target target) {
    return band(walk, target, Warmth.UNKNOWN);
  }

  private static Optional<Band> band(List<Observation> walk, Target target, Warmth warmth) {
    Evidence plain = Amplifiers.evidence(Amplifiers.rated(50), walk);
    WalkModel model =
        new WalkModel(
            new Evidence(
                plain.amplifier(), plain.bench(), plain.conditions(), walk, List.of(), warmth));
    return Optional.ofNullable(model.bands(target).bands().get(ReadingId.SINK_CELSIUS));
  }

  private static Observation at(Target target, double celsius) {
    return new Observation(target, Map.of(ReadingId.SINK_CELSIUS, celsius));
  }
}
