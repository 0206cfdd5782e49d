package loadwalk.forecast;

import java.util.Locale;
import java.util.Optional;

/**
 * What the class of an amplifier tells of its efficiency at the limit.
 *
 * <p>The figures are common practice, no source: class B reaches π/4 of what the rails deliver and
 * loses more in saturation and the converter; class D loses some ten percent in each of both.
 *
 * @param mean the middle of ln η
 * @param spread the standard deviation of ln η
 * @param betaWeights the probabilities that η goes with the volts to the power of 0, ½ and 1
 */
record ClassPrior(double mean, double spread, double[] betaWeights) {

  /** Returns the prior of a class as written on the amplifier. */
  static ClassPrior of(Optional<String> amplifierClass) {
    String name = amplifierClass.map(c -> c.trim().toUpperCase(Locale.ROOT)).orElse("");
    return switch (name) {
      case "D", "T" -> new ClassPrior(Math.log(0.73), 0.13, new double[] {0.75, 0.2, 0.05});
      case "A" -> new ClassPrior(Math.log(0.42), 0.30, new double[] {0.3, 0.3, 0.4});
      case "B", "AB", "A/B" ->
          new ClassPrior(Math.log(0.585), 0.13, new double[] {0.3, 0.25, 0.45});
      case "G", "H" -> new ClassPrior(Math.log(0.62), 0.15, new double[] {0.3, 0.3, 0.4});
      default -> new ClassPrior(Math.log(0.625), 0.17, new double[] {0.4, 0.25, 0.35});
    };
  }
}
