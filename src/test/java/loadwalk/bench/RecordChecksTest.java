package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** A number that no bench can have stops where it is made, whoever made it, in one sentence. */
class RecordChecksTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final Lead.Gauge FOUR = new Lead.Awg(4);
  private static final Connection.Line TCP = new Connection.Tcp("a", 5025);

  private final Map<String, Executable> refused = new LinkedHashMap<>();

  private static LoadResistor load(double ohms, double tolerance, double watts, int count) {
    return new LoadResistor("8 ohm", ohms, tolerance, watts, count, NONE);
  }

  private static Rating rating(double ohms, double watts, double volts, double thd) {
    return new Rating(Mode.STEREO, ohms, watts, OptionalDouble.of(volts), OptionalDouble.of(thd));
  }

  private static Meter meter(double percent, double digits, double resolution) {
    return new Meter(
        "meter", ReadingId.OUTPUT_VOLTS, percent, digits, resolution, Optional.empty());
  }

  private static Bench bench(String name, OptionalDouble fuseAmps, double usable) {
    return new Bench(name, List.of(), List.of(), fuseAmps, List.of(), List.of(), usable);
  }

  private static Amplifier amplifier(double stereo, double bridged, double fuse) {
    return BareAmplifier.limited(
        OptionalDouble.of(stereo), OptionalDouble.of(bridged), List.of(fuse));
  }

  private static FuseCurve.Point point(double multiple, double least, double most) {
    return new FuseCurve.Point(multiple, least, OptionalDouble.of(most), "x", "read");
  }

  @Test
  void amplifierAndBench() {
    refused.put("maker must not be empty", () -> Amplifier.named(" ", "Twin 50"));
    refused.put("model must not be empty", () -> Amplifier.named("Halvorsen & Pike", null));
    refused.put("minimumOhms.stereo must be a number above 0, got 0.0", () -> amplifier(0, 4, 30));
    refused.put(
        "minimumOhms.bridged must be a number above 0, got -1.0", () -> amplifier(2, -1, 30));
    refused.put("fuses must be a number above 0, got 0.0", () -> amplifier(2, 4, 0));
    refused.put("ohms must be a number above 0, got 0.0", () -> rating(0, 50, 12, 1));
    refused.put("watts must be a number above 0, got -1.0", () -> rating(4, -1, 12, 1));
    refused.put("supplyVolts must be a number above 0, got 0.0", () -> rating(4, 50, 0, 1));
    refused.put(
        "thdPercent must be a number above 0, got Infinity", () -> rating(4, 50, 12, 1 / 0.0));
    refused.put("name must not be empty", () -> bench("", NONE, 0.9));
    refused.put(
        "fuse.amps must be a number above 0, got 0.0", () -> bench("b", OptionalDouble.of(0), 1));
    refused.put("usableFraction must lie above 0 and up to 1, got 0.0", () -> bench("b", NONE, 0));
    refused.put(
        "usableFraction must lie above 0 and up to 1, got 1.01", () -> bench("b", NONE, 1.01));
    refused.put("volts must be a number above 0, got 0.0", () -> new Supply(0, 50));
    refused.put("amps must be a number above 0, got NaN", () -> new Supply(13.8, Double.NaN));
    assertRefused();
    assertEquals(1, bench("b", NONE, 1).usableFraction());
  }

  @Test
  void leadsAndLoads() {
    refused.put("label must not be empty", () -> new Lead("", FOUR, 1, 1));
    refused.put("metres must be a number above 0, got 0.0", () -> new Lead("plus", FOUR, 0, 1));
    refused.put("parallel must be 1 or more, got 0", () -> new Lead("plus", FOUR, 1, 0));
    refused.put("awg must lie between 4/0 and 40, got 41", () -> new Lead.Awg(41));
    refused.put("awg must lie between 4/0 and 40, got -4", () -> new Lead.Awg(-4));
    refused.put("mm2 must be a number above 0, got 0.0", () -> new Lead.Mm2(0));
    refused.put("ohms must be a number above 0, got 0.0", () -> load(0, 5, 100, 1));
    refused.put("tolerancePercent must be a number from 0 up, got -1.0", () -> load(8, -1, 100, 1));
    refused.put("watts must be a number above 0, got 0.0", () -> load(8, 5, 0, 1));
    refused.put("count must be 1 or more, got 0", () -> load(8, 5, 100, 0));
    assertRefused();
  }

  @Test
  void meters() {
    refused.put("percent must be a number from 0 up, got -1.0", () -> meter(-1, 0, 0));
    refused.put("digits must be a number from 0 up, got -1.0", () -> meter(0, -1, 0));
    refused.put("resolution must be a number from 0 up, got Infinity", () -> meter(0, 0, 1 / 0.0));
    refused.put("hertz must be a number from 0 up, got -1.0", () -> new Meter.Band(-1, 1));
    refused.put("hertz must be [low, high], got 44.0", () -> new Meter.Band(45, 44));
    refused.put("unit must not be empty", () -> new Connection(TCP, "READ?", "", 1, 10));
    refused.put(
        "scale must be a number other than 0, got 0.0",
        () -> new Connection(TCP, "READ?", "V", 0, 10));
    refused.put(
        "timeoutMillis must be above 0, got 0", () -> new Connection(TCP, "READ?", "V", 1, 0));
    refused.put(
        "query must be one question that only reads, such as MEAS:VOLT:AC?, got *RST",
        () -> new Connection(TCP, "*RST", "V", 1, 10));
    refused.put("port must be between 1 and 65535, got 0", () -> new Connection.Tcp("a", 0));
    refused.put(
        "port must be between 1 and 65535, got 65536", () -> new Connection.Tcp("a", 65_536));
    refused.put(
        "baud must be between 300 and 4000000, got 299", () -> new Connection.Serial("COM1", 299));
    refused.put(
        "baud must be between 300 and 4000000, got 4000001",
        () -> new Connection.Serial("COM1", 4_000_001));
    assertRefused();
    assertEquals(45, new Meter.Band(45, 45).highHertz());
    assertEquals(1, new Connection(TCP, "READ?", "V", 1, 1).answerMillis());
  }

  @Test
  void fusesAndTables() {
    FuseCurve.Point first = point(1.35, 60, 1800);
    refused.put("f: a fuse needs a point", () -> new FuseCurve("f", 30, List.of()));
    refused.put(
        "upToAmps must be a number above 0, got 0.0", () -> new FuseCurve("f", 0, List.of(first)));
    refused.put("type must not be empty", () -> new FuseCurve(" ", 30, List.of(first)));
    String order = "f: percent of rating must rise and least seconds must fall from row to row";
    refused.put(order, () -> new FuseCurve("f", 30, List.of(first, point(1.35, 2, 50))));
    refused.put("percentOfRating must be a number above 0, got 0.0", () -> point(0, 1, 2));
    refused.put("minSeconds must be a number above 0, got 0.0", () -> point(1, 0, 2));
    refused.put("maxSeconds must not lie below minSeconds", () -> point(1, 1, 1 / 0.0));
    refused.put("source must not be empty", () -> new SourcedNumber(1, "", "read"));
    refused.put("how must not be empty", () -> new SourcedNumber(1, "x", ""));
    refused.put(
        "a table value must be finite, got NaN", () -> new SourcedNumber(Double.NaN, "x", "read"));
    refused.put("fuse.amps must be a number above 0, got 0.0", () -> Tables.stock().fuseFor(0));
    assertRefused();
    assertThrows(
        IllegalArgumentException.class,
        () -> new FuseCurve("f", 30, List.of(first, point(2, 61, 1800))),
        "a fuse that takes longer at more current");
    assertEquals(2, new FuseCurve("f", 30, List.of(first, point(2, 60, 60))).points().size());
    IllegalStateException missing =
        assertThrows(IllegalStateException.class, () -> Tables.stock().limit("no-such-key"));
    assertEquals("limits.csv has no no-such-key", missing.getMessage());
  }

  private void assertRefused() {
    refused.forEach(
        (sentence, made) ->
            assertEquals(
                sentence, assertThrows(IllegalArgumentException.class, made).getMessage()));
  }
}
