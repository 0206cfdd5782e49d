package loadwalk.walk.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The quick reading of a time against {@link Instant#parse}. */
class MomentTextTest {
  private static final long SEED = 20260131;
  private static final long YEAR_10000 = 253_402_300_800_000L;

  @Test
  void whatIsWritten_isReadAsInstantReadsIt() {
    Random random = new Random(SEED);
    int quick = 0;
    for (int i = 0; i < 5000; i++) {
      long millis = Math.floorMod(random.nextLong(), YEAR_10000);
      long moment = i % 3 == 0 ? millis / 1000 * 1000 : millis;
      String text = Instant.ofEpochMilli(moment).toString();
      OptionalLong read = MomentText.millis(text);
      assertTrue(read.isEmpty() || read.getAsLong() == moment, text + ", seed " + SEED);
      quick += read.isPresent() ? 1 : 0;
    }
    assertTrue(quick > 4500, quick + " were read quickly");
  }

  @Test
  void everyOtherText_isLeftToTheCalendar() {
    for (String text :
        new String[] {
          "",
          "2026-01-31T09:30:00.123Z",
          "2026-02-28T24:00:00Z",
          "2026-00-10T09:30:00Z",
          "2026-13-10T09:30:00Z",
          "2026-01-10T09:60:00Z",
          "2026-01-10T09:30:60Z",
          "2026-01-10T09:30:00.12Z",
          "2026-01-10T09:30:00,123Z",
          "2026-01-10t09:30:00.123z",
          "2026-01-10T09:30:00+00:00",
          "2026-01-10 09:30:00.123Z",
          "٢026-01-10T09:30:00.123Z",
          "+12026-01-10T09:30:00Z"
        }) {
      assertEquals(OptionalLong.empty(), MomentText.millis(text), text);
    }
  }

  @Test
  void workedExample() {
    // date -u -d 2026-01-10T09:30:00 +%s
    assertEquals(1_768_037_400_123L, MomentText.millis("2026-01-10T09:30:00.123Z").getAsLong());
  }
}
