package loadwalk.forecast.model;

import java.util.Optional;
import loadwalk.bench.AmplifierClass;

/**
 * The efficiency at the limit that the class of an amplifier suggests.
 *
 * <p>The figures are common practice, no source, and checked by the experiment: class B reaches π/4
 * of the power that the rails deliver and loses more in saturation and the converter; class D loses
 * some ten percent in each of the two.
 *
 * <p>Class A: the figure is of the current above idle, and idle is half of the draw, so η of the
 * whole is half of it (textbook: 50 % at most, less the converter).
 *
 * @param mean the middle of ln η
 * @param spread the standard deviation of ln η
 * @param switching the probability that the output stage is switching
 * @param known the class, where it is known
 */
record ClassPrior(double mean, double spread, double switching, Optional<AmplifierClass> known) {

  /** Returns the prior for the class as written on the amplifier. */
  static ClassPrior of(Optional<String> amplifierClass) {
    Optional<AmplifierClass> known = amplifierClass.flatMap(AmplifierClass::of);
    return known.map(ClassPrior::of).orElse(new ClassPrior(Math.log(0.625), 0.17, 0.35, known));
  }

  private static ClassPrior of(AmplifierClass is) {
    Optional<AmplifierClass> known = Optional.of(is);
    return switch (is) {
      case D -> new ClassPrior(Math.log(0.73), 0.13, 1, known);
      case A -> new ClassPrior(Math.log(0.6), 0.30, 0, known);
      case AB, B -> new ClassPrior(Math.log(0.585), 0.13, 0, known);
      case G -> new ClassPrior(Math.log(0.62), 0.15, 0.07, known);
    };
  }

  /** Tells whether the stage draws about half of its full current without a tone. */
  boolean idlesAtHalf() {
    return known.equals(Optional.of(AmplifierClass.A));
  }
}
