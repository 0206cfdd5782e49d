package loadwalk.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Where things stand in a picture; its look is the browser test's. */
class SvgChartTest {
  private static final Pattern LIMIT =
      Pattern.compile("<g class=\"limit\"[^>]*><line x1=\"\\S+\" y1=\"(\\S+)\"");
  private static final Pattern BAR =
      Pattern.compile(
          "stroke-width=\"1.2\"><line x1=\"(\\S+)\" y1=\"(\\S+)\" x2=\"\\S+\" y2=\"(\\S+)\"");

  @Test
  void biggerValue_standsHigher_andFurtherRight() {
    Series series =
        new Series(
            "one",
            Series.Kind.MARKS,
            0,
            List.of(new Series.Point(1, 20, 10, 30), new Series.Point(2, 60, 50, 90)));
    Chart chart =
        new Chart(
            "t",
            Axis.fromZero("load"),
            Axis.fromZero("power, W"),
            List.of(series),
            List.of(new Chart.Limit("rated", 40), new Chart.Limit("most", 80)));
    String svg = SvgChart.svg(chart, "c");
    Matcher limit = LIMIT.matcher(svg);
    double rated = next(limit, 1);
    double most = next(limit, 1);
    Matcher bar = BAR.matcher(svg);
    double firstLow = next(bar, 2);
    double firstHigh = Double.parseDouble(bar.group(3));
    double firstX = Double.parseDouble(bar.group(1));
    double secondLow = next(bar, 2);
    double secondHigh = Double.parseDouble(bar.group(3));
    double[] upwards = {firstLow, firstHigh, rated, secondLow, most, secondHigh, 0};
    for (int i = 1; i < upwards.length; i++) {
      assertTrue(upwards[i] < upwards[i - 1], "number " + i + " stands too low: " + svg);
    }
    assertTrue(firstX < Double.parseDouble(bar.group(1)));
    assertEquals((firstLow + secondLow) / 2, firstHigh, 0.1, "the scale is even");
  }

  @Test
  void limitAboveAllReadings_andTheEndOfAnErrorBar_areInThePicture() {
    Series series =
        new Series("one", Series.Kind.MARKS, 0, List.of(new Series.Point(1, 20, 10, 117)));
    Axis x = Axis.fromZero("load");
    Axis y = Axis.fromZero("power, W");
    Matcher bar = BAR.matcher(SvgChart.svg(Chart.of("t", x, y, List.of(series)), "c"));
    assertTrue(next(bar, 3) >= 0, "the error bar is cut");
    Chart limited = new Chart("t", x, y, List.of(series), List.of(new Chart.Limit("most", 400)));
    assertTrue(next(LIMIT.matcher(SvgChart.svg(limited, "c")), 1) >= 0, "the limit is cut");
  }

  private static double next(Matcher matcher, int group) {
    assertTrue(matcher.find());
    return Double.parseDouble(matcher.group(group));
  }
}
