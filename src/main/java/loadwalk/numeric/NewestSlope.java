package loadwalk.numeric;

import java.util.Arrays;
import java.util.Optional;

/**
 * The slope of the newest readings of a temperature, with what their digits and their scatter leave
 * open.
 *
 * <p>A straight line through readings of a curve that levels off lies steeper than the curve at the
 * last of them, so the slope errs towards "not steady yet". The uncertainty of a slope is u/√Σ(t −
 * t̄)² (JCGM 100:2008, H.3); where the readings scatter more than their digits explain, their
 * scatter about the line takes the place of u.
 *
 * @param perMinute the slope, K/min
 * @param u its standard uncertainty, K/min
 * @param readings how many readings it comes from
 * @param spanMinutes the time from the first of them to the last
 */
public record NewestSlope(double perMinute, double u, int readings, double spanMinutes) {
  /** Fewest readings that show a slope and their own scatter. */
  static final int FEWEST = 3;

  /** The most minutes that a slope of now may reach back. Chosen by hand. */
  static final double LONGEST_MINUTES = 12;

  /** The fewest minutes that it reaches back: a fan that switches takes about as long. By hand. */
  private static final double SHORTEST_MINUTES = 2;

  private static final double COVERAGE = 2;

  /** Returns the most that the slope may be, up or down, K/min, at about 95 %. */
  public double most() {
    return Math.abs(perMinute) + COVERAGE * u;
  }

  /**
   * Returns the slope of the newest readings, as few as tell it to a wanted uncertainty; empty
   * where fewer than three lie within twelve minutes.
   *
   * @param minutes the time of each reading, rising
   * @param celsius the temperature of each
   * @param u the standard uncertainty of each that does not repeat from one to the next, K
   * @param wanted the uncertainty of the slope at which no older reading is taken, K/min
   */
  public static Optional<NewestSlope> of(
      double[] minutes, double[] celsius, double[] u, double wanted) {
    Samples.sameLength(minutes, celsius, "minutes and celsius");
    Samples.sameLength(minutes, u, "minutes and u");
    int end = minutes.length;
    Optional<NewestSlope> found = Optional.empty();
    for (int first = end - FEWEST; first >= 0; first--) {
      double span = minutes[end - 1] - minutes[first];
      if (span > LONGEST_MINUTES) {
        return found;
      }
      found =
          Optional.of(
              through(
                  Arrays.copyOfRange(minutes, first, end),
                  Arrays.copyOfRange(celsius, first, end),
                  Arrays.copyOfRange(u, first, end)));
      if (span >= SHORTEST_MINUTES && found.get().u <= wanted) {
        return found;
      }
    }
    return found;
  }

  private static NewestSlope through(double[] t, double[] celsius, double[] u) {
    double[] weights = Arrays.stream(u).map(one -> 1 / (one * one)).toArray();
    LinearFit line = LinearFit.line(t, celsius, weights);
    double scatter = line.weightedSquares() / line.degreesOfFreedom();
    double slopeU = Math.sqrt(Math.max(1, scatter) / line.spread());
    return new NewestSlope(line.slope(), slopeU, t.length, t[t.length - 1] - t[0]);
  }
}
