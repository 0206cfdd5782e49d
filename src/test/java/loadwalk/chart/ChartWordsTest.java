package loadwalk.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChartWordsTest {
  private static final long SEED = 20260716;
  private static final int TRIALS = 20_000;

  /** Four significant digits as a format has them, zeros behind the point cut. */
  private static String formatted(double value) {
    String text = String.format(Locale.ROOT, "%.4g", value);
    while (text.contains(".") && !text.contains("e") && text.endsWith("0")) {
      text = text.substring(0, text.length() - 1);
    }
    return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
  }

  @Test
  void number_hasFourDigits_asAFormatHasThem() {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIALS; i++) {
      double value = random.nextGaussian() * Math.pow(10, random.nextInt(10) - 5);
      double given = i % 2 == 0 ? value : Math.rint(value * 100) / 100;
      String expected = given == 0 ? "0" : formatted(given);
      assertEquals(expected, ChartWords.number(given), () -> given + ", seed " + SEED);
    }
    assertEquals("1500", ChartWords.number(1500));
    assertEquals("0.5", ChartWords.number(0.5));
  }
}
