package loadwalk.chart;

/** Refuses numbers that cannot be drawn. */
final class Finite {
  private Finite() {}

  static double require(double value, String what) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " must be finite, got " + value);
    }
    return value;
  }
}
