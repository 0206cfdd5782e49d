package loadwalk.result;

import java.util.OptionalDouble;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * A ratio to something that may be near nothing: its range lies unevenly about its value, so that
 * no single ± fits.
 *
 * @param value the ratio
 * @param low its lower end, as surely as an expanded uncertainty
 * @param high its upper end; empty where there is none
 */
public record Ratio(double value, double low, OptionalDouble high) {
  private static final int DIGITS = 2;

  /** Checks the order. */
  public Ratio {
    if (!(low <= value) || Double.isInfinite(value) || !(high.orElse(value) >= value)) {
      throw new IllegalArgumentException("a ratio lies in its range, got " + value);
    }
  }

  /**
   * Returns n/d from n/(d + U) to n/(d − U).
   *
   * @param numerator n, exact, 0 or more
   * @param divisor d, above 0
   */
  static Ratio of(double numerator, Quantity divisor) {
    double d = divisor.value();
    double u = divisor.expanded();
    return new Ratio(
        numerator / d,
        numerator / (d + u),
        d > u ? OptionalDouble.of(numerator / (d - u)) : OptionalDouble.empty());
  }

  /** Returns the range in words: "from 99 to 1200", "at least 99". */
  public String range() {
    String from = Printer.UTF8.value(low, Unit.ONE, DIGITS);
    return high.isPresent()
        ? Sentence.of(
            "from {} to {}", from, Printer.UTF8.value(high.getAsDouble(), Unit.ONE, DIGITS))
        : Sentence.of("at least {}", from);
  }
}
