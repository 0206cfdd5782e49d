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
    WiringAnswer answer = bank.wiring(List.of(stock), mode, ohms, watts, Hold.CONTINUOUS);
    return answer.wired().orElseThrow(() -> new AssertionError(answer));
  }

  /**
   * Watts are rounded up to two digits, never down: a wiring for 190 W that gets 190.1 W takes more
   * than its continuous watts. By hand: two 8 Ω bear just less than 200 W.
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
    "189.9, 190",
    "190, 190",
    "190.1, 200",
    "0.0123, 0.013"
  })
  void watts_areRoundedUp(double watts, double asked) {
    LoadResistor[] stock = {kind(8, 100, 2), kind(12, 100, 3)};
    WiringAnswer.Found found = found(Mode.BRIDGED, 4, watts, stock);
    assertEquals(asked, found.request().watts());
    assertEquals(asked > 190 ? 3 : 2, found.loads().get(0).parts().size());
  }

  /**
   * By hand, one 4 Ω of 100 W that bears 100 W for ever, 107 W for a reading, 500 W for five
   * seconds; two 8 Ω beside it bear twice that.
   */
  @ParameterizedTest
  @CsvSource({
    "99, 60, 1", "100, 60, 1", "108, 60, 2", "99, Infinity, 1", "110, Infinity, 2",
    "210, 60, 2", "220, 60, 2", "480, 60, 2", "900, 60, 2", "1100, 60, 0"
  })
  void fewestThatBearTheHold_areTaken_elseThoseThatLastLongest(
      double watts, double seconds, int resistors) {
    WiringAnswer answer =
        bank.wiring(
            List.of(kind(4, 100, 1), kind(8, 100, 2)), Mode.BRIDGED, 4, watts, new Hold(seconds));
    assertEquals(
        resistors, answer.wired().map(found -> found.loads().get(0).parts().size()).orElse(0));
  }

  /** No more resistors than needed: 140 W in each of two loads of 4 Ω, from two of 4 Ω, 300 W. */
  @Test
  void twoResistorsThatBearIt_areTaken_notEight() {
    LoadResistor air =
        new LoadResistor("4R", 4, 5, 300, 2, OptionalDouble.empty())
            .on(Mount.of(Mount.Kind.FREE_AIR));
    LoadResistor others = new LoadResistor("8R", 8, 5, 100, 8, OptionalDouble.empty()).on(COLD);
    List<LoadResistor> stock = List.of(others, air);
    WiringAnswer.Found reading =
        bank.wiring(stock, Mode.STEREO, 4, 250, new Hold(60)).wired().orElseThrow();
    assertEquals(List.of("4R-a", "4R-b"), reading.loads().stream().map(Network::formula).toList());
    WiringAnswer.Found warm =
        bank.wiring(stock, Mode.STEREO, 4, 150, Hold.CONTINUOUS).wired().orElseThrow();
    assertEquals(4, warm.loads().stream().mapToInt(n -> n.parts().size()).sum(), "75 W in air");
  }

  @Test
  void overloadBeyondEveryBurst_saysWhatTheResistorsBear() {
    WiringAnswer.None none =
        bank.wiring(List.of(kind(4, 100, 1)), Mode.BRIDGED, 4, 501, Hold.CONTINUOUS)
            .lacking()
            .orElseThrow();
    assertEquals("All resistors together bear 100 W. The step needs 510 W.", none.sentence());
    assertTrue(none.purchase().isPresent());
  }

  @Test
  void burst_followsTheOperatorsTable() {
    String rows =
        "key,value,unit,source,how\n"
            + "resistor-burst-multiple,2,1,x,read\nresistor-burst-seconds,30,s,x,read\n";
    WiringLoadBank own = new WiringLoadBank(TABLES.with("limits.csv", rows));
    List<LoadResistor> stock = List.of(kind(4, 100, 1));
    assertTrue(own.wiring(stock, Mode.BRIDGED, 4, 190, new Hold(30)).wired().isPresent());
    assertEquals(Optional.empty(), own.wiring(stock, Mode.BRIDGED, 4, 201, new Hold(30)).wired());
  }

  @Test
  void stereo_wiresTwoLoads_ofDifferentResistors() {
    WiringAnswer.Found two = found(Mode.STEREO, 4, 50, kind(4, 100, 2));
    assertEquals(
        List.of("4 ohm-a", "4 ohm-b"), two.loads().stream().map(Network::formula).toList());
    assertEquals(
        Optional.empty(),
        bank.wiring(List.of(kind(4, 100, 1)), Mode.STEREO, 4, 50, Hold.CONTINUOUS).wired());
    assertEquals(1, found(Mode.BRIDGED, 4, 50, kind(4, 100, 2)).loads().size());
  }

  /** By hand: 8 Ω and 24 Ω in parallel are 6 Ω and share 120 W as 90 and 30 W. */
  @Test
  void hottest_isTheOneNearestItsRating() {
    LoadBank.Hottest hottest =
        bank.hottest(bench(kind(8, 200, 1), kind(24, 50, 1)), Mode.BRIDGED, 6, 120, Hold.CONTINUOUS)
            .orElseThrow();
    assertEquals("24 ohm", hottest.label());
    assertEquals(30, hottest.watts(), 1e-9);
    assertEquals(50, hottest.ratedWatts());
    assertEquals(0.6, hottest.share(), 1e-6);
    LoadBank.Hottest other =
        bank.hottest(bench(kind(8, 100, 1), kind(24, 50, 1)), Mode.BRIDGED, 6, 120, Hold.CONTINUOUS)
            .orElseThrow();
    assertEquals("8 ohm", other.label());
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
    assertEquals("four", hottest.label());
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
    "200, 30000, 0.78534031, 8 ohm-a",
    "201, 30150, 0.75, 8 ohm",
    "8, 1590, 0.99375, 8 ohm-a",
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
            () -> bank.wiring(List.of(kind(8, 100, 201)), Mode.BRIDGED, 4, 10, Hold.CONTINUOUS));
    assertTrue(told.getMessage().startsWith("the stock holds 201 resistors"), told.getMessage());
  }
}
