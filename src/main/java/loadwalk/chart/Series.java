package loadwalk.chart;

import java.util.List;

/**
 * A series: one set of points drawn in a chart.
 *
 * @param name its name in the legend
 * @param kind how it is drawn
 * @param style the number of its mark, dash and colour, from 0; the same kind of data keeps its
 *     number in all charts
 * @param points its points, in the order in which they are joined
 */
public record Series(String name, Kind kind, int style, List<Point> points) {
  /** How a series is drawn. */
  public enum Kind {
    /** A mark with an error bar at each point. */
    MARKS,
    /** Marks joined by a thin line. */
    JOINED,
    /** A curve without marks. */
    CURVE,
    /** A pale bar from low to high at each point. */
    RANGES
  }

  /** Checks the style and copies the points. */
  public Series {
    if (style < 0) {
      throw new IllegalArgumentException("style must be 0 or more, got " + style);
    }
    points = List.copyOf(points);
  }

  /**
   * A point of a series.
   *
   * @param x its position along the bottom
   * @param y its height
   * @param low the lower end of its error bar or range
   * @param high the upper end
   */
  public record Point(double x, double y, double low, double high) {
    /** Checks that the numbers are finite and in order. */
    public Point {
      Finite.require(x, "x");
      Finite.require(y, "y");
      Finite.require(low, "low");
      Finite.require(high, "high");
      if (!(low <= y && y <= high)) {
        throw new IllegalArgumentException(
            "a point needs low <= y <= high, got " + low + ", " + y + ", " + high);
      }
    }

    /** Returns a point without an error bar. */
    public static Point exact(double x, double y) {
      return new Point(x, y, y, y);
    }

    /** Returns a point with the same error above and below. */
    public static Point within(double x, double y, double error) {
      return new Point(x, y, y - error, y + error);
    }

    /** Tells whether the point has an error bar to draw. */
    public boolean hasRange() {
      return high > low;
    }
  }
}
