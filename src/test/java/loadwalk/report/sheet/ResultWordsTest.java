package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import loadwalk.bench.ReadingId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  @ParameterizedTest
  @CsvSource({
    "0, 0 min 0 s",
    "29.4, 0 min 29 s",
    "59.5, 1 min 0 s",
    "60, 1 min 0 s",
    "3661, 61 min 1 s"
  })
  void duration_isRoundedToTheSecond(double seconds, String words) {
    assertEquals(words, ResultWords.minutes(seconds));
  }

  @ParameterizedTest
  @CsvSource({"3, 3", "4.9, 4", "4.9999999999, 5", "Infinity, ∞"})
  void degreesOfFreedom_areRoundedDown(double degrees, String words) {
    assertEquals(words, ResultWords.degrees(degrees));
  }

  @ParameterizedTest
  @CsvSource({"2, 2", "2.2684, 2.27", "9.9949, 9.99", "12.706, 12.71"})
  void coverageFactor_hasNoMoreDigitsThanMatter(double k, String words) {
    assertEquals(words, ResultWords.factor(k));
  }

  /** Nine digits of a value that was never typed: of 15.9 the last is 0.0000001. */
  @ParameterizedTest
  @CsvSource({
    "15.9, 0.01, 0.01",
    "15.9, 0, 1e-7",
    "15.9, NaN, 1e-7",
    "15.9, Infinity, 1e-7",
    "-159, -1, 1e-6",
    "0, 0, 1e-17"
  })
  void resolution_isAsTyped_elseNineDigits(double value, double typed, double resolution) {
    Sheet.ReadingLine line =
        new Sheet.ReadingLine(ReadingId.OUTPUT_VOLTS, "", value, typed, Optional.empty());
    assertEquals(resolution, ResultWords.resolution(line), resolution * 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "'',''",
    "steady already,Steady already.",
    "'hot, moved it','Hot, moved it.'",
    "hot.,Hot.",
    "hot,hot.",
    "stereo-4 is hot,stereo-4 is hot.",
    "4 ohm is hot,4 ohm is hot.",
    "éteint déjà,Éteint déjà.",
    "Done.,Done."
  })
  void remark_becomesASentence_butAnIdKeepsItsLetters(String text, String sentence) {
    assertEquals(sentence, ResultWords.sentence(text));
  }

  @Test
  void fuses_areAddedUp_unlessThereIsOne() {
    assertEquals("30 A", ResultWords.fuses(List.of(30.0), 30));
    assertEquals("30 A + 7.5 A = 37.5 A", ResultWords.fuses(List.of(30.0, 7.5), 37.5));
  }
}
