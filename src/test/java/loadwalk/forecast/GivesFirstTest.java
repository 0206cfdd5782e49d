package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.GivesFirst.Stop;
import org.junit.jupiter.api.Test;

/** The opening line of a brief, before the step and while it runs. */
class GivesFirstTest {
  private static final GivesFirst FUSES =
      new GivesFirst(
          "amplifier-fuse",
          "the amplifier's fuses carry",
          ReadingId.SUPPLY_AMPS,
          34.2,
          90,
          List.of(new Stop(ReadingId.SUPPLY_AMPS, 95), new Stop(ReadingId.SINK_CELSIUS, 75)));

  @Test
  void line_tellsDemandLimitAndWhereToStop() {
    assertEquals(
        "34 A of the 90 A that the amplifier's fuses carry; stop at 95 A or 75 °C.", FUSES.line());
  }

  @Test
  void line_withoutAStop_tellsTheRest() {
    GivesFirst bare =
        new GivesFirst("supply-amps", "the supplies bear", ReadingId.SUPPLY_AMPS, 5, 9, List.of());
    assertEquals("5 A of the 9 A that the supplies bear.", bare.line());
  }

  @Test
  void line_whileItRuns_hasTheReading() {
    Map<ReadingId, Double> now = Map.of(ReadingId.SUPPLY_AMPS, 41.0);
    assertEquals(
        "41 A of the 90 A that the amplifier's fuses carry; stop at 95 A or 75 °C.",
        FUSES.line(now));
    assertFalse(FUSES.isPassed(now));
    assertEquals(FUSES.line(), FUSES.line(Map.of()));
  }

  @Test
  void line_whereAReadingHasPassed_saysStop() {
    assertEquals(
        "STOP: 95 A read, stop at 95 A or 75 °C.", FUSES.line(Map.of(ReadingId.SUPPLY_AMPS, 95.0)));
    Map<ReadingId, Double> hot = Map.of(ReadingId.SUPPLY_AMPS, 41.0, ReadingId.SINK_CELSIUS, 80.0);
    assertEquals("STOP: 80 °C read, stop at 95 A or 75 °C.", FUSES.line(hot));
    assertTrue(FUSES.isPassed(hot));
  }

  @Test
  void readingOfNoNumber_hasPassed() {
    assertTrue(FUSES.isPassed(Map.of(ReadingId.SUPPLY_AMPS, Double.NaN)));
  }
}
