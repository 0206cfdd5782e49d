package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Hold;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.Mount;
import loadwalk.bench.ResistorDerating;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import org.junit.jupiter.api.Test;

/** What the resistors and the leads of a bench bear, without any wiring known. */
class LoadBankTest {
  private static final ResistorDerating DERATING = new ResistorDerating(Tables.stock());
  private static final Wire WIRE = new Wire(Tables.stock());

  /** A heatsink that stays as cold as the air: a resistor on it bears its rating. */
  private static final Mount COLD = Mount.heatsink(1e-9);

  private static final LoadResistor SIXTEEN =
      new LoadResistor("4 ohm", 4, 5, 100, 16, OptionalDouble.empty()).on(COLD);
  private static final LoadResistor FOUR =
      new LoadResistor("8 ohm", 8, 5, 50, 8, OptionalDouble.empty()).on(COLD);

  /** 2000 W of resistors: 200 W in each of two loads is a fifth of every rating. */
  @Test
  void evenly_sharesTheWattsOfBothLoads_byRating() {
    LoadBank.Hottest hottest =
        LoadBank.evenly(DERATING)
            .hottest(bench(SIXTEEN, FOUR), Mode.STEREO, 4, 200, Hold.CONTINUOUS)
            .orElseThrow();
    assertEquals("4 ohm", hottest.label());
    assertEquals(20, hottest.watts(), 1e-6);
    assertEquals(100, hottest.ratedWatts());
    assertEquals(0.2, hottest.share(), 1e-6);
  }

  /** Catalogue pairs: 100 W bear 50 W in free air, so 16 of them 800 W; 8 of 50 W bear 160 W. */
  @Test
  void evenly_sharesTheWatts_byWhatEachBears() {
    Mount air = Mount.of(Mount.Kind.FREE_AIR);
    LoadBank.Hottest hottest =
        LoadBank.evenly(DERATING)
            .hottest(bench(SIXTEEN.on(air), FOUR.on(air)), Mode.BRIDGED, 4, 480, Hold.CONTINUOUS)
            .orElseThrow();
    assertEquals(25, hottest.watts(), 1e-6);
    assertEquals(50, hottest.mostWatts(), 1e-6);
    assertEquals(0.5, hottest.share(), 1e-6);
  }

  @Test
  void evenly_bridged_heatsOneLoad() {
    LoadBank.Hottest hottest =
        LoadBank.evenly(DERATING)
            .hottest(bench(FOUR), Mode.BRIDGED, 4, 200, Hold.CONTINUOUS)
            .orElseThrow();
    assertEquals(0.5, hottest.share(), 1e-6);
    assertEquals(25, hottest.watts(), 1e-6);
  }

  @Test
  void evenly_withoutResistors_isNotTold() {
    assertTrue(
        LoadBank.evenly(DERATING).hottest(bench(), Mode.STEREO, 4, 200, Hold.CONTINUOUS).isEmpty());
  }

  /** ASTM B258: 0.815153 mΩ/m of AWG 4 at 20 °C; copper at 50 °C has 1.1179 of that. */
  @Test
  void leads_inSeries_addUp_atWorkingTemperature() {
    Lead half = new Lead("plus", new Lead.Awg(4), 0.5, 1);
    Lead other = new Lead("minus", new Lead.Awg(4), 1.5, 1);
    Bench bench =
        new Bench(
            "b", List.of(), List.of(half, other), OptionalDouble.empty(), List.of(), List.of(), 1);
    assertEquals(2 * 0.815153e-3 * 1.1179, WIRE.ohms(bench).orElseThrow(), 1e-6);
    assertTrue(WIRE.ohms(bench()).isEmpty());
  }

  private static Bench bench(LoadResistor... loads) {
    return new Bench(
        "b", List.of(), List.of(), OptionalDouble.empty(), List.of(loads), List.of(), 1);
  }
}
