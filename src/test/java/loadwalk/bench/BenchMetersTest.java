package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which meter takes a reading, and how far it can be off. */
class BenchMetersTest {
  private static final Meter OUTPUT = meter("output", ReadingId.OUTPUT_VOLTS);
  private static final Meter SUPPLY = meter("supply", ReadingId.SUPPLY_VOLTS);
  private static final Meter OPEN = meter("open", ReadingId.OPEN_VOLTS);

  private static Meter meter(String label, ReadingId reads) {
    return new Meter(label, reads, 0.5, 3, 0.01, Optional.of(new Meter.Band(45, 1000)));
  }

  private static Bench bench(Meter... meters) {
    return new Bench(
        "North bench",
        List.of(new Supply(13.8, 50), new Supply(13.8, 30)),
        List.of(),
        OptionalDouble.empty(),
        List.of(),
        List.of(meters),
        0.8);
  }

  /** The output meter is moved to the other channel, and to the open output; nothing else is. */
  @ParameterizedTest
  @CsvSource({
    "OUTPUT_VOLTS, output",
    "OTHER_OUTPUT_VOLTS, output",
    "OPEN_VOLTS, output",
    "SUPPLY_VOLTS, supply",
    "SUPPLY_AMPS, ",
    "LOAD_OHMS, ",
    "OUTPUT_WATTS, "
  })
  void reading_isTakenByItsMeter(ReadingId reading, String label) {
    Optional<String> found = bench(OUTPUT, SUPPLY).meterFor(reading).map(Meter::label);
    assertEquals(Optional.ofNullable(label), found);
  }

  @Test
  void meterOfItsOwn_isPreferred() {
    assertEquals(Optional.of(OPEN), bench(OUTPUT, OPEN).meterFor(ReadingId.OPEN_VOLTS));
    assertEquals(Optional.empty(), bench(SUPPLY).meterFor(ReadingId.OPEN_VOLTS));
    assertEquals(Optional.empty(), Bench.unknown().meterFor(ReadingId.OUTPUT_VOLTS));
  }

  /** ±(0.5 % + 3 digits of 10 mV): 20 V is known within 0.1 V + 0.03 V, whatever its sign. */
  @Test
  void accuracy_isPercentOfReadingPlusDigits() {
    assertEquals(0.13, OUTPUT.halfWidth(20), 1e-12);
    assertEquals(0.13, OUTPUT.halfWidth(-20), 1e-12);
    assertEquals(0.03, OUTPUT.halfWidth(0), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"44.9, false", "45, true", "400, true", "1000, true", "1000.1, false", "NaN, false"})
  void band_holdsItsEnds(double hertz, boolean inside) {
    assertEquals(inside, OUTPUT.band().orElseThrow().holds(hertz));
  }

  @Test
  void connecting_changesNothingElse() {
    Connection by = Connection.blank(ReadingId.OUTPUT_VOLTS);
    Meter connected = OUTPUT.connectedBy(by);
    assertEquals(Optional.of(by), connected.connection());
    assertEquals(OUTPUT.halfWidth(20), connected.halfWidth(20));
    assertEquals(OUTPUT.band(), connected.band());
    assertTrue(OUTPUT.connection().isEmpty(), "the meter read by eye stays as it was");
  }

  @Test
  void supplies_countAsUsableInPart_andNoneIsUnknown() {
    assertEquals(64, bench().usableAmps().orElseThrow(), 1e-9);
    assertTrue(Bench.unknown().usableAmps().isEmpty());
    assertEquals("bench not described", Bench.unknown().name());
  }

  /** One file of two meters: what it leaves out has a value a person can rely on. */
  @Test
  void file_leavesMuchOut() {
    String file =
        "{\"format\":\"loadwalk-bench/1\",\"supplies\":[{\"volts\":13.8,\"amps\":100}],"
            + "\"leads\":[{\"awg\":\"2/0\",\"metres\":1}],"
            + "\"loads\":[{\"ohms\":4,\"watts\":50}],"
            + "\"meters\":[{\"reads\":\"supplyAmps\",\"percent\":1,\"hertz\":[50,50]},"
            + "{\"reads\":\"openVolts\",\"digits\":2,\"resolution\":0.1}]}";
    Bench bench =
        BenchFiles.BENCH
            .read(file.getBytes(StandardCharsets.UTF_8), "b.json")
            .found()
            .orElseThrow();
    assertEquals("bench without a name", bench.name());
    assertEquals(90, bench.usableAmps().orElseThrow(), 1e-9);
    assertEquals(new Lead("lead", new Lead.Awg(-1), 1, 1), bench.leads().get(0));
    assertEquals(new LoadResistor("4R", 4, 5, 50, 1, OptionalDouble.empty()), bench.loads().get(0));
    assertEquals("supply amps meter", bench.meters().get(0).label());
    assertTrue(bench.meters().get(0).band().orElseThrow().holds(50));
    assertFalse(bench.meters().get(0).band().orElseThrow().holds(51));
    assertEquals(0.2, bench.meters().get(1).halfWidth(400), 1e-12);
    assertEquals(Optional.empty(), bench.meters().get(1).band());
  }
}
