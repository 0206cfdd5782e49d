package loadwalk.chart;

import java.util.List;

/**
 * A chart before it is drawn.
 *
 * @param title what the chart shows
 * @param x the axis along the bottom
 * @param y the axis up the side
 * @param series the series, the first drawn lowest
 * @param limits levels that must not be exceeded, drawn across
 */
public record Chart(String title, Axis x, Axis y, List<Series> series, List<Limit> limits) {
  /** Copies the lists. */
  public Chart {
    series = List.copyOf(series);
    limits = List.copyOf(limits);
  }

  /** Returns a chart without limits. */
  public static Chart of(String title, Axis x, Axis y, List<Series> series) {
    return new Chart(title, x, y, series, List.of());
  }

  /** Tells whether there is nothing to draw. */
  public boolean isEmpty() {
    return series.stream().allMatch(s -> s.points().isEmpty());
  }

  /**
   * A level drawn across the chart.
   *
   * @param name its name
   * @param y its height
   */
  public record Limit(String name, double y) {
    /** Checks the number. */
    public Limit {
      Finite.require(y, "limit");
    }
  }
}
