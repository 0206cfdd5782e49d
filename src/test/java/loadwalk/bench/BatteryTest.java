package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Checks the battery against figures worked by hand. */
class BatteryTest {
  private static final Battery STARTER =
      new Battery(12.7, new Battery.Milliohms(5), OptionalDouble.of(60));

  /** 12.7 V − 100 A · 5 mΩ = 12.2 V; 10.5 V at (12.7 − 10.5)/5 mΩ = 440 A; 24 V: 21 V are empty. */
  @Test
  void volts_fallByOhmsLaw_toThoseOfAnEmptyBattery() {
    assertEquals(12.2, STARTER.volts(100), 1e-12);
    assertEquals(440, STARTER.mostAmps(), 1e-9);
    assertEquals(10.5, STARTER.volts(STARTER.mostAmps()), 1e-12);
    assertEquals(0, STARTER.volts(5000));
    Battery truck = new Battery(25.4, new Battery.Milliohms(5), OptionalDouble.empty());
    assertEquals(21, truck.emptyVolts(), 1e-12);
    Battery small = new Battery(6.3, new Battery.Milliohms(5), OptionalDouble.empty());
    assertEquals(5.25, small.emptyVolts(), 1e-12);
  }

  /** 600 A hold 7.2 V: (12.7 − 7.2) V/600 A = 9.17 mΩ cold, half of it warm. */
  @Test
  void ohms_ofAColdCrankingLabel_areThoseOfTheTestHalved() {
    Battery labelled = new Battery(12.7, new Battery.ColdCranking(600), OptionalDouble.empty());
    assertEquals(4.5833e-3, labelled.ohms(), 1e-7);
  }

  /** 60 Ah: 3 A for 20 h; a hundred amperes 20 h · 0.03^1.2 = 20 h · 0.014878 = 17.85 min. */
  @Test
  void time_followsPeukert() {
    assertEquals(72_000, STARTER.lastsSeconds(3).orElseThrow(), 1e-6);
    assertEquals(17.85 * 60, STARTER.lastsSeconds(100).orElseThrow(), 1);
    assertTrue(STARTER.lastsSeconds(Double.NaN).isEmpty());
    Battery unknown = new Battery(12.7, new Battery.Milliohms(5), OptionalDouble.empty());
    assertTrue(unknown.lastsSeconds(100).isEmpty());
  }

  /** Millman by hand: 12.7 V behind 5 mΩ beside 12.4 V behind 10 mΩ are 12.6 V behind 3.33 mΩ. */
  @Test
  void batteriesInParallel_areOneSource_andTheShortestEndsIt() {
    Battery weak = new Battery(12.4, new Battery.Milliohms(10), OptionalDouble.of(20));
    Bench bench = bench(Supply.of(STARTER), Supply.of(weak));
    Source source = bench.source().orElseThrow();
    assertEquals(12.6, source.volts(), 1e-12);
    assertEquals(0.01 / 3, source.ohms(), 1e-12);
    assertEquals(12.6 - 150 * 0.01 / 3, source.voltsBehind(0, 150), 1e-12);
    assertEquals(0, source.voltsBehind(1, 150), "never below nothing");
    // 150 A part as 100 A and 50 A.
    double shorter = Math.min(1071, weak.lastsSeconds(50).orElseThrow());
    assertEquals(shorter, bench.batterySeconds(150).orElseThrow(), 1);
    assertTrue(bench.onBattery());
    assertTrue(bench.setVolts().isEmpty());
    assertTrue(bench(new Supply(13.8, 60)).batterySeconds(10).isEmpty());
    assertTrue(Bench.unknown().batterySeconds(10).isEmpty());
  }

  @Test
  void supplies_holdTheirVolts() {
    Bench bench = bench(new Supply(13.8, 60), new Supply(13.6, 60));
    assertEquals(new Source(13.8, 0), bench.source().orElseThrow());
    assertEquals(OptionalDouble.of(13.8), bench.setVolts());
  }

  private static Bench bench(Supply... supplies) {
    return new Bench(
        "b", List.of(supplies), List.of(), OptionalDouble.empty(), List.of(), List.of(), 1);
  }
}
