package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers, loads, readings and wire sizes as the trade writes them. */
class TradeWordsTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "1234.5, 1230",
    "0.0001234, 0.000123",
    "99.96, 100",
    "-2.345, -2.35",
    "13.8, 13.8",
    "1e6, 1000000",
    "999499999, 999000000",
    "1e9, 1E+9",
    "-1e9, -1E+9",
    "1e-6, 0.000001",
    "0.000000999, 9.99E-7",
    "NaN, unknown",
    "Infinity, unknown"
  })
  void figures_haveThreeDigits(double value, String words) {
    assertEquals(words, Figures.three(value));
  }

  @Test
  void mode_saysItsLoads() {
    assertEquals("stereo 4 Ω", Mode.STEREO.load(4));
    assertEquals("bridged 0.5 Ω", Mode.BRIDGED.load(0.5));
    assertEquals(2, Mode.STEREO.loads());
    assertEquals(1, Mode.BRIDGED.loads());
    assertEquals(4, Mode.STEREO.channelOhms(4));
    assertEquals(2, Mode.BRIDGED.channelOhms(4), "each bridged channel drives half the load");
  }

  @ParameterizedTest
  @CsvSource({
    "outputVolts, output volts, V",
    "outputWatts, output watts, W",
    "otherOutputVolts, other channel volts, V",
    "supplyVolts, supply volts, V",
    "supplyAmps, supply amps, A",
    "sinkCelsius, heatsink, °C",
    "loadOhms, load ohms, Ω",
    "thdPercent, THD, %",
    "frequencyHertz, tone, Hz",
    "openVolts, unloaded volts, V"
  })
  void reading_isFoundByTheIdOfTheFiles(String key, String label, String unit) {
    ReadingId reading = ReadingId.ofKey(key).orElseThrow();
    assertEquals(key, reading.key());
    assertEquals(label, reading.label());
    assertEquals(unit, reading.unit().symbol());
  }

  @Test
  void reading_ofAnUnknownId_isNone() {
    assertEquals(Optional.empty(), ReadingId.ofKey("outputvolts"));
  }

  @ParameterizedTest
  @CsvSource({"40, AWG 40", "4, AWG 4", "1, AWG 1", "0, AWG 1/0", "-1, AWG 2/0", "-3, AWG 4/0"})
  void awg_isWrittenAsOnTheReel_andReadBack(int number, String words) {
    assertEquals(words, new Lead.Awg(number).text());
    assertEquals(new Lead.Awg(number), TableReader.gauge(words));
  }

  @ParameterizedTest
  @CsvSource({"25, 25 mm²", "1.5, 1.5 mm²", "0.75, 0.75 mm²", "120, 120 mm²"})
  void mm2_isWrittenAsOnTheReel_andReadBack(double area, String words) {
    assertEquals(words, new Lead.Mm2(area).text());
    assertEquals(new Lead.Mm2(area), TableReader.gauge(words));
    assertEquals(new Lead.Mm2(area), TableReader.gauge(words.replace("²", "2")));
  }

  @Test
  void sizes_areTheSameOnlyWhereTheyAreEqual() {
    List<Lead.Gauge> sizes =
        List.of(new Lead.Awg(4), new Lead.Awg(6), new Lead.Mm2(4), new Lead.Mm2(6));
    Set<Lead.Gauge> all = new HashSet<>(sizes);
    assertEquals(4, all.size());
    for (Lead.Gauge size : sizes) {
      assertEquals(1, sizes.stream().filter(size::equals).count(), size.text());
    }
    assertNotEquals(new Lead.Mm2(25), new Lead.Awg(4));
    assertNotEquals("AWG 4", new Lead.Awg(4));
  }
}
