package loadwalk.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextChartTest {
  private static final Series.Point LOW = Series.Point.exact(1, 0);
  private static final Series.Point HIGH = Series.Point.exact(4, 100);

  @Test
  void marks_standWhereTheirValuesSay() {
    Axis loads =
        Axis.ratios(
            "load, Ω",
            List.of(new Axis.Tick(1, "1"), new Axis.Tick(2, "2"), new Axis.Tick(4, "4")));
    Series series = new Series("one", Series.Kind.MARKS, 0, List.of(LOW, HIGH));
    Chart chart = Chart.of("t", loads, Axis.fromZero("power, W"), List.of(series));
    List<String> lines = TextChart.lines(chart, 40, 6, true);
    assertEquals(
        List.of(
            "power, W",
            "100 |                              o",
            " 80 |",
            " 60 |",
            " 40 |",
            " 20 |",
            "  0 |    o",
            "    +-----------------------------------",
            "         1            2            4",
            "     load, ohm",
            "     o one"),
        lines);
  }

  @Test
  void twoSeries_haveMarksOfTheirOwn() {
    Series one = new Series("left", Series.Kind.MARKS, 0, List.of(LOW));
    Series other = new Series("right", Series.Kind.MARKS, 1, List.of(HIGH));
    Chart chart = Chart.of("t", Axis.fromZero("x"), Axis.fromZero("y"), List.of(one, other));
    List<String> lines = TextChart.lines(chart, 40, 6, true);
    char left = lines.get(6).charAt(lines.get(6).length() - 1);
    char right = lines.get(1).charAt(lines.get(1).length() - 1);
    assertTrue(left != right, String.join("\n", lines));
    String legend = lines.get(lines.size() - 1);
    assertTrue(legend.contains(left + " left") && legend.contains(right + " right"), legend);
  }

  @Test
  void curve_isDrawnInBraille() {
    Series series = new Series("fit", Series.Kind.CURVE, 0, List.of(LOW, HIGH));
    Chart chart = Chart.of("t", Axis.fromZero("x"), Axis.fromZero("y"), List.of(series));
    String all = String.join("", TextChart.lines(chart, 40, 6, false));
    assertTrue(all.chars().anyMatch(c -> c > 0x2800 && c <= 0x28ff), all);
  }

  @Test
  void lines_neverExceedTheColumnsWhateverTheNames() {
    Series series =
        new Series("n\u001b[2J" + "x".repeat(500), Series.Kind.JOINED, 7, List.of(LOW, HIGH));
    Chart chart =
        new Chart(
            "t",
            Axis.fromZero("x".repeat(300)),
            Axis.fromZero("y"),
            List.of(series),
            List.of(new Chart.Limit("l".repeat(300), 150)));
    for (String line : TextChart.lines(chart, 60, 8, false)) {
      assertTrue(line.length() <= 60, line);
      assertTrue(line.chars().noneMatch(Character::isISOControl), line);
    }
  }
}
