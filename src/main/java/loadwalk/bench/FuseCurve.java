package loadwalk.bench;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import loadwalk.text.Sentence;

/**
 * Tells how long a kind of fuse carries a current: the shortest and the longest time to open, as
 * ISO 8820 states them.
 *
 * <p>Between two points of the table both edges are interpolated on doubly logarithmic scales, the
 * scales on which makers draw the curves. Nothing is extrapolated beyond the table: see {@link
 * Span}.
 *
 * @param type what kind of fuse it is
 * @param upToAmps the largest rating made in this kind, amperes
 * @param points the time limits at multiples of the rating, increasing
 */
public record FuseCurve(String type, double upToAmps, List<Point> points) {
  /** Checks the order. */
  public FuseCurve {
    Checks.text(type, "type");
    Checks.positive(upToAmps, "upToAmps");
    points = List.copyOf(points);
    if (points.isEmpty()) {
      throw new IllegalArgumentException(type + ": a fuse needs a point");
    }
    for (int i = 1; i < points.size(); i++) {
      boolean rising = points.get(i).multiple() > points.get(i - 1).multiple();
      boolean falling = points.get(i).minSeconds() <= points.get(i - 1).minSeconds();
      if (!rising || !falling) {
        throw new IllegalArgumentException(
            type + ": percent of rating must rise and least seconds must fall from row to row");
      }
    }
  }

  /**
   * One row of the table.
   *
   * @param multiple the current over the rating
   * @param minSeconds the least time to open, seconds
   * @param maxSeconds the longest time to open, seconds, where the standard sets one
   * @param source what states it
   * @param how how it was obtained: read, or from memory with how sure
   */
  public record Point(
      double multiple, double minSeconds, OptionalDouble maxSeconds, String source, String how) {
    /** Checks the numbers. */
    public Point {
      Checks.positive(multiple, "percentOfRating");
      Checks.positive(minSeconds, "minSeconds");
      maxSeconds.ifPresent(
          max -> {
            if (!(max >= minSeconds) || Double.isInfinite(max)) {
              throw new IllegalArgumentException("maxSeconds must not lie below minSeconds");
            }
          });
    }
  }

  /** Where a current lies relative to the table. */
  public enum Span {
    /** Below the first point: the fuse may never open. */
    BELOW_TABLE,
    /** From the first to the last point. */
    INSIDE_TABLE,
    /** Above the last point: the fuse opens at least as fast as at that point. */
    ABOVE_TABLE
  }

  /**
   * The shortest and the longest time to open.
   *
   * @param minSeconds the least time, seconds
   * @param maxSeconds the longest time, seconds; empty where the fuse may never open
   * @param span where the current lies relative to the table
   */
  public record Opening(double minSeconds, OptionalDouble maxSeconds, Span span) {
    /** Returns the times in words: "0.75 s to 600 s", "at least 100 h". */
    public String text() {
      if (maxSeconds.isEmpty()) {
        return Double.isInfinite(minSeconds)
            ? "may never open"
            : Sentence.of("not before {}, may never open", Figures.duration(minSeconds));
      }
      String longest = Figures.duration(maxSeconds.getAsDouble());
      return span == Span.ABOVE_TABLE
          ? Sentence.of("within {} (beyond the table)", longest)
          : Sentence.of("{} to {}", Figures.duration(minSeconds), longest);
    }
  }

  /** Halvings of the interval in which a multiple is sought: to 1e-9 of it. */
  private static final int HALVINGS = 30;

  /**
   * Returns the largest current, as a multiple of the rating, that every such fuse carries for a
   * time in seconds; from below the table, where it may never open, to its last point.
   */
  public double multipleLasting(double seconds) {
    double carries = points.get(0).multiple();
    double opens = points.get(points.size() - 1).multiple();
    if (opening(opens).minSeconds() >= seconds) {
      return opens;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (carries + opens) / 2;
      if (opening(middle).minSeconds() >= seconds) {
        carries = middle;
      } else {
        opens = middle;
      }
    }
    return carries;
  }

  /**
   * Returns the time to open at a current.
   *
   * @param multiple the current over the fuse's rating, 0 or more
   */
  public Opening opening(double multiple) {
    Checks.zeroOrMore(multiple, "current over rating");
    Point first = points.get(0);
    Point last = points.get(points.size() - 1);
    if (multiple < first.multiple()) {
      return new Opening(Double.POSITIVE_INFINITY, OptionalDouble.empty(), Span.BELOW_TABLE);
    }
    if (multiple > last.multiple()) {
      return new Opening(0, last.maxSeconds(), Span.ABOVE_TABLE);
    }
    TreeMap<Double, Double> least = new TreeMap<>();
    TreeMap<Double, Double> longest = new TreeMap<>();
    for (Point point : points) {
      least.put(point.multiple(), point.minSeconds());
      point.maxSeconds().ifPresent(max -> longest.put(point.multiple(), max));
    }
    double min = new Curve(least).at(multiple, 0, 0);
    boolean bounded = !longest.isEmpty() && multiple >= longest.firstKey();
    OptionalDouble max =
        bounded ? OptionalDouble.of(new Curve(longest).at(multiple, 0, 0)) : OptionalDouble.empty();
    return new Opening(min, max, Span.INSIDE_TABLE);
  }
}
