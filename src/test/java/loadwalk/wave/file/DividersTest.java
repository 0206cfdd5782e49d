package loadwalk.wave.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The dividers worked out in safety-notes.md, by Ohm's law. */
class DividersTest {
  private static final Pattern ROW =
      Pattern.compile(
          "\\| (\\d+) V rms \\| (\\d+) kΩ \\| (\\d+) kΩ \\| (\\d+) \\| ([0-9.]+) V \\| ([0-9.]+) mW"
              + " \\|");

  @Test
  void everyRow_isWhatOhmsLawSays_andStaysBelowOneVolt() throws IOException {
    String notes = Files.readString(Path.of("safety-notes.md"));
    List<double[]> rows = ROW.matcher(notes).results().map(DividersTest::numbers).toList();
    assertEquals(3, rows.size());
    for (double[] row : rows) {
      double ratio = (row[1] + row[2]) / row[2];
      double input = row[0] / ratio;
      double kept = row[0] - input;
      assertEquals(ratio, row[3]);
      assertEquals(input, row[4], 0.0005);
      assertEquals(kept * kept / row[1], row[5], 0.05);
      assertTrue(input < 1);
    }
    double loaded = 1 + 20 / (10 * 1.0 / (10 + 1.0));
    assertTrue(
        notes.contains(String.format(Locale.ROOT, "divides by %.1f, not 21", loaded)), "" + loaded);
  }

  private static double[] numbers(MatchResult row) {
    double[] numbers = new double[row.groupCount()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = Double.parseDouble(row.group(i + 1));
    }
    return numbers;
  }

  @Test
  void cautions_sayDividerAndIsolation_andWhereTheValuesAre() {
    String all = String.join(" ", CaptureCaution.LINES);
    assertTrue(all.contains("divider") && all.contains("isolating"), all);
    assertTrue(all.contains("safety-notes.md"), all);
  }
}
