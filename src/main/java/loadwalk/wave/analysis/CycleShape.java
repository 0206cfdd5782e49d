package loadwalk.wave.analysis;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import loadwalk.numeric.DesignFit;
import loadwalk.wave.WaveShape;

/**
 * Judges the shape of an averaged period: a sine is fitted to its flanks, and the way the wave
 * departs from that sine shows clipping, a dead zone or straight flanks.
 */
final class CycleShape {
  /** A side is cut if its peak falls short of the fitted sine by more than this part. */
  private static final double LEAST_CUT = 0.003;

  /** The part of the missing peak by which a flat top may still rise. */
  private static final double FLAT = 0.15;

  private static final double LEAST_DEAD_ZONE = 0.003;
  private static final double LEAST_THD_PERCENT = 0.05;
  private static final int LEAST_POINTS = 24;

  private final double[] cycle;
  private final double high;
  private final double low;
  private final double amplitude;
  private final double offset;
  private final double[] sine;
  private final double scatter;

  private CycleShape(double[] cycle) {
    this.cycle = cycle;
    high = Arrays.stream(cycle).max().orElseThrow();
    low = Arrays.stream(cycle).min().orElseThrow();
    DesignFit fit = fitWhere(i -> within(i, 0.2, 0.8), false);
    amplitude = Math.hypot(fit.coefficient(0), fit.coefficient(1));
    offset = fit.coefficient(2);
    scatter = fit.residualSd();
    sine = new double[cycle.length];
    for (int i = 0; i < cycle.length; i++) {
      sine[i] = offset + fit.coefficient(0) * sin(i) + fit.coefficient(1) * cos(i);
    }
  }

  /** The findings for a period. */
  record Judged(boolean top, boolean bottom, double topPart, double bottomPart, WaveShape shape) {
    static final Judged NOTHING = new Judged(false, false, 0, 0, WaveShape.UNNAMED);
  }

  /**
   * Judges a period.
   *
   * @param thdPercent the THD of harmonics 2 to 10; a very low one gets no name
   */
  static Judged judge(Cycle average, double thdPercent) {
    double[] points = average.points();
    double range =
        Arrays.stream(points).max().orElseThrow() - Arrays.stream(points).min().orElseThrow();
    if (average.met() < LEAST_POINTS || !(range > 0)) {
      return Judged.NOTHING;
    }
    try {
      return new CycleShape(points).judged(thdPercent);
    } catch (IllegalArgumentException e) {
      // A wave without flanks, such as a square, has too few points to fit the sine.
      return Judged.NOTHING;
    }
  }

  private Judged judged(double thdPercent) {
    boolean worthAName = thdPercent >= LEAST_THD_PERCENT;
    boolean top = worthAName && cutFlat(1);
    boolean bottom = worthAName && cutFlat(-1);
    double topPart = top ? flatPart((high - offset) / amplitude) : 0;
    double bottomPart = bottom ? flatPart((offset - low) / amplitude) : 0;
    return new Judged(top, bottom, topPart, bottomPart, shape(worthAName, top, bottom));
  }

  private WaveShape shape(boolean worthAName, boolean top, boolean bottom) {
    if (!worthAName) {
      return WaveShape.CLEAN;
    }
    if (top || bottom) {
      WaveShape one = top ? WaveShape.HARD_CLIP_TOP : WaveShape.HARD_CLIP_BOTTOM;
      return top && bottom ? WaveShape.HARD_CLIP_BOTH : one;
    }
    // Straight flanks look shifted from a sine too, so they are checked first.
    if (hasStraightFlanks()) {
      return WaveShape.SLEWING;
    }
    return hasDeadZone() ? WaveShape.CROSSOVER : WaveShape.UNNAMED;
  }

  /** Tells whether the side (1 top, -1 bottom) stays flat where the sine rises further. */
  private boolean cutFlat(int side) {
    double peak = side > 0 ? high : low;
    double missing = side * (offset + side * amplitude - peak);
    if (!(missing > Math.max(LEAST_CUT * amplitude, 4 * scatter))) {
      return false;
    }
    double rise = 0;
    for (int i = 0; i < cycle.length; i++) {
      if (side * (sine[i] - peak) > 0.2 * missing) {
        rise = Math.max(rise, side * (peak - cycle[i]));
      }
    }
    return rise <= FLAT * missing + 2 * scatter;
  }

  private static double flatPart(double cut) {
    return Math.acos(Math.max(-1, Math.min(1, cut))) / Math.PI;
  }

  /** Tells whether the flanks are shifted towards zero and the wave crosses zero slowly. */
  private boolean hasDeadZone() {
    DesignFit shifted = fitWhere(i -> within(i, 0.12, 0.42) || within(i, 0.58, 0.88), true);
    double shift = shifted.coefficient(3);
    double height = Math.hypot(shifted.coefficient(0), shifted.coefficient(1));
    if (!(shift < -LEAST_DEAD_ZONE * height) || !(shift < -5 * shifted.u(3))) {
      return false;
    }
    double products = 0;
    double squares = 0;
    for (int i = 0; i < cycle.length; i++) {
      double x = sin(i);
      if (Math.abs(x) < 0.12) {
        products += x * (cycle[i] - shifted.coefficient(2));
        squares += x * x;
      }
    }
    return products / squares < 0.93 * height;
  }

  /** Tells whether the slope stays near its maximum for more of the period than a sine's. */
  private boolean hasStraightFlanks() {
    int reach = 4;
    double[] slopes =
        IntStream.range(0, cycle.length)
            .mapToDouble(
                i ->
                    Math.abs(
                        cycle[(i + reach) % cycle.length]
                            - cycle[Math.floorMod(i - reach, cycle.length)]))
            .toArray();
    double greatest = Arrays.stream(slopes).max().orElseThrow();
    long near = Arrays.stream(slopes).filter(s -> s >= 0.95 * greatest).count();
    return near > 0.45 * cycle.length;
  }

  /** Tells whether a point lies between two fractions of the range from low to high. */
  private boolean within(int i, double from, double to) {
    double part = (cycle[i] - low) / (high - low);
    return part >= from && part <= to;
  }

  private DesignFit fitWhere(IntPredicate taken, boolean withSide) {
    int[] points = IntStream.range(0, cycle.length).filter(taken).toArray();
    if (points.length < 12) {
      throw new IllegalArgumentException("the flanks hold too few points");
    }
    double middle = (high + low) / 2;
    double[][] design = new double[points.length][];
    double[] y = new double[points.length];
    for (int k = 0; k < points.length; k++) {
      int i = points[k];
      y[k] = cycle[i];
      design[k] =
          withSide
              ? new double[] {sin(i), cos(i), 1, Math.signum(cycle[i] - middle)}
              : new double[] {sin(i), cos(i), 1};
    }
    return DesignFit.of(design, y);
  }

  private double sin(int i) {
    return Math.sin(2 * Math.PI * (i + 0.5) / cycle.length);
  }

  private double cos(int i) {
    return Math.cos(2 * Math.PI * (i + 0.5) / cycle.length);
  }
}
