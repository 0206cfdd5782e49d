package loadwalk.forecast.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.Observation;
import org.junit.jupiter.api.Test;

class WalkReadingsTest {
  private static final Target STEREO_4 = Amplifiers.STEREO_4;

  /** Each bridged channel sees half the load with half the volts across it. */
  @Test
  void point_ofABridgedStep_isHalfTheVoltsIntoHalfTheLoad() {
    WalkReadings.Point point =
        onlyPoint(Amplifiers.BRIDGED_4, Map.of(ReadingId.OUTPUT_VOLTS, 26.0));
    assertEquals(2, point.channelOhms());
    assertEquals(Math.log(13), point.logVolts(), 1e-12);
    assertTrue(point.bridged());
    WalkReadings.Point stereo = onlyPoint(STEREO_4, Map.of(ReadingId.OUTPUT_VOLTS, 13.0));
    assertEquals(4, stereo.channelOhms());
    assertEquals(Math.log(13), stereo.logVolts(), 1e-12);
    assertFalse(stereo.bridged());
  }

  @Test
  void point_keepsTheSupply_whereItWasRead() {
    Map<ReadingId, Double> readings =
        Map.of(
            ReadingId.OUTPUT_VOLTS,
            13.0,
            ReadingId.SUPPLY_VOLTS,
            13.6,
            ReadingId.SUPPLY_AMPS,
            14.0);
    WalkReadings.Point point = onlyPoint(STEREO_4, readings);
    assertEquals(13.6, point.supplyVolts());
    assertEquals(14, point.supplyAmps());
    WalkReadings.Point none =
        onlyPoint(STEREO_4, Map.of(ReadingId.OUTPUT_VOLTS, 13.0, ReadingId.SUPPLY_AMPS, 0.0));
    assertTrue(Double.isNaN(none.supplyVolts()) && Double.isNaN(none.supplyAmps()));
  }

  /** V = √(P R). */
  @Test
  void volts_areTakenFromWatts_whereOnlyTheseWereRead() {
    assertEquals(20, WalkReadings.volts(Map.of(ReadingId.OUTPUT_WATTS, 100.0), 4), 1e-12);
    Map<ReadingId, Double> both = Map.of(ReadingId.OUTPUT_WATTS, 1.0, ReadingId.OUTPUT_VOLTS, 13.0);
    assertEquals(13, WalkReadings.volts(both, 4));
    assertEquals(0, WalkReadings.volts(Map.of(ReadingId.OUTPUT_WATTS, 0.0), 4));
    assertTrue(Double.isNaN(WalkReadings.volts(Map.of(ReadingId.OUTPUT_WATTS, -1.0), 4)));
    assertTrue(Double.isNaN(WalkReadings.volts(Map.of(), 4)));
  }

  @Test
  void points_areOfLoadedStepsWithAnOutput_only() {
    Map<ReadingId, Double> volts = Map.of(ReadingId.OUTPUT_VOLTS, 13.0);
    assertEquals(List.of(), points(Amplifiers.IDLE, volts));
    assertEquals(
        List.of(), points(new Target("w", Target.Kind.WARM_UP, Mode.STEREO, 4, 0.5), volts));
    assertEquals(List.of(), points(Target.loaded("x", Mode.STEREO, Double.NaN), volts));
    assertEquals(List.of(), points(STEREO_4, Map.of(ReadingId.OUTPUT_VOLTS, 0.0)));
    assertEquals(List.of(), points(STEREO_4, Map.of(ReadingId.SUPPLY_AMPS, 14.0)));
  }

  @Test
  void points_areTheNewestFourteen() {
    List<Observation> walk = new ArrayList<>();
    for (int i = 1; i <= 16; i++) {
      walk.add(new Observation(STEREO_4, Map.of(ReadingId.OUTPUT_VOLTS, (double) i)));
    }
    List<WalkReadings.Point> points = WalkReadings.points(evidence(walk));
    assertEquals(14, points.size());
    assertEquals(Math.log(3), points.get(0).logVolts(), 1e-12);
    assertEquals(Math.log(16), points.get(13).logVolts(), 1e-12);
  }

  @Test
  void loadMeasured_isReckonedWith_whereItMayBeTheOneAskedFor() {
    assertEquals(4.1, loadOhms(4.1));
    assertEquals(3.8, loadOhms(3.8), "5 % off is within the usual tolerance");
    assertEquals(4, loadOhms(4.3));
    assertEquals(4, loadOhms(2.0));
    assertEquals(4, WalkReadings.loadOhms(Bench.unknown(), STEREO_4, Map.of()));
  }

  /** The tolerance is the stock's where that is wider, and the meter's comes on top. */
  @Test
  void loadBand_isTheToleranceAndTheMeters() {
    assertEquals(0.2, halfWidth(Bench.unknown()), 1e-6);
    assertEquals(0.4, halfWidth(bench(4.03, 10, List.of())), 1e-6);
    assertEquals(0.2, halfWidth(bench(4.03, 1, List.of())), 1e-6);
    assertEquals(0.2, halfWidth(bench(4.05, 10, List.of())), 1e-6, "another nominal value");
    Meter meter = new Meter("m", ReadingId.LOAD_OHMS, 1, 2, 0.01, Optional.empty());
    assertEquals(0.2 + 0.06, halfWidth(bench(8, 5, List.of(meter))), 1e-6);
  }

  @Test
  void idleAmps_areTheOnesReadLast() {
    Observation first = new Observation(Amplifiers.IDLE, Map.of(ReadingId.SUPPLY_AMPS, 1.9));
    Observation last = new Observation(Amplifiers.IDLE, Map.of(ReadingId.SUPPLY_AMPS, 1.7));
    Observation volts = new Observation(Amplifiers.IDLE, Map.of(ReadingId.SUPPLY_VOLTS, 13.8));
    Observation loaded = new Observation(STEREO_4, Map.of(ReadingId.SUPPLY_AMPS, 14.0));
    List<Observation> walk = List.of(first, last, volts, loaded);
    assertEquals(OptionalDouble.of(1.7), WalkReadings.idleAmps(evidence(walk)));
    assertEquals(OptionalDouble.empty(), WalkReadings.idleAmps(evidence(List.of(loaded))));
  }

  private static double loadOhms(double measured) {
    return WalkReadings.loadOhms(Bench.unknown(), STEREO_4, Map.of(ReadingId.LOAD_OHMS, measured));
  }

  private static double halfWidth(Bench bench) {
    Band band = WalkReadings.loadBand(bench, 4);
    assertEquals(4, band.middle());
    assertEquals(band.high() - 4, 4 - band.low(), 1e-12);
    return band.high() - 4;
  }

  private static Bench bench(double ohms, double percent, List<Meter> meters) {
    LoadResistor load = new LoadResistor("r", ohms, percent, 100, 4, OptionalDouble.empty());
    return new Bench("b", List.of(), List.of(), OptionalDouble.empty(), List.of(load), meters, 0.9);
  }

  private static WalkReadings.Point onlyPoint(Target target, Map<ReadingId, Double> readings) {
    List<WalkReadings.Point> points = points(target, readings);
    assertEquals(1, points.size());
    return points.get(0);
  }

  private static List<WalkReadings.Point> points(Target target, Map<ReadingId, Double> readings) {
    return WalkReadings.points(evidence(List.of(new Observation(target, readings))));
  }

  private static Evidence evidence(List<Observation> walk) {
    return Amplifiers.evidence(Amplifiers.rated(50), walk);
  }
}
