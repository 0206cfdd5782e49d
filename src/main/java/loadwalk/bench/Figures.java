package loadwalk.bench;

import java.math.BigDecimal;
import java.math.MathContext;

/** Prints numbers for sentences. */
public final class Figures {
  private static final MathContext THREE = new MathContext(3);

  private Figures() {}

  /** Returns a number with up to three significant digits, no exponent below 10⁹. */
  public static String three(double value) {
    if (!Double.isFinite(value)) {
      return "unknown";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).round(THREE).stripTrailingZeros();
    return Math.abs(value) >= 1e9 || Math.abs(value) < 1e-6
        ? rounded.toString()
        : rounded.toPlainString();
  }
}
