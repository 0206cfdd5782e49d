package loadwalk.numeric;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * Finds the volts at which the distortion reaches a limit, by interpolating log THD against volts
 * between the two readings on either side of it.
 */
public sealed interface LogInterpolation {
  /** Returns the volts at the limit, where readings lie on both sides of it. */
  Optional<Found> found();

  /** Returns what is missing, where they do not lie on both sides. */
  Optional<String> missing();

  /**
   * One reading near the limit.
   *
   * @param volts rms output, above 0
   * @param voltsU its standard uncertainty, 0 or more
   * @param thdPercent above 0
   * @param thdU the standard uncertainty of thdPercent, 0 or more
   */
  record Point(double volts, double voltsU, double thdPercent, double thdU) {
    /** Checks the numbers. */
    public Point {
      Samples.positive(volts, "volts");
      Samples.zeroOrMore(voltsU, "uncertainty of volts");
      Samples.positive(thdPercent, "THD");
      Samples.zeroOrMore(thdU, "uncertainty of THD");
    }
  }

  /**
   * The volts at the limit.
   *
   * @param volts rms output at the limit
   * @param u its standard uncertainty, with the bend between the readings included
   */
  record Found(double volts, double u) implements LogInterpolation {
    @Override
    public Optional<Found> found() {
      return Optional.of(this);
    }

    @Override
    public Optional<String> missing() {
      return Optional.empty();
    }
  }

  /**
   * No answer, because the readings do not cross the limit exactly once.
   *
   * @param sentence what is missing
   */
  record Refused(String sentence) implements LogInterpolation {
    private static final int DIGITS = 4;

    @Override
    public Optional<Found> found() {
      return Optional.empty();
    }

    @Override
    public Optional<String> missing() {
      return Optional.of(sentence);
    }
  }

  /**
   * Interpolates.
   *
   * @param points readings in any order
   * @param limitPercent the THD wanted, above 0
   */
  static LogInterpolation at(double limitPercent, List<Point> points) {
    Samples.positive(limitPercent, "limit");
    List<Point> rising = points.stream().sorted(Comparator.comparingDouble(Point::volts)).toList();
    if (rising.size() < 2) {
      return new Refused(
          rising.isEmpty()
              ? "Two readings of volts and THD are needed; there is none."
              : "Two readings of volts and THD are needed; there is only one.");
    }
    int below = -1;
    for (int i = 0; i + 1 < rising.size(); i++) {
      boolean under = rising.get(i).thdPercent <= limitPercent;
      boolean over = rising.get(i + 1).thdPercent > limitPercent;
      if (under && over && below >= 0) {
        return new Refused(
            Sentence.of(
                "THD passes {} more than once between {} and {}: take the readings again.",
                percent(limitPercent),
                volts(rising.get(below)),
                volts(rising.get(i + 1))));
      }
      below = under && over ? i : below;
    }
    if (below >= 0) {
      return between(limitPercent, rising.get(below), rising.get(below + 1));
    }
    return outside(limitPercent, rising);
  }

  private static LogInterpolation outside(double limitPercent, List<Point> rising) {
    Point first = rising.get(0);
    Point last = rising.get(rising.size() - 1);
    if (last.thdPercent == limitPercent) {
      return new Found(last.volts, last.voltsU);
    }
    if (last.thdPercent < limitPercent) {
      return new Refused(
          Sentence.of(
              "The highest reading, {}, has {} THD, below {}: take one reading above it.",
              volts(last),
              percent(last.thdPercent),
              percent(limitPercent)));
    }
    return new Refused(
        Sentence.of(
            "The lowest reading, {}, has {} THD, above {}: take one reading below it.",
            volts(first),
            percent(first.thdPercent),
            percent(limitPercent)));
  }

  private static LogInterpolation between(double limitPercent, Point low, Point high) {
    double width = high.volts - low.volts;
    if (!(width > 0)) {
      return new Refused(
          Sentence.of("Two readings at {} differ in THD: take them again.", volts(low)));
    }
    double rise = Math.log(high.thdPercent / low.thdPercent);
    double part = Math.log(limitPercent / low.thdPercent) / rise;
    double voltsPerLog = width / rise;
    // log THD against volts bends: for a hard clipper by up to 0.21 of the width between readings
    // a factor of ten in THD apart. A quarter in the middle, nothing at the ends, rectangular.
    double bend = width * part * (1 - part) / Math.sqrt(3);
    double u = Math.hypot((1 - part) * low.voltsU, part * high.voltsU);
    u = Math.hypot(u, (1 - part) * voltsPerLog * low.thdU / low.thdPercent);
    u = Math.hypot(u, part * voltsPerLog * high.thdU / high.thdPercent);
    return new Found(low.volts + part * width, Math.hypot(u, bend));
  }

  private static String volts(Point point) {
    return Printer.UTF8.value(point.volts, Unit.VOLT, Refused.DIGITS);
  }

  private static String percent(double thd) {
    return Printer.UTF8.value(thd, Unit.PERCENT, Refused.DIGITS);
  }
}
