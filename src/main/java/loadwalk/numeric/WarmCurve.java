package loadwalk.numeric;

import java.util.Arrays;
import java.util.List;

/**
 * The temperatures of a warm-up, parted where they leave the curve that they followed: a fan that
 * switched on, a tone turned up.
 *
 * <p>A curve that settles bends one way and flattens all the time, so no single one follows both
 * sides of such a break. The readings since the break are the longest run up to the newest that one
 * curve does follow.
 *
 * @param since the index of the first reading since the break; 0 where there was none
 * @param misfitKelvin how far the worst reading lies from the best single curve, K
 * @param scatter how much more the readings since the break scatter about their curve than they
 *     explain, 1 or more
 * @param turnsAgain whether it has turned from rising to falling or back, and the longest time from
 *     one turn to the next is not over yet: a fan that cycles
 * @param fit what the readings since the break show of the end
 */
public record WarmCurve(
    int since, double misfitKelvin, double scatter, boolean turnsAgain, ThermalFit fit) {
  /**
   * How far a heatsink strays from one time constant, K: the transistors warm sooner than the far
   * end. Set on the experiment.
   */
  static final double STRAY_KELVIN = 0.3;

  /** The fewest minutes after a turn until no further one is expected. Set on the experiment. */
  private static final double LEAST_TURN_MINUTES = 12;

  /** Times the longest of the minutes between two turns so far. Set on the experiment. */
  private static final double TIMES_A_TURN = 2;

  /** T∞, T₀ and τ. */
  private static final int PARAMETERS = 3;

  /** Half the width of a rectangle over its standard deviation. */
  private static final double HALF_OVER_U = Math.sqrt(3);

  /** Tells whether the temperatures left the curve that they began. */
  public boolean hasBreak() {
    return since > 0;
  }

  /**
   * Parts the temperatures of a warm-up.
   *
   * @param minutes the time of each reading, rising
   * @param celsius the temperature of each
   * @param u the standard uncertainty of each that does not repeat from one to the next, K
   */
  public static WarmCurve of(double[] minutes, double[] celsius, double[] u) {
    Samples.sameLength(minutes, celsius, "minutes and celsius");
    Samples.sameLength(minutes, u, "minutes and u");
    double allowed = STRAY_KELVIN + HALF_OVER_U * Arrays.stream(u).max().orElse(0);
    double whole = misfit(minutes, celsius);
    int since = whole <= allowed ? 0 : since(minutes, celsius, allowed);
    double[] t = newest(minutes, since);
    double[] y = newest(celsius, since);
    return new WarmCurve(
        since,
        whole,
        scatter(t, y, newest(u, since)),
        turnsAgain(minutes, Turns.of(celsius, u)),
        ThermalFit.of(t, y));
  }

  /** Halves the readings until the first is found from which one curve follows all. */
  private static int since(double[] minutes, double[] celsius, double allowed) {
    int fits = minutes.length - NewestSlope.FEWEST;
    int breaks = 0;
    while (fits - breaks > 1) {
      int middle = (fits + breaks) / 2;
      if (misfit(newest(minutes, middle), newest(celsius, middle)) <= allowed) {
        fits = middle;
      } else {
        breaks = middle;
      }
    }
    return fits;
  }

  private static boolean turnsAgain(double[] minutes, List<Integer> turns) {
    if (turns.isEmpty()) {
      return false;
    }
    double longest = LEAST_TURN_MINUTES;
    for (int i = 1; i < turns.size(); i++) {
      longest = Math.max(longest, minutes[turns.get(i)] - minutes[turns.get(i - 1)]);
    }
    double last = minutes[turns.get(turns.size() - 1)];
    return minutes[minutes.length - 1] - last <= TIMES_A_TURN * longest;
  }

  private static double[] newest(double[] values, int since) {
    return Arrays.copyOfRange(values, since, values.length);
  }

  /** Returns how far the worst reading lies from the best curve; 0 where three or fewer are. */
  private static double misfit(double[] minutes, double[] celsius) {
    return minutes.length <= PARAMETERS
        ? 0
        : Arrays.stream(residuals(minutes, celsius)).map(Math::abs).max().orElse(0);
  }

  private static double scatter(double[] minutes, double[] celsius, double[] u) {
    int freedom = minutes.length - PARAMETERS;
    if (freedom < 1) {
      return 1;
    }
    double[] residuals = residuals(minutes, celsius);
    double squares = 0;
    for (int i = 0; i < u.length; i++) {
      squares += residuals[i] * residuals[i] / (u[i] * u[i]);
    }
    return Math.sqrt(Math.max(1, squares / freedom));
  }

  private static double[] residuals(double[] minutes, double[] celsius) {
    double[] t = Arrays.stream(minutes).map(m -> m - minutes[0]).toArray();
    double tau = Exponential.tau(t, celsius);
    LinearFit bend = Exponential.along(t, celsius, tau);
    double[] left = new double[t.length];
    for (int i = 0; i < t.length; i++) {
      left[i] = celsius[i] - bend.intercept() - bend.slope() * Math.exp(-t[i] / tau);
    }
    return left;
  }
}
