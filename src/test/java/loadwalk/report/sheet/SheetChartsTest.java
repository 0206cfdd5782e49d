package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.plan.StockRules;
import loadwalk.report.page.Block;
import loadwalk.report.page.Walks;
import org.junit.jupiter.api.Test;

class SheetChartsTest {
  private static final List<Chart> CHARTS =
      new SheetCharts(
              Sheet.of(Walks.practice(1, "full-walk"), SheetOptions.DEFAULT, StockRules.RULES))
          .figures().stream().map(f -> ((Block.Figure) f).chart()).toList();

  @Test
  void everyChart_namesItsUnits() {
    for (Chart chart : CHARTS) {
      String label = chart.y().label();
      assertTrue(label.matches(".*, (W|A|%|°C)$|volts per channel, rms"), label);
    }
  }

  @Test
  void everyMeasuredPoint_hasItsErrorBar() {
    assertEquals(8, CHARTS.size());
    for (Chart chart : CHARTS) {
      for (Series series : chart.series()) {
        boolean measured =
            series.kind() == Series.Kind.MARKS || series.kind() == Series.Kind.JOINED;
        if (measured && !series.name().equals("rated")) {
          series.points().forEach(p -> assertTrue(p.hasRange(), chart.title() + series.name()));
        }
      }
    }
  }
}
