package loadwalk.plan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Hold;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.Mount;
import loadwalk.bench.Tables;
import loadwalk.forecast.LoadBank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How hard a load is worked by the wiring chosen for it, and for how long it may be. */
class WiringLoadBankTest {
  private static final Tables TABLES = Tables.stock();

  /** A heatsink that stays as cold as the air: a resistor on it bears its rating. */
  private static final Mount COLD = Mount.heatsink(1e-9);

  private final WiringLoadBank bank = new WiringLoadBank(TABLES);

  private static LoadResistor kind(double ohms, double watts, int count) {
    return new LoadResistor((int) ohms + " ohm", ohms, 5, watts, count, OptionalDouble.empty())
        .on(COLD);
  }

  private static Bench bench(LoadResistor... loads) {
    return new Bench(
        "b", List.of(), List.of(), OptionalDouble.empty(), List.of(loads), List.of(), 1);
  }

  private WiringAnswer.Found found(Mode mode, double ohms, double watts, LoadResistor... stock) {
    WiringAnswer answer = bank.wiring(List.of(stock), mode, ohms, watts);
    return answer.wired().orElseThrow(() -> new AssertionError(answer));
  }

  /**
   * Watts are rounded up to two digits, never down: a wiring for 150 W that gets 150.1 W takes more
   * than its continuous share. By hand: two 8 Ω of 100 W take 150 W continuously.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-3, 0",
    "NaN, 0",
    "1, 1",
    "1.01, 1.1",
    "99.1, 100",
    "100, 100",
    "101, 110",
    "149.9, 150",
    "150, 150",
    "150.1, 160",
    "0.0123, 0.013"
  })
  void watts_areRoundedUp(double watts, double asked) {
    LoadResistor[] stock = {kind(8, 100, 2), kind(12, 100, 3)};
    WiringAnswer.Found found = found(Mode.BRIDGED, 4, watts, stock);
    assertEquals(asked, found.request().watts());
    assertEquals(asked > 150 ? 3 : 2, found.loads().get(0).parts().size());
  }

  /**
   * By hand, one 4 Ω of 100 W: 75 W for ever; 250 W for the ten seconds of a reading (5 · 5 / 10 =
   * 2.5 times); 500 W for five seconds; above that nothing.
   */
  @ParameterizedTest
  @CsvSource({"75, 0.75", "76, 2.5", "250, 2.5", "251, 5", "500, 5"})
  void shareOfTheRating_isTheSmallestThatIsEnough(double watts, double share) {
    assertEquals(share, found(Mode.BRIDGED, 4, watts, kind(4, 100, 1)).request().share(), 1e-12);
  }

  @Test
  void overloadBeyondEveryBurst_saysWhatTheResistorsTakeForEver() {
    WiringAnswer.None none =
        bank.wiring(List.of(kind(4, 100, 1)), Mode.BRIDGED, 4, 501).lacking().orElseThrow();
    assertEquals(
        "All resistors together take 75 W at 75 % of their ratings. The step needs 510 W.",
        none.sentence());
    assertTrue(none.purchase().isPresent());
  }

  /** A reading is short, but a burst of five seconds is shorter still: the longer one is chosen. */
  @Test
  void wiringThatLastsLonger_isPreferred_thoughItTakesMoreResistors() {
    LoadResistor[] stock = {kind(4, 100, 1), kind(8, 100, 2)};
    assertEquals(2, found(Mode.BRIDGED, 4, 150, stock).loads().get(0).parts().size());
    assertEquals(1, found(Mode.BRIDGED, 4, 200, stock).loads().get(0).parts().size());
    assertEquals(2, found(Mode.BRIDGED, 4, 300, stock).loads().get(0).parts().size());
  }

  @Test
  void burst_followsTheOperatorsTable() {
    String rows =
        "key,value,unit,source,how\n"
            + "resistor-burst-multiple,2,1,x,read\nresistor-burst-seconds,30,s,x,read\n";
    WiringLoadBank own = new WiringLoadBank(TABLES.with("limits.csv", rows));
    List<LoadResistor> stock = List.of(kind(4, 100, 1));
    assertEquals(2, own.wiring(stock, Mode.BRIDGED, 4, 76).wired().orElseThrow().request().share());
    assertEquals(Optional.empty(), own.wiring(stock, Mode.BRIDGED, 4, 201).wired());
  }

  @Test
  void stereo_wiresTwoLoads_ofDifferentResistors() {
    WiringAnswer.Found two = found(Mode.STEREO, 4, 50, kind(4, 100, 2));
    assertEquals(
        List.of("4 ohm #1", "4 ohm #2"), two.loads().stream().map(Network::formula).toList());
    assertEquals(
        Optional.empty(), bank.wiring(List.of(kind(4, 100, 1)), Mode.STEREO, 4, 50).wired());
    assertEquals(1, found(Mode.BRIDGED, 4, 50, kind(4, 100, 2)).loads().size());
  }

  /** By hand: 8 Ω and 24 Ω in parallel are 6 Ω and share 120 W as 90 and 30 W. */
  @Test
  void hottest_isTheOneNearestItsRating() {
    LoadBank.Hottest hottest =
        bank.hottest(bench(kind(8, 200, 1), kind(24, 50, 1)), Mode.BRIDGED, 6, 120, Hold.CONTINUOUS)
            .orElseThrow();
    assertEquals("24 ohm #1", hottest.label());
    assertEquals(30, hottest.watts(), 1e-9);
    assertEquals(50, hottest.ratedWatts());
    assertEquals(0.6, hottest.share(), 1e-6);
    LoadBank.Hottest other =
        bank.hottest(bench(kind(8, 100, 1), kind(24, 50, 1)), Mode.BRIDGED, 6, 120, Hold.CONTINUOUS)
            .orElseThrow();
    assertEquals("8 ohm #1", other.label());
    assertEquals(0.9, other.share(), 1e-6);
  }

  /** Of two loads the hotter counts: 100 W are 1.0 of one resistor and 0.5 of the other. */
  @Test
  void hottest_ofTwoLoads_isThatOfTheHotter() {
    Bench bench =
        bench(
            kind(4, 200, 1),
            new LoadResistor("four", 4, 5, 100, 1, OptionalDouble.empty()).on(COLD));
    LoadBank.Hottest hottest =
        bank.hottest(bench, Mode.STEREO, 4, 100, Hold.CONTINUOUS).orElseThrow();
    assertEquals("four #1", hottest.label());
    assertEquals(1, hottest.share(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"0, 10", "-1, 10", "NaN, 10", "Infinity, 10", "4, -1", "4, NaN"})
  void hottest_ofNoLoadAtAll_isUnknown(double ohms, double watts) {
    assertEquals(
        Optional.empty(),
        bank.hottest(bench(kind(4, 100, 1)), Mode.BRIDGED, ohms, watts, Hold.CONTINUOUS));
  }

  @Test
  void hottest_withoutAStockOrAWiring_isUnknown() {
    assertEquals(
        Optional.empty(), bank.hottest(Bench.unknown(), Mode.BRIDGED, 4, 10, Hold.CONTINUOUS));
    assertEquals(
        Optional.empty(),
        bank.hottest(bench(kind(4, 100, 1)), Mode.BRIDGED, 1, 10, Hold.CONTINUOUS));
    assertEquals(
        0,
        bank.hottest(bench(kind(4, 100, 1)), Mode.BRIDGED, 4, 0, Hold.CONTINUOUS)
            .orElseThrow()
            .watts());
  }

  /**
   * A stock too large to search, and watts that no wiring could take, are spread evenly: no wiring
   * does better, so what is too much then is too much.
   */
  @ParameterizedTest
  @CsvSource({
    "200, 30000, 0.75, 8 ohm #1",
    "201, 30150, 0.75, 8 ohm",
    "8, 1590, 0.99375, 8 ohm #1",
    "8, 1610, 1.00625, 8 ohm"
  })
  void hottest_whereNothingCanBeSearched_isOfAnEvenSpread(
      int count, double watts, double share, String label) {
    LoadBank.Hottest hottest =
        bank.hottest(bench(kind(8, 200, count)), Mode.BRIDGED, 8.0 / count, watts, Hold.CONTINUOUS)
            .orElseThrow();
    assertEquals(label, hottest.label());
    assertEquals(share, hottest.share(), 1e-6);
  }

  @Test
  void stockTooLarge_isASentence() {
    IllegalArgumentException told =
        assertThrows(
            IllegalArgumentException.class,
            () -> bank.wiring(List.of(kind(8, 100, 201)), Mode.BRIDGED, 4, 10));
    assertTrue(told.getMessage().startsWith("the stock holds 201 resistors"), told.getMessage());
  }
}
