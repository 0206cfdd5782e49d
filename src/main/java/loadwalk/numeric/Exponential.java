package loadwalk.numeric;

import java.util.Arrays;

/** Fits a + b·e^(−t/τ) for one τ, and finds the τ that fits best. */
final class Exponential {
  private Exponential() {}

  /** Tries time constants from a twentieth of the span to ten spans, a tenth apart. */
  static double tau(double[] t, double[] celsius) {
    double span = t[t.length - 1];
    double best = span / 20;
    double least = Double.POSITIVE_INFINITY;
    for (double tau = span / 20; tau < 10 * span; tau *= 1.1) {
      double squares = along(t, celsius, tau).weightedSquares();
      if (squares < least) {
        least = squares;
        best = tau;
      }
    }
    return best;
  }

  /** Returns the line through the values over e^(−t/τ). */
  static LinearFit along(double[] t, double[] celsius, double tau) {
    double[] fall = Arrays.stream(t).map(m -> Math.exp(-m / tau)).toArray();
    return LinearFit.line(fall, celsius);
  }
}
