package loadwalk.bench;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Interpolates between the points of a table on doubly logarithmic scales. */
final class Curve {
  private final TreeMap<Double, Double> points = new TreeMap<>();

  /** Copies the points; x and y must be above 0. */
  Curve(SortedMap<Double, Double> points) {
    points.forEach((x, y) -> this.points.put(Checks.positive(x, "x"), Checks.positive(y, "y")));
    if (this.points.isEmpty()) {
      throw new IllegalArgumentException("a curve needs a point");
    }
  }

  /**
   * Returns y at x; outside the table, y at the nearest end times (x / end) to the power of the
   * slope.
   */
  double at(double x, double slopeBelow, double slopeAbove) {
    Map.Entry<Double, Double> low = points.floorEntry(x);
    Map.Entry<Double, Double> high = points.ceilingEntry(x);
    if (low == null) {
      return high.getValue() * Math.pow(x / high.getKey(), slopeBelow);
    }
    if (high == null) {
      return low.getValue() * Math.pow(x / low.getKey(), slopeAbove);
    }
    if (low.getKey().equals(high.getKey())) {
      return low.getValue();
    }
    double part = Math.log(x / low.getKey()) / Math.log(high.getKey() / low.getKey());
    return low.getValue() * Math.pow(high.getValue() / low.getValue(), part);
  }
}
