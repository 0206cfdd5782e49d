package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Words made by hand against those of the platform's formats. */
class ResultWordsTest {
  private static final long SEED = 20260715;
  private static final int TRIALS = 20_000;
  private static final long TO_YEAR_9999 = 253_000_000_000_000L;

  @Test
  void decibels_areAsAFormatHasThem() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      double value = i % 2 == 0 ? 40 * random.nextGaussian() : random.nextInt(2000) / 200.0 - 5;
      String expected = String.format(Locale.ROOT, "%+.2f", value);
      assertEquals(expected, ResultWords.decibels(value), () -> value + ", seed " + SEED);
    }
    assertEquals("+0.00", ResultWords.decibels(0));
    assertEquals("no output", ResultWords.decibels(Double.NEGATIVE_INFINITY));
    assertEquals("unknown", ResultWords.decibels(Double.NaN));
  }

  @Test
  void momentsAndDays_areAsAPatternHasThem() {
    DateTimeFormatter moment =
        DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);
    DateTimeFormatter day =
        DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withZone(ZoneOffset.UTC);
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      long millis = Math.floorMod(random.nextLong(), TO_YEAR_9999) / (i % 3 == 0 ? 1 : 1000);
      Instant at = Instant.ofEpochMilli(millis);
      assertEquals(moment.format(at), ResultWords.moment(millis), () -> "seed " + SEED);
      assertEquals(day.format(at), ResultWords.day(millis), () -> "seed " + SEED);
    }
  }
}
