package loadwalk.forecast.model;

import java.util.OptionalDouble;

/**
 * The idle current, measured or guessed.
 *
 * @param amps the idle current used in calculations, amperes
 * @param error its standard deviation, amperes
 * @param measured whether it was measured
 */
public record IdleModel(double amps, double error, boolean measured) {
  /** Idle current of an unknown car amplifier, amperes. Common practice, no source. */
  private static final double TYPICAL_AMPS = 1.0;

  /** Standard deviation of ln of a guessed idle current. Set on the experiment. */
  private static final double LOG_SPREAD = 0.9;

  /**
   * Standard deviation of ln of a repeated idle reading: the current drifts with temperature. Set
   * on the experiment.
   */
  private static final double AGAIN_SPREAD = 0.08;

  /** Smallest idle current used in calculations, amperes: keeps the logarithm finite. */
  private static final double LEAST_AMPS = 0.01;

  /** Smallest part of a supply current that is not idle current. Chosen by hand. */
  private static final double LEAST_PART = 0.03;

  /** Standard deviation of a guessed idle current, a fraction of it. Chosen by hand. */
  private static final double GUESS_ERROR = 0.7;

  /**
   * Idle current of the smallest amplifier, amperes, if only the fuses are known. Common practice,
   * no source.
   */
  private static final double GUESS_AMPS = 0.25;

  /** Idle current added per ampere of the fuses: a hundredth. Common practice, no source. */
  private static final double GUESS_PER_FUSE_AMP = 0.01;

  /** Standard deviation of a class A idle current that is not read, a fraction of it. */
  private static final double CLASS_A_ERROR = 0.5;

  /**
   * Returns the model of a class A stage, whose idle current is as much as the output adds at the
   * limit, amperes, where it was not read (constant draw, textbook; the half is common practice).
   */
  static IdleModel ofClassA(OptionalDouble read, double addedAmps) {
    return read.isPresent() && read.getAsDouble() >= 0
        ? of(read, OptionalDouble.empty())
        : new IdleModel(addedAmps, CLASS_A_ERROR * addedAmps, false);
  }

  /**
   * Returns the model of the idle current read, or of a guess from the amplifier's fuses, amperes.
   */
  static IdleModel of(OptionalDouble read, OptionalDouble fuseAmps) {
    if (read.isPresent() && read.getAsDouble() >= 0) {
      return new IdleModel(read.getAsDouble(), AGAIN_SPREAD * read.getAsDouble(), true);
    }
    double guess = guess(fuseAmps);
    return new IdleModel(guess, GUESS_ERROR * guess, false);
  }

  /** Returns the density of ln of an idle reading. */
  public Mixture density() {
    return Mixture.normal(
        Math.log(Math.max(LEAST_AMPS, amps)), measured ? AGAIN_SPREAD : LOG_SPREAD);
  }

  /** Returns ln of the current above idle, which is never less than a small part of the whole. */
  double logAbove(double supplyAmps) {
    return Math.log(above(supplyAmps));
  }

  /** Returns the derivative of {@link #logAbove} by ln of the supply current. */
  double steepness(double supplyAmps) {
    return supplyAmps / above(supplyAmps);
  }

  /**
   * Returns the standard deviation of ln of the current above idle that the idle current's error
   * causes.
   */
  double relativeError(double supplyAmps) {
    return Math.min(1, error / above(supplyAmps));
  }

  private double above(double supplyAmps) {
    return Math.max(supplyAmps - amps, LEAST_PART * supplyAmps);
  }

  private static double guess(OptionalDouble fuseAmps) {
    return fuseAmps.isPresent()
        ? GUESS_AMPS + GUESS_PER_FUSE_AMP * fuseAmps.getAsDouble()
        : TYPICAL_AMPS;
  }
}
