package loadwalk.forecast;

import java.util.OptionalDouble;

/**
 * Knows or guesses the idle current.
 *
 * @param amps the idle current reckoned with, amperes
 * @param error its standard deviation, amperes
 * @param measured whether it was read
 */
record IdleModel(double amps, double error, boolean measured) {
  private static final double TYPICAL_AMPS = 1.0;
  private static final double LOG_SPREAD = 0.9;
  private static final double AGAIN_SPREAD = 0.08;
  private static final double LEAST_AMPS = 0.01;
  private static final double LEAST_PART = 0.03;

  /** Takes the idle current read, or a guess from the amplifier's fuses, amperes. */
  static IdleModel of(OptionalDouble read, OptionalDouble fuseAmps) {
    if (read.isPresent() && read.getAsDouble() >= 0) {
      return new IdleModel(read.getAsDouble(), 0.08 * read.getAsDouble(), true);
    }
    double guess = guess(fuseAmps);
    return new IdleModel(guess, 0.7 * guess, false);
  }

  /** Returns the density of ln of an idle reading. */
  Mixture density() {
    return Mixture.normal(
        Math.log(Math.max(LEAST_AMPS, amps)), measured ? AGAIN_SPREAD : LOG_SPREAD);
  }

  /** Returns ln of the current above idle, never less than a small part of the whole. */
  double logAbove(double supplyAmps) {
    return Math.log(above(supplyAmps));
  }

  /** Returns the derivative of {@link #logAbove} by ln of the supply current. */
  double steepness(double supplyAmps) {
    return supplyAmps / above(supplyAmps);
  }

  /** Returns the standard deviation that the idle current's error brings to ln of the rest. */
  double relativeError(double supplyAmps) {
    return Math.min(1, error / above(supplyAmps));
  }

  private double above(double supplyAmps) {
    return Math.max(supplyAmps - amps, LEAST_PART * supplyAmps);
  }

  private static double guess(OptionalDouble fuseAmps) {
    return fuseAmps.isPresent() ? 0.25 + 0.01 * fuseAmps.getAsDouble() : TYPICAL_AMPS;
  }
}
