package loadwalk.result;

import static loadwalk.result.Readings.bench;
import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.usual;
import static loadwalk.result.Readings.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which resistance the watts are reckoned with, and what is said of where it comes from. */
class LoadChoiceTest {
  /** Stock is written count × ohms with a tolerance of 1 %; 5 % shows that nothing fitted. */
  @ParameterizedTest(name = "[{index}] {0} {1} ohm of {2}: {3} ohm ± {4} %")
  @CsvSource({
    "stereo, 4, 2x4, 4, 1, ''",
    // A resistor within a tenth of the load counts as that load, with its own ohms.
    "stereo, 4, 2x4.39, 4.39, 1, ''",
    "stereo, 4, 2x4.41, 4, 5, load-assumed",
    "stereo, 4, 2x3.61, 3.61, 1, ''",
    "stereo, 4, 2x3.59, 4, 5, load-assumed",
    // The nearest of two.
    "stereo, 4, 2x4.3 2x3.9, 3.9, 1, ''",
    "stereo, 4, 2x3.9 2x4.05, 4.05, 1, ''",
    // Equal parts in series or parallel, within 2 %, as many as both loads need.
    "bridged, 2, 2x4, 2, 1, load-network-assumed",
    "bridged, 2, 1x4, 2, 5, load-assumed",
    "stereo, 2, 4x4, 2, 1, load-network-assumed",
    "stereo, 2, 3x4, 2, 5, load-assumed",
    "bridged, 8, 2x4, 8, 1, load-network-assumed",
    "bridged, 12, 3x4, 12, 1, load-network-assumed",
    "bridged, 2, 2x4.07, 2.035, 1, load-network-assumed",
    "bridged, 2, 2x4.09, 2, 5, load-assumed",
    "bridged, 8, 2x3.93, 7.86, 1, load-network-assumed",
    "bridged, 8, 2x3.91, 8, 5, load-assumed",
    "bridged, 3, 8x4, 3, 5, load-assumed",
    // The first stock that fits; a single resistor goes before a network.
    "bridged, 2, 2x4 1x2.1, 2.1, 1, ''",
    "bridged, 2, 1x4 4x8, 2, 1, load-network-assumed",
  })
  void load(String mode, double ohms, String stock, double found, double percent, String code) {
    StepResult result = result(mode, ohms, stock);
    Quantity load = result.loadOhms().orElseThrow();
    assertEquals(found, load.value(), 1e-9);
    // A tolerance is rectangular, u = a/sqrt(3): JCGM 100:2008, 4.3.7. The speaker lead adds from
    // 0 to 20 mΩ: the mean square of that is its square over 3 too. A load that nobody knows may
    // change by ±100 ppm/K over 0 to 150 K, of which the standard deviation is a third.
    double heat = percent == 5 ? found * 100e-6 * 150 / 3 : 0;
    double square = (Math.pow(found * percent / 100, 2) + 0.02 * 0.02) / 3;
    assertEquals(Math.sqrt(square + heat * heat), load.u(), 1e-9);
    assertEquals(
        code.isEmpty() ? List.of() : List.of(code),
        result.remarks().stream().map(Remark::code).filter(c -> c.startsWith("load-")).toList());
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "2, 2x4, the load was not measured: taken as 2 × 4.0 ohm in parallel",
        "12, 3x4, the load was not measured: taken as 3 × 4.0 ohm in series",
        "2, 1x8, the load was not measured and the bench has none of 2 Ω: taken as nominal ±5 %",
      })
  void originOfTheLoad_isSaid(double ohms, String stock, String said) {
    List<Remark> remarks = result("bridged", ohms, stock).remarks();
    assertTrue(remarks.stream().anyMatch(r -> r.text().equals(said)), remarks.toString());
  }

  @Test
  void loadReadAsNothing_isSaidWithItsNumber() {
    List<Remark> remarks =
        Readings.step(usual(), Readings.stereo(4, volts(20), of(ReadingId.LOAD_OHMS, 0))).remarks();
    assertTrue(
        remarks.contains(
            new Remark(
                "load-reading-unusable",
                "0 Ω was read as the load, which cannot be: it is left out")),
        remarks.toString());
  }

  @Test
  void stepWithoutALoad_hasNone() {
    MeasuredStep open =
        Readings.below("open-load", Target.Kind.OPEN_LOAD, Mode.STEREO, Double.NaN, volts(20));
    StepResult result = Readings.step(usual(), open);
    assertEquals(Optional.empty(), result.loadOhms());
    assertEquals(Optional.empty(), result.watts());
  }

  @Test
  void stepWithoutAnyOutput_leavesTheLoadUnsaid() {
    assertEquals(
        Optional.empty(),
        Readings.step(usual(), Readings.stereo(4, of(ReadingId.SUPPLY_VOLTS, 14))).loadOhms());
  }

  @Test
  void loadAlone_wattsAlone_orPairsAlone_areReckonedWithALoad() {
    LimitPair[] pairs = {new LimitPair(20, 0.5), new LimitPair(21, 2)};
    for (MeasuredStep step :
        List.of(
            Readings.stereo(4, of(ReadingId.LOAD_OHMS, 4)),
            Readings.stereo(4, of(ReadingId.OUTPUT_WATTS, 100)),
            Readings.withPairs(Readings.stereo(4), List.of(pairs)))) {
      assertEquals(4, Readings.step(usual(), step).loadOhms().orElseThrow().value());
    }
  }

  private static StepResult result(String mode, double ohms, String stock) {
    List<LoadResistor> loads =
        Arrays.stream(stock.split(" ")).map(LoadChoiceTest::resistor).toList();
    Mode connected = Mode.valueOf(mode.toUpperCase(Locale.ROOT));
    return Readings.step(
        bench(List.of(), loads), Readings.loaded(connected, ohms, Criterion.THD_LIMIT, volts(20)));
  }

  private static LoadResistor resistor(String words) {
    String[] parts = words.split("x");
    double ohms = Double.parseDouble(parts[1]);
    return new LoadResistor(
        ohms + " ohm", ohms, 1, 300, Integer.parseInt(parts[0]), OptionalDouble.of(0));
  }
}
