package loadwalk.forecast.model;

import java.util.Locale;
import java.util.Optional;

/**
 * The efficiency at the limit that the class of an amplifier suggests.
 *
 * <p>The figures are common practice, no source, and checked by the experiment: class B reaches π/4
 * of the power that the rails deliver and loses more in saturation and the converter; class D loses
 * some ten percent in each of the two.
 *
 * @param mean the middle of ln η
 * @param spread the standard deviation of ln η
 * @param switching the probability that the output stage is switching
 */
record ClassPrior(double mean, double spread, double switching) {

  /** Returns the prior for the class as written on the amplifier. */
  static ClassPrior of(Optional<String> amplifierClass) {
    String name = amplifierClass.map(c -> c.trim().toUpperCase(Locale.ROOT)).orElse("");
    return switch (name) {
      case "D", "T" -> new ClassPrior(Math.log(0.73), 0.13, 1);
      case "A" -> new ClassPrior(Math.log(0.42), 0.30, 0);
      case "B", "AB", "A/B" -> new ClassPrior(Math.log(0.585), 0.13, 0);
      case "G", "H" -> new ClassPrior(Math.log(0.62), 0.15, 0.07);
      default -> new ClassPrior(Math.log(0.625), 0.17, 0.35);
    };
  }
}
